package kingpost.graphic;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import kingpost.statics.Solution;
import kingpost.statics.Solution.ReactionResult;
import kingpost.statics.Vector;
import kingpost.truss.Direction;
import kingpost.truss.Joint;
import kingpost.truss.Load;
import kingpost.truss.Member;
import kingpost.truss.TrussModel;
import kingpost.units.CalculationException;
import kingpost.units.StructuralUnits;

/** A solved plane truss by number: joints and members counted from 0 in the truss's order. Forces in N. */
final class PlaneTruss {

    private static final double NOTHING = 1e-12;

    private final Solution solution;
    private final Map<String, Integer> numbers = new HashMap<>();
    private final List<Vector> places = new ArrayList<>();
    private final List<List<Cause>> causes = new ArrayList<>();
    private final List<List<Vector>> forces = new ArrayList<>();
    private double scale;

    PlaneTruss(Solution solution, String what) {
        this.solution = solution;
        for (Joint joint : truss().joints()) {
            if (joint.z().getValue() != 0) {
                throw new CalculationException(what + ": " + truss().name() + " is a space truss, and forces in space"
                        + " make no flat polygon; use s.joint(\"" + joint.name() + "\").");
            }
            numbers.put(joint.name(), numbers.size());
            places.add(new Vector(joint.x().getValue(), joint.y().getValue(), 0));
            causes.add(new ArrayList<>());
            forces.add(new ArrayList<>());
        }
        solution.members().forEach(m -> scale = Math.max(scale, Math.abs(m.force())));
        addLoads();
        addReactions();
    }

    Solution solution() {
        return solution;
    }

    TrussModel truss() {
        return solution.truss();
    }

    int joints() {
        return places.size();
    }

    int members() {
        return truss().members().size();
    }

    int number(String joint) {
        return numbers.get(joint);
    }

    String name(int joint) {
        return truss().joints().get(joint).name();
    }

    Vector place(int joint) {
        return places.get(joint);
    }

    Member member(int member) {
        return truss().members().get(member);
    }

    /** N, tension positive. */
    double force(int member) {
        return solution.members().get(member).force();
    }

    /** Loads and reactions that are not nothing at a joint, loads first. */
    List<Cause> causes(int joint) {
        return causes.get(joint);
    }

    /** The same as vectors, N. */
    List<Vector> forces(int joint) {
        return forces.get(joint);
    }

    /** The largest force in the truss or on it, N; 1 where there is none. */
    double scale() {
        return scale == 0 ? 1 : scale;
    }

    private void addLoads() {
        for (Load load : truss().loads()) {
            Vector force = new Vector(load.fx().in(StructuralUnits.N), load.fy().in(StructuralUnits.N), 0);
            if (force.norm() > 0) {
                add(number(load.joint()), new Cause.OfLoad(load), force);
            }
        }
    }

    private void addReactions() {
        Map<String, Vector> byJoint = new java.util.LinkedHashMap<>();
        for (ReactionResult r : solution.reactions()) {
            Direction d = r.reaction().direction();
            byJoint.merge(r.reaction().joint(), new Vector(d.cosX(), d.cosY(), 0).times(r.force()), Vector::plus);
        }
        byJoint.forEach((joint, force) -> {
            if (force.norm() > NOTHING * scale()) {
                add(number(joint), new Cause.OfSupport(joint), force);
            }
        });
    }

    private void add(int joint, Cause cause, Vector force) {
        causes.get(joint).add(cause);
        forces.get(joint).add(force);
        scale = Math.max(scale, force.norm());
    }
}
