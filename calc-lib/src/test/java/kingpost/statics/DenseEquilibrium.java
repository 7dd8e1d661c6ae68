package kingpost.statics;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import kingpost.truss.Direction;
import kingpost.truss.Joint;
import kingpost.truss.Load;
import kingpost.truss.Member;
import kingpost.truss.TrussModel;
import kingpost.units.StructuralUnits;
import org.ejml.simple.SimpleMatrix;

/**
 * Every joint equation of a space truss written into one full matrix straight from the model and solved by EJML: an
 * oracle that shares no code with the solver.
 */
final class DenseEquilibrium {

    private DenseEquilibrium() {
    }

    /** Forces by name of member, and reactions by joint and number, in kN. */
    static Map<String, Double> of(TrussModel truss) {
        List<Joint> joints = truss.joints();
        int size = 3 * joints.size();
        SimpleMatrix matrix = new SimpleMatrix(size, size);
        SimpleMatrix right = new SimpleMatrix(size, 1);
        List<String> names = new ArrayList<>();
        for (Member member : truss.members()) {
            double[] from = place(truss.joint(member.from()).orElseThrow());
            double[] to = place(truss.joint(member.to()).orElseThrow());
            double length = Math.sqrt(Math.pow(to[0] - from[0], 2) + Math.pow(to[1] - from[1], 2)
                    + Math.pow(to[2] - from[2], 2));
            for (int axis = 0; axis < 3; axis++) {
                matrix.set(row(truss, member.from()) + axis, names.size(), (to[axis] - from[axis]) / length);
                matrix.set(row(truss, member.to()) + axis, names.size(), (from[axis] - to[axis]) / length);
            }
            names.add(member.name());
        }
        truss.supports().forEach(support -> {
            for (Direction d : support.reactions()) {
                double[] parts = {d.x(), d.y(), d.z()};
                double length = Math.sqrt(d.x() * d.x() + d.y() * d.y() + d.z() * d.z());
                for (int axis = 0; axis < 3; axis++) {
                    matrix.set(row(truss, support.joint()) + axis, names.size(), parts[axis] / length);
                }
                names.add("reaction " + (names.size() - truss.members().size()));
            }
        });
        for (Load load : truss.loads()) {
            int row = row(truss, load.joint());
            double[] parts = {load.fx().in(StructuralUnits.kN), load.fy().in(StructuralUnits.kN),
                load.fz().in(StructuralUnits.kN)};
            for (int axis = 0; axis < 3; axis++) {
                right.set(row + axis, 0, right.get(row + axis, 0) - parts[axis]);
            }
        }
        SimpleMatrix answer = matrix.solve(right);
        Map<String, Double> forces = new LinkedHashMap<>();
        for (int k = 0; k < names.size(); k++) {
            forces.put(names.get(k), answer.get(k, 0));
        }
        return forces;
    }

    private static int row(TrussModel truss, String joint) {
        for (int j = 0; j < truss.joints().size(); j++) {
            if (truss.joints().get(j).name().equals(joint)) {
                return 3 * j;
            }
        }
        throw new IllegalArgumentException(joint);
    }

    private static double[] place(Joint joint) {
        return new double[] {joint.x().getValue(), joint.y().getValue(), joint.z().getValue()};
    }
}
