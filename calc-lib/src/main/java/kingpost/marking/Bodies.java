package kingpost.marking;

import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import java.util.stream.IntStream;
import javax.measure.Unit;
import kingpost.statics.Source;
import kingpost.statics.Vector;
import kingpost.truss.Direction;
import kingpost.truss.Joint;
import kingpost.truss.Load;
import kingpost.truss.Member;
import kingpost.truss.TrussModel;

/** The forces on each joint and on the truss as a whole, with the sizes of the loads in the truss's force unit. */
final class Bodies {

    private final Unknowns unknowns;
    private final Map<String, Vector> places = new LinkedHashMap<>();
    private final Map<String, List<Acting>> joints = new ConcurrentHashMap<>();
    private final double[] loads;
    private final String[] loadNames;
    private final String[] names;

    Bodies(Unknowns unknowns) {
        this.unknowns = unknowns;
        TrussModel truss = unknowns.truss();
        truss.joints().forEach(joint -> places.put(joint.name(), place(joint, truss.lengthUnit())));
        loads = truss.loads().stream().mapToDouble(load -> load.magnitude().in(truss.forceUnit())).toArray();
        loadNames = truss.loads().stream().map(load -> "the " + load.magnitude() + " load at " + load.joint())
                .toArray(String[]::new);
        names = IntStream.range(0, unknowns.count()).mapToObj(unknowns::name).toArray(String[]::new);
    }

    Unknowns unknowns() {
        return unknowns;
    }

    /** Size of load {@code number}, in the truss's force unit. */
    double load(int number) {
        return loads[number];
    }

    int loadCount() {
        return loads.length;
    }

    Vector place(String joint) {
        return places.get(joint);
    }

    /** Members, reactions and loads at a joint. */
    List<Acting> at(String joint) {
        return joints.computeIfAbsent(joint, name -> List.copyOf(part(List.of(name))));
    }

    /** The forces on a part of the truss: members that lead out of it, reactions and loads. */
    List<Acting> part(Collection<String> joints) {
        List<Acting> forces = new ArrayList<>();
        for (int i = 0; i < unknowns.truss().members().size(); i++) {
            Member member = unknowns.member(i);
            if (joints.contains(member.from()) != joints.contains(member.to())) {
                String here = joints.contains(member.from()) ? member.from() : member.to();
                Vector along = places.get(member.otherEnd(here)).minus(places.get(here));
                forces.add(Acting.unknown(i, along, places.get(here)));
            }
        }
        whole().stream().filter(force -> joints.contains(jointOf(force))).forEach(forces::add);
        return forces;
    }

    /**
     * The joints of the two parts that are left when members are cut; the part of the first one's first end comes first.
     * Empty where the truss does not fall in two, with each of them between the parts.
     */
    Optional<List<List<String>>> parted(Set<Integer> cut) {
        if (cut.isEmpty() || !cut.stream().allMatch(unknowns::isMember)) {
            return Optional.empty();
        }
        Member first = unknowns.member(cut.iterator().next());
        Set<String> here = reached(first.from(), cut);
        Set<String> there = reached(first.to(), cut);
        boolean two = here.size() + there.size() == places.size() && cut.stream().map(unknowns::member)
                .allMatch(member -> here.contains(member.from()) != here.contains(member.to()));
        return two ? Optional.of(List.of(List.copyOf(here), List.copyOf(there))) : Optional.empty();
    }

    /** The joints that hang together with one when some members are cut. */
    private Set<String> reached(String start, Set<Integer> without) {
        Set<String> reached = new LinkedHashSet<>(List.of(start));
        boolean more = true;
        while (more) {
            more = false;
            for (int i = 0; i < unknowns.truss().members().size(); i++) {
                Member member = unknowns.member(i);
                if (!without.contains(i) && reached.contains(member.from()) != reached.contains(member.to())) {
                    reached.add(member.from());
                    reached.add(member.to());
                    more = true;
                }
            }
        }
        return reached;
    }

    /** Each force once that acts on any of several bodies. */
    static List<Acting> union(List<List<Acting>> bodies) {
        List<Acting> union = new ArrayList<>();
        bodies.forEach(body -> body.stream().filter(force -> union.stream().noneMatch(force::isSameSource))
                .forEach(union::add));
        return union;
    }

    /** Reactions and loads. */
    List<Acting> whole() {
        List<Acting> forces = new ArrayList<>();
        for (int i = unknowns.truss().members().size(); i < unknowns.count(); i++) {
            Source.OfReaction reaction = unknowns.reaction(i);
            forces.add(Acting.unknown(i, vector(reaction.direction()), places.get(reaction.joint())));
        }
        for (int i = 0; i < loads.length; i++) {
            Load load = unknowns.truss().loads().get(i);
            forces.add(Acting.load(i, vector(load.direction()), places.get(load.joint())));
        }
        return forces;
    }

    boolean isInSpace() {
        return places.values().stream().anyMatch(place -> place.z() != 0);
    }

    /** "AB", "Ax": the unknown's name. */
    String name(int unknown) {
        return names[unknown];
    }

    /** "the 12 kN load at D". */
    String loadName(int load) {
        return loadNames[load];
    }

    String jointOf(Acting force) {
        return force.isLoad() ? unknowns.truss().loads().get(force.load()).joint()
                : unknowns.reaction(force.unknown()).joint();
    }

    private static Vector vector(Direction direction) {
        return new Vector(direction.x(), direction.y(), direction.z());
    }

    private static Vector place(Joint joint, Unit<?> unit) {
        return new Vector(joint.x().in(unit), joint.y().in(unit), joint.z().in(unit));
    }
}
