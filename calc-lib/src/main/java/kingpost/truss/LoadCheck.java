package kingpost.truss;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import kingpost.truss.TrussDraft.LoadEntry;
import kingpost.units.Quantity;

/** Turns the loads as written into loads, and finds what is wrong with them. */
final class LoadCheck {

    private static final String[] PARTS = {"the part to the right", "the part upwards", "the part towards the reader"};

    private final Map<String, Joint> joints;
    private final boolean space;
    private final UnitChoice units;
    private final Problems problems;
    private final List<Load> loads = new ArrayList<>();

    LoadCheck(Map<String, Joint> joints, UnitChoice units, Problems problems) {
        this.joints = joints;
        this.space = joints.values().stream().anyMatch(j -> j.z().getValue() != 0);
        this.units = units;
        this.problems = problems;
    }

    List<Load> check(List<LoadEntry> entries) {
        entries.forEach(this::add);
        return loads;
    }

    private void add(LoadEntry entry) {
        String subject = entry.joint().isBlank() ? "Load" : "Load at " + entry.joint();
        if (entry.joint().isBlank()) {
            problems.add(subject, "it names no joint", "write where it acts, as in load(\"C\", 12, DOWN)");
        } else if (!joints.containsKey(entry.joint())) {
            boolean several = entry.joint().strip().matches(".*[\\s,;].*");
            problems.add(subject, "there is no joint " + entry.joint(), several
                    ? "write loads(\"" + entry.joint().strip() + "\", ...) for the same load at each"
                    : "add the joint or correct the name");
        }
        Optional<? extends Load> load = entry.size() != null ? directed(entry, subject) : components(entry, subject);
        load.filter(l -> isInPlane(l, subject)).filter(l -> joints.containsKey(l.joint())).ifPresent(loads::add);
    }

    private Optional<Load.Directed> directed(LoadEntry entry, String subject) {
        if (entry.direction() == null) {
            problems.add(subject, "it has no direction", "give DOWN, UP, LEFT, RIGHT, at(degrees) or slope(run, rise)");
        }
        Optional<Quantity> size = units.force(entry.size(), subject, "its size", problems);
        if (size.isPresent() && size.get().getValue() < 0) {
            problems.add(subject, "its size is " + size.get() + ", below zero",
                    "give a positive size and turn its direction round");
        } else if (size.isPresent() && size.get().getValue() == 0) {
            zero(subject);
        } else if (size.isPresent() && entry.direction() != null) {
            return Optional.of(new Load.Directed(entry.joint(), size.get(), entry.direction()));
        }
        return Optional.empty();
    }

    private Optional<Load.Components> components(LoadEntry entry, String subject) {
        List<Quantity> parts = new ArrayList<>();
        for (int i = 0; i < entry.components().size(); i++) {
            units.force(entry.components().get(i), subject, PARTS[i], problems).ifPresent(parts::add);
        }
        if (parts.size() < entry.components().size()) {
            return Optional.empty();
        }
        if (parts.stream().allMatch(p -> p.getValue() == 0)) {
            zero(subject);
            return Optional.empty();
        }
        return Optional.of(new Load.Components(entry.joint(), parts.get(0), parts.get(1), parts.get(2)));
    }

    private void zero(String subject) {
        problems.add(subject, "its size is zero", "give its size or leave it out");
    }

    private boolean isInPlane(Load load, String subject) {
        if (space || load.fz().getValue() == 0) {
            return true;
        }
        problems.add(subject, "it has a part towards the reader, but the truss is planar",
                "give a direction in the plane");
        return false;
    }
}
