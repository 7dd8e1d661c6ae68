package kingpost.statics;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.List;
import kingpost.statics.ShortestWay.Link;

/** Works a chain of equations: those of one body that can be solved one after the other make one step. */
final class MemberWork {

    private final Network network;
    private final Progress progress;
    private final Values values;
    private final Route route;
    private int turn = 1;
    private int joints;

    MemberWork(Network network, Inspections inspections, Route route) {
        this.network = network;
        this.route = route;
        this.progress = new Progress(network, inspections);
        this.values = Values.of(network, route);
        for (int m = 0; m < network.members(); m++) {
            if (inspections.isZero(m)) {
                values.zero(m);
            }
        }
    }

    List<Step> steps(List<Link> links) {
        List<Step> steps = new ArrayList<>();
        List<Link> left = new ArrayList<>(links);
        while (!left.isEmpty()) {
            Link first = left.stream().filter(this::isReady).filter(this::isOfWhole).findFirst()
                    .orElseGet(() -> left.stream().filter(this::isReady).findFirst().orElseThrow());
            List<Link> batch = batch(first, left);
            steps.add(step(first.entry(), batch));
            turn++;
        }
        return steps;
    }

    double force(int unknown) {
        return values.get(unknown);
    }

    double worst(int unknown) {
        double[] second = new EquilibriumSystem(network, SolutionOrder.of(network, route.moves())).solve();
        double scale = 0;
        for (double force : second) {
            scale = Math.max(scale, Math.abs(force));
        }
        double apart = Math.abs(values.get(unknown) - second[unknown]);
        return scale == 0 ? apart : apart / scale;
    }

    private boolean isOfWhole(Link link) {
        return link.entry().part().cardinality() == network.joints();
    }

    private boolean isReady(Link link) {
        return link.entry().unknowns().stream().filter(f -> f != link.unknown())
                .allMatch(f -> progress.isSolved(f.unknown()));
    }

    /** All that the same body gives now, in order; marks them as solved. */
    private List<Link> batch(Link first, List<Link> left) {
        List<Link> batch = new ArrayList<>();
        Link next = first;
        while (next != null) {
            batch.add(next);
            left.remove(next);
            progress.solve(next.number(), turn);
            BitSet part = first.entry().part();
            next = left.stream().filter(l -> l.entry().part().equals(part)).filter(this::isReady).findFirst().orElse(null);
        }
        return batch;
    }

    private Step step(EquationPool.Entry entry, List<Link> batch) {
        List<BodyPlan.Planned> plan = batch.stream()
                .map(link -> new BodyPlan.Planned(link.entry().kind(), link.unknown())).toList();
        if (entry.isOfJoint()) {
            return new JointWork(network, progress, values, new Move.AtJoint(turn, ++joints,
                    entry.part().nextSetBit(0), batch.stream().map(Link::number).toList(),
                    Step.Selection.Reason.ONLY_ONE)).work();
        }
        if (entry.part().cardinality() == network.joints()) {
            BodyWork work = new BodyWork(entry.body(), values).solve(plan);
            return new Step.Reactions(Step.WhyReactions.MEMBER_NEEDS_THEM, work.equations(), work.answers());
        }
        return new SectionWork(network, progress, values, entry.part(), turn).work(plan, List.of())
                .keptFor(Step.Keep.LEAVES_ONE_ALONE);
    }
}
