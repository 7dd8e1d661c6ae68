package kingpost.truss;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import kingpost.truss.TrussDraft.SpreadEntry;
import kingpost.units.Quantity;

/**
 * Turns loads spread over members and chords into loads on joints: each joint takes half of what lies on the members
 * or panels beside it, as the simple spans between the joints would hand it on. Common practice, no source.
 */
final class SpreadCheck {

    private final Map<String, Joint> joints;
    private final List<Member> members;
    private final UnitChoice units;
    private final Problems problems;
    /** By joint and direction, in the order met. */
    private final Map<List<Object>, List<Tributary>> gathered = new LinkedHashMap<>();
    private final Map<List<Object>, Direction> directions = new LinkedHashMap<>();

    SpreadCheck(Map<String, Joint> joints, List<Member> members, UnitChoice units, Problems problems) {
        this.joints = joints;
        this.members = members;
        this.units = units;
        this.problems = problems;
    }

    /** One load for each joint and direction, with all that it is made of. */
    List<Load> check(List<SpreadEntry> entries) {
        entries.forEach(this::add);
        List<Load> loads = new ArrayList<>();
        gathered.forEach((key, parts) -> {
            double sum = parts.stream().mapToDouble(p -> p.force().getValue()).sum();
            loads.add(new Load.Gathered((String) key.get(0), Quantity.of(sum, units.force()), directions.get(key), parts,
                    1));
        });
        return loads;
    }

    private void add(SpreadEntry entry) {
        String subject = Character.toUpperCase(entry.kind().words().charAt(0)) + entry.kind().words().substring(1);
        Optional<Quantity> intensity = entry.spacing() == null
                ? units.perLength(entry.intensity(), subject, "its size", problems)
                : units.perArea(entry.intensity(), subject, "its size", problems);
        Optional<Quantity> spacing = entry.spacing() == null ? Optional.empty()
                : units.length(entry.spacing(), subject, "the spacing of the trusses", problems);
        if (intensity.isPresent() && intensity.get().getValue() == 0) {
            problems.add(subject, "its size is zero", "give its size or leave it out");
        } else if (spacing.isPresent() && spacing.get().getValue() <= 0) {
            problems.add(subject, "the spacing of the trusses is " + spacing.get() + ", not above zero",
                    "give the distance from truss to truss");
        } else if (intensity.isPresent() && spacing.isPresent() == (entry.spacing() != null)) {
            if (entry.kind() == SpreadEntry.Kind.SELF_WEIGHT) {
                selfWeight(entry, intensity.get(), subject);
            } else {
                alongChord(entry, intensity.get(), spacing, subject);
            }
        }
    }

    private void selfWeight(SpreadEntry entry, Quantity intensity, String subject) {
        Map<String, Double> halves = new LinkedHashMap<>();
        for (Member member : named(entry.where(), subject)) {
            double half = length(member.from(), member.to(), Measured.ALONG_SLOPE) / 2;
            halves.merge(member.from(), half, Double::sum);
            halves.merge(member.to(), half, Double::sum);
        }
        Direction way = intensity.getValue() < 0 ? Direction.UP : Direction.DOWN;
        halves.forEach((joint, length) -> gather(joint, way, entry, intensity, Optional.empty(), length));
    }

    /** The members listed, all of them where none is. */
    private List<Member> named(String names, String subject) {
        if (names == null) {
            return members;
        }
        List<Member> found = new ArrayList<>();
        if (words(names).isEmpty()) {
            problems.add(subject, "it names no member", "name members, as in selfWeight(\"AB BC\", 0.2), or leave the names out"
                    + " for the weight of all");
        }
        for (String word : words(names)) {
            Optional<Member> member = members.stream().filter(m -> TrussModel.isCalled(m, word)).findFirst();
            member.ifPresentOrElse(found::add, () -> problems.add(subject, "there is no member " + word,
                    "name members of the truss, as in selfWeight(\"AB BC\", 0.2)"));
        }
        return found;
    }

    private void alongChord(SpreadEntry entry, Quantity intensity, Optional<Quantity> spacing, String subject) {
        List<String> line = words(entry.where());
        boolean sound = true;
        for (String joint : line) {
            if (!joints.containsKey(joint)) {
                problems.add(subject, "there is no joint " + joint, "list joints of one chord in order, as in \"L0 L1 L2\"");
                sound = false;
            }
        }
        if (sound && line.size() < 2) {
            problems.add(subject, "it needs two joints at least to lie between",
                    "list the joints of one chord in order, as in \"L0 L1 L2\"");
            sound = false;
        }
        if (sound && entry.kind() == SpreadEntry.Kind.WIND && line.stream().anyMatch(j -> JointIndex.z(joints.get(j)) != 0)) {
            problems.add(subject, "the truss is in space, where more than one direction is square to a slope",
                    "give the load of each joint, as in load(\"" + line.get(0) + "\", 1, 0, 2)");
            sound = false;
        }
        for (int i = 1; sound && i < line.size(); i++) {
            panel(line.get(i - 1), line.get(i), entry, intensity, spacing, subject);
        }
    }

    private void panel(String from, String to, SpreadEntry entry, Quantity intensity, Optional<Quantity> spacing,
                       String subject) {
        if (from.equals(to)) {
            problems.add(subject, "joint " + from + " is listed twice, one after the other",
                    "list the joints of one chord in order, each one");
            return;
        }
        if (members.stream().noneMatch(m -> m.meets(from) && m.meets(to))) {
            problems.add(subject, "no member joins " + from + " and " + to,
                    "list the joints of one chord in order, each one");
            return;
        }
        double half = length(from, to, entry.measured()) / 2;
        if (half == 0) {
            problems.add(subject, "the panel " + from + "-" + to + " is upright, so it has no length on plan",
                    "leave it out or measure along the slope");
            return;
        }
        boolean away = intensity.getValue() < 0;
        Direction way = entry.kind() == SpreadEntry.Kind.WIND ? across(from, to, away)
                : away ? Direction.UP : Direction.DOWN;
        gather(from, way, entry, intensity, spacing, half);
        gather(to, way, entry, intensity, spacing, half);
    }

    /** Square to a panel, to the right of the way from its first joint to its second; away from it for suction. */
    private Direction across(String from, String to, boolean away) {
        double x = JointIndex.x(joints.get(to)) - JointIndex.x(joints.get(from));
        double y = JointIndex.y(joints.get(to)) - JointIndex.y(joints.get(from));
        return away ? new Direction(-y, x, 0, "away from " + from + "-" + to + ", square to it", true)
                : new Direction(y, -x, 0, "onto " + from + "-" + to + ", square to it", true);
    }

    private void gather(String joint, Direction way, SpreadEntry entry, Quantity intensity,
                        Optional<Quantity> spacing, double length) {
        double perLength = spacing.map(s -> intensity.multiply(s)).orElse(intensity).abs().in(units.perLength());
        List<Object> key = List.of(joint, Math.rint(way.cosX() * 1e9), Math.rint(way.cosY() * 1e9));
        directions.putIfAbsent(key, way);
        List<Tributary> parts = gathered.computeIfAbsent(key, k -> new ArrayList<>());
        for (int i = 0; i < parts.size(); i++) {
            Tributary before = parts.get(i);
            if (before.load().equals(entry.kind().words()) && before.intensity().equals(intensity)
                    && before.spacing().equals(spacing) && before.measured() == entry.measured()) {
                parts.set(i, part(entry, intensity, spacing, before.length().getValue() + length, perLength));
                return;
            }
        }
        parts.add(part(entry, intensity, spacing, length, perLength));
    }

    private Tributary part(SpreadEntry entry, Quantity intensity, Optional<Quantity> spacing, double length,
                           double perLength) {
        return new Tributary(entry.kind().words(), intensity, spacing, Quantity.of(length, units.length()),
                entry.measured(), Quantity.of(length * perLength, units.force()));
    }

    private double length(String from, String to, Measured measured) {
        Joint a = joints.get(from);
        Joint b = joints.get(to);
        double x = JointIndex.x(b) - JointIndex.x(a);
        double y = measured == Measured.ON_PLAN ? 0 : JointIndex.y(b) - JointIndex.y(a);
        double z = JointIndex.z(b) - JointIndex.z(a);
        return Math.sqrt(x * x + y * y + z * z);
    }

    private static List<String> words(String names) {
        return java.util.stream.Stream.of((names == null ? "" : names).strip().split("[\\s,;]+"))
                .filter(word -> !word.isEmpty()).toList();
    }
}
