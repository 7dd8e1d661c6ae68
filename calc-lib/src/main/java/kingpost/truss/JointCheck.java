package kingpost.truss;

import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import kingpost.truss.TrussDraft.JointEntry;
import kingpost.units.Quantity;
import kingpost.units.UnitLabel;

/** Turns the joints as written into joints, and finds what is wrong with them. */
final class JointCheck {

    private static final String PARTING = "-,;";
    private static final int MOST_NAMED = 12;

    private final UnitChoice units;
    private final Problems problems;
    private final Map<String, Joint> joints = new LinkedHashMap<>();
    private final Set<String> faulty = new HashSet<>();

    JointCheck(UnitChoice units, Problems problems) {
        this.units = units;
        this.problems = problems;
    }

    /** By name, in the order given; a joint with a problem is still there when it has a name and a place. */
    Map<String, Joint> check(List<JointEntry> entries) {
        entries.forEach(this::add);
        checkAllInSpace(entries);
        return joints;
    }

    /** Joints given by x and y only, where another does not lie in the plane z = 0. */
    private void checkAllInSpace(List<JointEntry> entries) {
        Optional<Joint> high = joints.values().stream().filter(j -> j.z().getValue() != 0).findFirst();
        List<String> flat = entries.stream().filter(e -> e.z() == null).map(JointEntry::name).distinct().toList();
        if (high.isPresent() && !flat.isEmpty()) {
            String all = String.join(", ", flat.subList(0, Math.min(MOST_NAMED, flat.size())));
            int more = flat.size() - MOST_NAMED;
            problems.add((flat.size() == 1 ? "Joint " : "Joints ") + all + (more > 0 ? " and " + more + " more" : ""),
                    "no z is given, but joint " + high.get().name() + " is at " + place(high.get())
                            + ", so the truss is in space", "give each joint x, y and z, as in joint(\"" + flat.get(0)
                            + "\", 0, 0, 0)");
        }
    }

    /** Names of joints with a problem of their own; their place is not to be relied on. */
    Set<String> faulty() {
        return faulty;
    }

    private void add(JointEntry entry) {
        String subject = "Joint " + (entry.name().isBlank() ? "at (" + entry.x() + ", " + entry.y() + ")"
                : entry.name());
        if (!checkName(entry.name(), subject)) {
            faulty.add(entry.name());
        }
        Optional<Quantity> x = units.length(entry.x(), subject, "x", problems);
        Optional<Quantity> y = units.length(entry.y(), subject, "y", problems);
        Optional<Quantity> z = entry.z() == null ? Optional.of(Quantity.of(0, units.length()))
                : units.length(entry.z(), subject, "z", problems);
        if (x.isEmpty() || y.isEmpty() || z.isEmpty()) {
            faulty.add(entry.name());
        }
        Quantity origin = Quantity.of(0, units.length());
        Joint joint = new Joint(entry.name(), x.orElse(origin), y.orElse(origin), z.orElse(origin));
        Joint before = joints.putIfAbsent(entry.name(), joint);
        if (before != null && !entry.name().isBlank()) {
            problems.add(subject, "it is given twice, at " + place(before) + " and at " + place(joint),
                    "rename one or leave it out");
        }
    }

    private boolean checkName(String name, String subject) {
        if (name.isBlank()) {
            problems.add(subject, "it has no name", "give it one, such as \"A\" or \"L0\"");
        } else if (name.chars().anyMatch(c -> Character.isWhitespace(c) || Character.isISOControl(c))) {
            problems.add(subject, "its name holds a space, which parts one member from the next",
                    "leave the space out");
        } else if (name.chars().anyMatch(c -> PARTING.indexOf(c) >= 0)) {
            problems.add(subject, "its name holds one of the signs " + String.join(" ", PARTING.split(""))
                    + " that part the names of members", "use letters and digits");
        } else {
            return true;
        }
        return false;
    }

    /** Coordinates for a message. */
    static String place(Joint joint) {
        String flat = number(joint.x()) + ", " + number(joint.y());
        String all = joint.z().getValue() == 0 ? flat : flat + ", " + number(joint.z());
        return "(" + all + ") " + UnitLabel.of(joint.x().getUnit());
    }

    private static String number(Quantity q) {
        double value = q.getValue();
        return value == Math.rint(value) && Math.abs(value) < 1e9 ? String.valueOf((long) value)
                : String.valueOf(value);
    }
}
