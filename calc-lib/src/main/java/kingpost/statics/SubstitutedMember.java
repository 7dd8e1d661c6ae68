package kingpost.statics;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import kingpost.truss.Direction;
import kingpost.truss.Joint;
import kingpost.truss.Load;
import kingpost.truss.Member;
import kingpost.truss.TrussModel;
import kingpost.units.CalculationException;
import kingpost.units.Quantity;
import kingpost.units.StructuralUnits;

/**
 * A complex truss made simple by exchanging one member for another (Henneberg's method). The changed truss is worked
 * joint by joint twice: under the loads, and under a unit pull between the ends of the member taken out. The pull is
 * then made so large that the substitute carries nothing, and so need not be there.
 *
 * <p>Source: L. Henneberg, Statik der starren Systeme, 1886; the method is told in most courses on trusses.
 *
 * @param truss      the truss itself
 * @param removed    the member taken out
 * @param substitute the member put in
 * @param loaded     the changed truss under the loads
 * @param pulled     the changed truss under a pull of one unit of force between the ends of the member taken out
 * @param rows       one for each member of the truss, in its order
 * @param worst      largest difference from the full system of joint equations, over the largest force
 */
public record SubstitutedMember(TrussModel truss, Member removed, Member substitute, Solution loaded, Solution pulled,
                                List<Row> rows, double worst) {

    public SubstitutedMember {
        rows = List.copyOf(rows);
    }

    /**
     * @param underLoads N, in the changed truss under the loads
     * @param perUnit    force for each unit of the pull
     * @param force      N, in the truss itself
     */
    public record Row(Member member, double underLoads, double perUnit, double force) {
    }

    /** Force in the member taken out, N: the pull that leaves the substitute without force. */
    public double pull() {
        return rows.stream().filter(row -> row.member().equals(removed)).findFirst().orElseThrow().force();
    }

    /** Force in the substitute under the loads, N. */
    public double substituteUnderLoads() {
        return force(loaded, substitute);
    }

    /** Force in the substitute for each unit of the pull. */
    public double substitutePerUnit() {
        return force(pulled, substitute) / unit(truss);
    }

    /**
     * Takes a member out, and puts in one that lets joints alone reach every member.
     *
     * @throws NotSolvable          when the truss is a mechanism or indeterminate
     * @throws CalculationException when no exchange for it makes the truss simple
     */
    public static SubstitutedMember of(TrussModel truss, Member removed) {
        refuse(truss);
        return candidates(truss).stream().map(put -> tried(truss, removed, put)).flatMap(Optional::stream).findFirst()
                .orElseThrow(() -> new CalculationException("Substitute for " + removed.name() + ": no member between two"
                        + " joints of " + truss.name() + " makes it a simple truss; take out another member."));
    }

    /**
     * Takes a member out, and puts in one between two other joints.
     *
     * @throws NotSolvable          when the truss is a mechanism or indeterminate
     * @throws CalculationException when the joints are joined already, or the exchange does not make the truss simple
     */
    public static SubstitutedMember of(TrussModel truss, Member removed, String from, String to) {
        refuse(truss);
        Member put = candidates(truss).stream().filter(m -> m.meets(from) && m.meets(to) && !from.equals(to)).findFirst()
                .orElseThrow(() -> new CalculationException("Substitute for " + removed.name() + ": between " + from
                        + " and " + to + " no member can be put; give two joints that no member joins."));
        return tried(truss, removed, put).orElseThrow(() -> new CalculationException("Substitute for " + removed.name()
                + ": with " + put.name() + " in its place joints alone still do not reach every member; leave the"
                + " substitute out and one that does is looked for."));
    }

    private static void refuse(TrussModel truss) {
        Determinacy determinacy = Determinacies.of(truss);
        if (!(determinacy instanceof Determinacy.Determinate)) {
            throw NotSolvable.because(truss.name(), determinacy);
        }
    }

    /** Members that are not there, the shortest first. */
    private static List<Member> candidates(TrussModel truss) {
        List<Member> candidates = new ArrayList<>();
        List<Joint> joints = truss.joints();
        for (int i = 0; i < joints.size(); i++) {
            for (int k = i + 1; k < joints.size(); k++) {
                String a = joints.get(i).name();
                String b = joints.get(k).name();
                Member put = new Member(a.length() + b.length() == 2 ? a + b : a + "-" + b, a, b);
                if (truss.members().stream().noneMatch(m -> m.meets(a) && m.meets(b)) && isClear(truss, put)) {
                    candidates.add(put);
                }
            }
        }
        candidates.sort(Comparator.comparingDouble(m -> along(truss, m).norm()));
        return candidates;
    }

    /** Whether no joint lies on a member between its ends. */
    private static boolean isClear(TrussModel truss, Member member) {
        Vector along = along(truss, member);
        for (Joint joint : truss.joints()) {
            Vector reach = place(truss, joint.name()).minus(place(truss, member.from()));
            boolean between = reach.dot(along) > 0 && reach.dot(along) < along.dot(along);
            if (!member.meets(joint.name()) && between && Network.inLine(reach.unit(), along.unit())) {
                return false;
            }
        }
        return true;
    }

    private static Optional<SubstitutedMember> tried(TrussModel truss, Member removed, Member put) {
        TrussModel changed = new TrussModel(truss.name() + ", " + put.name() + " for " + removed.name(),
                truss.lengthUnit(), truss.forceUnit(), truss.joints(), Stream.concat(truss.members().stream()
                .filter(m -> !m.equals(removed)), Stream.of(put)).toList(), truss.supports(), truss.loads());
        TrussModel unit = changed.under(changed.name() + ", unit pull", pull(truss, removed));
        if (!isSimple(changed) || !isSimple(unit)) {
            return Optional.empty();
        }
        return Optional.of(put(truss, removed, put, Solver.solve(changed), Solver.solve(unit)));
    }

    /** Whether joints, after the reactions if need be, reach every member one by one. */
    private static boolean isSimple(TrussModel truss) {
        Network network = new Network(truss);
        return network.unknowns() == network.joints() * network.dimension()
                && Route.of(network, new Inspections(network)).isComplete();
    }

    private static List<Load> pull(TrussModel truss, Member removed) {
        Vector along = along(truss, removed);
        Direction out = new Direction(along.x(), along.y(), along.z(), "along " + removed.name(), true);
        Direction back = new Direction(-along.x(), -along.y(), -along.z(), "along " + removed.name(), true);
        Quantity one = Quantity.of(1, truss.forceUnit());
        return List.of(new Load.Directed(removed.from(), one, out), new Load.Directed(removed.to(), one, back));
    }

    private static SubstitutedMember put(TrussModel truss, Member removed, Member put, Solution loaded,
                                         Solution pulled) {
        double unit = unit(truss);
        double pull = -force(loaded, put) / (force(pulled, put) / unit);
        List<Row> rows = new ArrayList<>();
        Solution whole = Solver.solve(truss);
        double worst = 0;
        for (Solution.MemberResult result : whole.members()) {
            boolean out = result.member().equals(removed);
            double underLoads = out ? 0 : force(loaded, result.member());
            double perUnit = out ? 1 : force(pulled, result.member()) / unit;
            double force = underLoads + pull * perUnit;
            double noise = 1e-12 * (Math.abs(underLoads) + Math.abs(pull * perUnit));
            rows.add(new Row(result.member(), underLoads, perUnit, Math.abs(force) <= noise ? 0 : force));
            worst = Math.max(worst, Math.abs(force - result.force()));
        }
        return new SubstitutedMember(truss, removed, put, loaded, pulled, rows, worst / whole.checks().scale());
    }

    private static Vector along(TrussModel truss, Member member) {
        return place(truss, member.to()).minus(place(truss, member.from()));
    }

    private static Vector place(TrussModel truss, String joint) {
        Joint at = truss.joint(joint).orElseThrow();
        return new Vector(at.x().getValue(), at.y().getValue(), at.z().getValue());
    }

    private static double force(Solution solution, Member member) {
        return solution.members().stream().filter(r -> r.member().equals(member)).findFirst().orElseThrow().force();
    }

    /** The truss's unit of force, N. */
    private static double unit(TrussModel truss) {
        return Quantity.of(1, truss.forceUnit()).in(StructuralUnits.N);
    }
}
