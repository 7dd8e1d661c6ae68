package kingpost.statics;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.function.ToDoubleFunction;
import javax.measure.Unit;
import kingpost.truss.Direction;
import kingpost.truss.Joint;
import kingpost.truss.Load;
import kingpost.truss.Member;
import kingpost.truss.Support;
import kingpost.truss.TrussModel;
import kingpost.units.StructuralUnits;

/**
 * A truss by number, for algorithms: joints, members and reactions counted from 0 in the truss's order. An
 * <em>unknown</em> is a member's force (its number) or a reaction's (members + its number).
 *
 * <p><b>Units</b>: coordinates in the truss's length unit, forces in N. Built once, in time that grows with the truss.
 */
final class Network {

    /** Sine of the angle below which two directions are in line; rounding of coordinates stays far below it. */
    static final double IN_LINE = 1e-9;

    private final TrussModel model;
    private final Vector[] places;
    private final int[] from;
    private final int[] to;
    private final double[] lengths;
    private final List<Source.OfReaction> reactions = new ArrayList<>();
    private final int[] reactionJoint;
    private final Vector[] reactionUnit;
    private final int[][] unknownsAt;
    private final List<List<Source.OfLoad>> loadsAt = new ArrayList<>();
    private final List<List<Vector>> forcesAt = new ArrayList<>();
    private final Map<String, Integer> numbers = new HashMap<>();
    private final boolean space;
    private final double extent;

    Network(TrussModel model) {
        this.model = model;
        int joints = model.joints().size();
        places = new Vector[joints];
        for (int j = 0; j < joints; j++) {
            Joint joint = model.joints().get(j);
            numbers.put(joint.name(), j);
            places[j] = new Vector(joint.x().getValue(), joint.y().getValue(), joint.z().getValue());
            loadsAt.add(new ArrayList<>(1));
            forcesAt.add(new ArrayList<>(1));
        }
        from = new int[model.members().size()];
        to = new int[from.length];
        lengths = new double[from.length];
        for (int m = 0; m < from.length; m++) {
            from[m] = numbers.get(model.members().get(m).from());
            to[m] = numbers.get(model.members().get(m).to());
            lengths[m] = places[to[m]].minus(places[from[m]]).norm();
        }
        reactions.addAll(reactionsOf(model));
        reactionJoint = reactions.stream().mapToInt(r -> numbers.get(r.joint())).toArray();
        reactionUnit = reactions.stream().map(r -> unit(r.direction())).toArray(Vector[]::new);
        addLoads();
        unknownsAt = incidence(joints);
        space = isSpace();
        extent = Math.max(extent(Vector::x), Math.max(extent(Vector::y), extent(Vector::z)));
    }

    TrussModel model() {
        return model;
    }

    /** 2 in the plane, 3 in space. */
    int dimension() {
        return space ? 3 : 2;
    }

    int joints() {
        return places.length;
    }

    int members() {
        return from.length;
    }

    int reactions() {
        return reactions.size();
    }

    int unknowns() {
        return from.length + reactions.size();
    }

    boolean isMember(int unknown) {
        return unknown < from.length;
    }

    String name(int joint) {
        return model.joints().get(joint).name();
    }

    int number(String joint) {
        return numbers.get(joint);
    }

    Vector place(int joint) {
        return places[joint];
    }

    /** The joint at a point, or -1 where there is none. */
    int jointAt(Vector point) {
        for (int j = 0; j < places.length; j++) {
            if (places[j].minus(point).norm() <= IN_LINE * extent) {
                return j;
            }
        }
        return -1;
    }

    /** Largest distance of the truss along x, y or z, in its length unit. */
    double extent() {
        return extent;
    }

    /** The axis, 0 to 2, along which the truss is longest. */
    int longestAxis() {
        return extent == extent(Vector::x) ? 0 : extent == extent(Vector::y) ? 1 : 2;
    }

    double length(int member) {
        return lengths[member];
    }

    /** Members at a joint in the truss's order, then its reactions. Not to be written to. */
    int[] unknownsAt(int joint) {
        return unknownsAt[joint];
    }

    /** First end of a member, or the joint of a reaction. */
    int firstJoint(int unknown) {
        return isMember(unknown) ? from[unknown] : reactionJoint[unknown - from.length];
    }

    /** The joint at the other end of a member. */
    int otherEnd(int member, int joint) {
        return from[member] == joint ? to[member] : from[member];
    }

    /** Every joint that an unknown acts on: two for a member, one for a reaction. */
    int[] jointsOf(int unknown) {
        return isMember(unknown) ? new int[] {from[unknown], to[unknown]}
                : new int[] {reactionJoint[unknown - from.length]};
    }

    Source source(int unknown) {
        return isMember(unknown) ? new Source.OfMember(member(unknown)) : reaction(unknown);
    }

    /** Name of a member, "AB", or of a reaction component, "A_x". */
    String unknownName(int unknown) {
        return isMember(unknown) ? member(unknown).name() : reaction(unknown).name();
    }

    Member member(int unknown) {
        return model.members().get(unknown);
    }

    Source.OfReaction reaction(int unknown) {
        return reactions.get(unknown - from.length);
    }

    /** Positive direction of an unknown on a joint, not scaled: in the numbers of the coordinates. */
    Vector along(int unknown, int joint) {
        if (!isMember(unknown)) {
            Direction d = reaction(unknown).direction();
            return new Vector(d.x(), d.y(), d.z());
        }
        return places[otherEnd(unknown, joint)].minus(places[joint]);
    }

    /** Positive direction of an unknown on a joint, of length 1. */
    Vector unit(int unknown, int joint) {
        if (!isMember(unknown)) {
            return reactionUnit[unknown - from.length];
        }
        return places[otherEnd(unknown, joint)].minus(places[joint]).times(1 / lengths[unknown]);
    }

    /** Direction of a load, not scaled: in the numbers the user gave. */
    Vector along(Source.OfLoad load) {
        Direction d = load.load().direction();
        return new Vector(d.x(), d.y(), d.z());
    }

    List<Source.OfLoad> loadsAt(int joint) {
        return loadsAt.get(joint);
    }

    /** Loads at a joint as vectors, N, in the order of {@link #loadsAt}. */
    List<Vector> forcesAt(int joint) {
        return forcesAt.get(joint);
    }

    boolean isSupported(int joint) {
        int[] at = unknownsAt[joint];
        return at.length > 0 && !isMember(at[at.length - 1]);
    }

    /** Whether two directions of length 1 are in line, the same way or opposite. */
    static boolean inLine(Vector a, Vector b) {
        return a.cross(b).norm() <= IN_LINE;
    }

    private void addLoads() {
        for (Load load : model.loads()) {
            int joint = numbers.get(load.joint());
            loadsAt.get(joint).add(new Source.OfLoad(load, loadsAt.get(joint).size()));
            forcesAt.get(joint).add(force(load));
        }
    }

    private static Vector force(Load load) {
        Unit<?> newton = StructuralUnits.N;
        if (load instanceof Load.Directed directed) {
            double size = directed.magnitude().in(newton);
            return unit(directed.direction()).times(size);
        }
        return new Vector(load.fx().in(newton), load.fy().in(newton), load.fz().in(newton));
    }

    private static Vector unit(Direction d) {
        return new Vector(d.cosX(), d.cosY(), d.cosZ());
    }

    private int[][] incidence(int joints) {
        int[] count = new int[joints];
        for (int u = 0; u < unknowns(); u++) {
            for (int j : jointsOf(u)) {
                count[j]++;
            }
        }
        int[][] at = new int[joints][];
        for (int j = 0; j < joints; j++) {
            at[j] = new int[count[j]];
        }
        int[] next = new int[joints];
        for (int u = 0; u < unknowns(); u++) {
            for (int j : jointsOf(u)) {
                at[j][next[j]++] = u;
            }
        }
        return at;
    }

    private boolean isSpace() {
        for (Vector place : places) {
            if (place.z() != 0) {
                return true;
            }
        }
        return false;
    }

    private double extent(ToDoubleFunction<Vector> axis) {
        double low = Arrays.stream(places).mapToDouble(axis).min().orElse(0);
        double high = Arrays.stream(places).mapToDouble(axis).max().orElse(0);
        return high - low;
    }

    static List<Source.OfReaction> reactionsOf(TrussModel model) {
        Map<String, List<Direction>> byJoint = new HashMap<>();
        for (Support support : model.supports()) {
            byJoint.computeIfAbsent(support.joint(), j -> new ArrayList<>()).addAll(support.reactions());
        }
        Map<String, Integer> next = new HashMap<>();
        List<Source.OfReaction> reactions = new ArrayList<>();
        for (Support support : model.supports()) {
            for (Direction direction : support.reactions()) {
                int index = next.merge(support.joint(), 1, Integer::sum) - 1;
                reactions.add(new Source.OfReaction(support.joint(), index,
                        letter(byJoint.get(support.joint()), index), direction));
            }
        }
        return reactions;
    }

    private static String letter(List<Direction> all, int index) {
        if (all.stream().allMatch(Direction::isAxis)) {
            Direction d = all.get(index);
            return d.x() != 0 ? "x" : d.y() != 0 ? "y" : "z";
        }
        return all.size() == 1 ? "" : String.valueOf(index + 1);
    }
}
