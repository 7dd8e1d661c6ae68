package kingpost.marking;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
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
    private final double[] loads;

    Bodies(Unknowns unknowns) {
        this.unknowns = unknowns;
        TrussModel truss = unknowns.truss();
        truss.joints().forEach(joint -> places.put(joint.name(), place(joint, truss.lengthUnit())));
        loads = truss.loads().stream().mapToDouble(load -> load.magnitude().in(truss.forceUnit())).toArray();
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
        List<Acting> forces = new ArrayList<>();
        for (Member member : unknowns.truss().membersAt(joint)) {
            Vector along = places.get(member.otherEnd(joint)).minus(places.get(joint));
            forces.add(Acting.unknown(unknowns.numberOf(member), along, places.get(joint)));
        }
        whole().stream().filter(force -> joint.equals(jointOf(force))).forEach(forces::add);
        return forces;
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

    private String jointOf(Acting force) {
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
