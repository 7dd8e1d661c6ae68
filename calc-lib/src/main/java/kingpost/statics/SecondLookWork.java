package kingpost.statics;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import kingpost.statics.SecondLook.FoundAgain;
import kingpost.statics.SecondLook.JointBalance;
import kingpost.statics.SecondLook.WholeSum;
import kingpost.statics.Solution.MemberResult;
import kingpost.statics.Solution.ReactionResult;
import kingpost.statics.Solution.Sense;
import kingpost.truss.Direction;
import kingpost.truss.Joint;
import kingpost.truss.Load;
import kingpost.truss.TrussModel;
import kingpost.units.Quantity;
import kingpost.units.StructuralUnits;
import org.ejml.data.DMatrixRMaj;
import org.ejml.dense.row.factory.LinearSolverFactory_DDRM;
import org.ejml.interfaces.linsol.LinearSolverDense;

/** The work of a {@link SecondLook}: written from the truss alone, apart from everything that solves trusses. */
final class SecondLookWork {

    /** A full matrix of more unknowns takes too long for a look. */
    private static final int LARGEST = 1500;
    private static final double SAME = 1e-9;

    private final Solution solution;
    private final TrussModel truss;
    private final Map<String, double[]> places = new LinkedHashMap<>();
    private final Map<String, Integer> numbers = new LinkedHashMap<>();
    private final List<double[]> ends = new ArrayList<>();
    private final List<Source> sources = new ArrayList<>();
    private final List<Double> answers = new ArrayList<>();
    private final int axes;
    private final double[][] balance;
    private final double[][] columns;

    SecondLookWork(Solution solution) {
        this.solution = solution;
        this.truss = solution.truss();
        for (Joint joint : truss.joints()) {
            numbers.put(joint.name(), numbers.size());
            places.put(joint.name(), new double[] {joint.x().in(StructuralUnits.m), joint.y().in(StructuralUnits.m),
                joint.z().in(StructuralUnits.m)});
        }
        boolean space = solution.determinacy().count().equations() > 2 * truss.joints().size();
        this.axes = space ? 3 : 2;
        this.balance = new double[truss.joints().size()][3];
        int unknowns = solution.members().size() + solution.reactions().size();
        boolean square = unknowns == axes * truss.joints().size() && unknowns <= LARGEST;
        this.columns = square ? new double[unknowns][] : new double[0][];
    }

    SecondLook look() {
        double[] loads = new double[axes * truss.joints().size()];
        for (Load load : truss.loads()) {
            double[] force = parts(load);
            add(load.joint(), force, 1);
            for (int axis = 0; axis < axes; axis++) {
                loads[axes * numbers.get(load.joint()) + axis] += force[axis];
            }
        }
        solution.members().forEach(this::member);
        solution.reactions().forEach(this::reaction);
        double scale = scale();
        List<JointBalance> joints = new ArrayList<>();
        numbers.forEach((joint, number) -> joints.add(new JointBalance(joint, remainders(number))));
        return new SecondLook(whole(), joints, again(loads), disagreements(scale), scale, extent());
    }

    private List<Double> remainders(int joint) {
        List<Double> remainders = new ArrayList<>();
        for (int axis = 0; axis < axes; axis++) {
            remainders.add(balance[joint][axis]);
        }
        return remainders;
    }

    private static double[] parts(Load load) {
        return new double[] {load.fx().in(StructuralUnits.N), load.fy().in(StructuralUnits.N),
            load.fz().in(StructuralUnits.N)};
    }

    private void add(String joint, double[] unit, double force) {
        for (int axis = 0; axis < 3; axis++) {
            balance[numbers.get(joint)][axis] += force * unit[axis];
        }
    }

    private void member(MemberResult result) {
        double[] from = places.get(result.member().from());
        double[] to = places.get(result.member().to());
        double[] along = {to[0] - from[0], to[1] - from[1], to[2] - from[2]};
        double length = Math.sqrt(along[0] * along[0] + along[1] * along[1] + along[2] * along[2]);
        double[] there = {along[0] / length, along[1] / length, along[2] / length};
        double[] back = {-there[0], -there[1], -there[2]};
        add(result.member().from(), there, result.force());
        add(result.member().to(), back, result.force());
        double[] column = new double[axes * places.size()];
        put(column, result.member().from(), there);
        put(column, result.member().to(), back);
        unknown(new Source.OfMember(result.member()), result.force(), column);
    }

    private void reaction(ReactionResult result) {
        Direction direction = result.reaction().direction();
        double[] unit = {direction.cosX(), direction.cosY(), direction.cosZ()};
        add(result.reaction().joint(), unit, result.force());
        double[] column = new double[axes * places.size()];
        put(column, result.reaction().joint(), unit);
        unknown(result.reaction(), result.force(), column);
    }

    private void put(double[] column, String joint, double[] unit) {
        System.arraycopy(unit, 0, column, axes * numbers.get(joint), axes);
    }

    private void unknown(Source source, double answer, double[] column) {
        if (columns.length > 0) {
            columns[sources.size()] = column;
        }
        sources.add(source);
        answers.add(answer);
    }

    private double scale() {
        double scale = 0;
        for (double answer : answers) {
            scale = Math.max(scale, Math.abs(answer));
        }
        for (Load load : truss.loads()) {
            scale = Math.max(scale, load.magnitude().in(StructuralUnits.N));
        }
        return scale == 0 ? 1 : scale;
    }

    private double extent() {
        double extent = 0;
        for (int axis = 0; axis < 3; axis++) {
            int a = axis;
            double low = places.values().stream().mapToDouble(place -> place[a]).min().orElse(0);
            double high = places.values().stream().mapToDouble(place -> place[a]).max().orElse(0);
            extent = Math.max(extent, high - low);
        }
        return extent == 0 ? 1 : extent;
    }

    private List<WholeSum> whole() {
        double[] about = places.get(solution.reactions().isEmpty() ? truss.joints().get(0).name()
                : solution.reactions().get(0).reaction().joint());
        double[] loads = new double[6];
        double[] reactions = new double[6];
        truss.loads().forEach(load -> sum(loads, places.get(load.joint()), about, parts(load), 1));
        for (ReactionResult result : solution.reactions()) {
            Direction way = result.reaction().direction();
            sum(reactions, places.get(result.reaction().joint()), about,
                    new double[] {way.cosX(), way.cosY(), way.cosZ()}, result.force());
        }
        List<WholeSum> sums = new ArrayList<>();
        String[] names = {"along x", "along y", "along z", "moment about x", "moment about y",
            axes == 2 ? "moment" : "moment about z"};
        for (int i : axes == 2 ? new int[] {0, 1, 5} : new int[] {0, 1, 2, 3, 4, 5}) {
            sums.add(new WholeSum(names[i], i > 2, loads[i], reactions[i]));
        }
        return sums;
    }

    private static void sum(double[] sums, double[] at, double[] about, double[] unit, double force) {
        double[] arm = {at[0] - about[0], at[1] - about[1], at[2] - about[2]};
        for (int axis = 0; axis < 3; axis++) {
            int next = (axis + 1) % 3;
            int last = (axis + 2) % 3;
            sums[axis] += force * unit[axis];
            sums[3 + axis] += force * (arm[next] * unit[last] - arm[last] * unit[next]);
        }
    }

    private List<FoundAgain> again(double[] loads) {
        List<FoundAgain> found = new ArrayList<>();
        int size = columns.length;
        DMatrixRMaj matrix = new DMatrixRMaj(size, size);
        DMatrixRMaj right = new DMatrixRMaj(size, 1);
        for (int row = 0; row < size; row++) {
            right.set(row, 0, -loads[row]);
            for (int column = 0; column < size; column++) {
                matrix.set(row, column, columns[column][row]);
            }
        }
        DMatrixRMaj answer = new DMatrixRMaj(size, 1);
        LinearSolverDense<DMatrixRMaj> solver = LinearSolverFactory_DDRM.qrp(true, false);
        if (size > 0 && solver.setA(matrix)) {
            solver.solve(right, answer);
            for (int i = 0; i < size; i++) {
                found.add(new FoundAgain(sources.get(i), answers.get(i), answer.get(i, 0)));
            }
        }
        return found;
    }

    private List<String> disagreements(double scale) {
        List<String> found = new ArrayList<>();
        for (MemberResult result : solution.members()) {
            Sense sense = result.force() > 0 ? Sense.TENSION : result.force() < 0 ? Sense.COMPRESSION : Sense.ZERO;
            if (sense != result.sense()) {
                found.add(result.member().name() + " is called by the sense " + word(result.sense())
                        + ", but its force is " + number(result.force()) + " (" + word(sense) + ")");
            }
            exact(result.exact().map(e -> e.doubleValue()), result.force(), scale, result.member().name(), found);
        }
        for (ReactionResult result : solution.reactions()) {
            exact(result.exact().map(e -> e.doubleValue()), result.force(), scale, result.reaction().name(), found);
        }
        return found;
    }

    private void exact(Optional<Double> exact, double force, double scale, String name, List<String> found) {
        exact.map(value -> Quantity.of(value, truss.forceUnit()).in(StructuralUnits.N))
                .filter(value -> Math.abs(value - force) > SAME * scale)
                .ifPresent(value -> found.add(name + " is exactly " + number(value) + ", but " + number(force)
                        + " is answered"));
    }

    private String number(double newtons) {
        return Quantity.of(newtons, StructuralUnits.N).to(truss.forceUnit()).toString();
    }

    private static String word(Sense sense) {
        return sense == Sense.ZERO ? "no force" : sense.name().toLowerCase(java.util.Locale.ROOT);
    }
}
