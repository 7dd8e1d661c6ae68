package kingpost.statics;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import kingpost.exact.Surd;
import kingpost.statics.Solution.Found;
import kingpost.statics.Solution.MemberResult;
import kingpost.statics.Solution.ReactionResult;
import kingpost.statics.Solution.Sense;
import kingpost.truss.TrussModel;
import kingpost.units.Quantity;
import kingpost.units.StructuralUnits;

/** Solves a truss the way a person does: look, reactions if they are needed, then joint after joint; then checks. */
public final class Solver {

    private final Network network;
    private final Inspections inspections;
    private final Route route;
    private final Optional<ExactRoute.ExactForces> exact;
    private final Values values;
    private final List<Step> steps = new ArrayList<>();
    private final Move[] found;

    private Solver(Network network, Inspections inspections, Route route) {
        this.network = network;
        this.inspections = inspections;
        this.route = route;
        exact = ExactRoute.of(network, SolutionOrder.of(network, route.moves()));
        values = Values.of(network, exact);
        found = new Move[network.unknowns()];
    }

    /**
     * Solves a statically determinate truss.
     *
     * @throws NotSolvable when it is a mechanism or indeterminate
     */
    public static Solution solve(TrussModel model) {
        Network network = new Network(model);
        Inspections inspections = new Inspections(network);
        Route route = Route.of(network, inspections);
        Determinacy determinacy = Determinacies.of(network, route);
        if (!(determinacy instanceof Determinacy.Determinate determinate)) {
            throw NotSolvable.because(model.name(), determinacy);
        }
        if (!route.opened(network).isComplete()) {
            throw NotSolvable.stuck(model.name(), determinacy, route.stuckAt(network));
        }
        return new Solver(network, inspections, route).solve(determinate);
    }

    private Solution solve(Determinacy.Determinate determinate) {
        for (int u = 0; u < network.members(); u++) {
            if (inspections.isZero(u)) {
                values.zero(u);
            }
        }
        Body body = Body.whole(network);
        route.reactionsFirst().ifPresent(why -> steps.add(reactions(body, why)));
        Worker worker = new Worker();
        for (Move move : route.moves()) {
            move.unknowns().forEach(u -> found[u] = move);
            steps.add(move.accept(worker));
        }
        Checks checks = new CheckWork(network, inspections, route, values, body).check(steps, determinate);
        return new Solution(network.model(), determinate, inspections.result(), steps, members(), reactions(), checks);
    }

    private Step.Reactions reactions(Body body, Step.WhyReactions why) {
        BodyWork work = new BodyWork(body, values).solve(route.reactions()).check();
        return new Step.Reactions(why, work.equations(), work.answers());
    }

    /** Works each kind of move. */
    private final class Worker implements Move.Visitor<Step> {

        @Override
        public Step joint(Move.AtJoint move) {
            return new JointWork(network, route.progress(), values, move).work();
        }

        @Override
        public Step section(Move.AtSection move) {
            return new SectionWork(network, route.progress(), values, move.part(), move.turn())
                    .work(move.plan(), new LookRound(network, route.progress(), move.turn()));
        }

        @Override
        public Step whole(Move.OfWhole move) {
            BodyWork work = new BodyWork(Body.whole(network), values).solve(move.plan());
            return new Step.Reactions(Step.WhyReactions.WITHIN_REACH_NOW, work.equations(), work.answers());
        }

        @Override
        public Step twoBodies(Move.TwoBodies move) {
            return new TwoBodiesWork(network, route.progress(), values, move).work();
        }

        @Override
        public Step together(Move.Together move) {
            return new TogetherWork(network, route.progress(), values, move).work();
        }
    }

    private List<MemberResult> members() {
        List<MemberResult> results = new ArrayList<>();
        for (int m = 0; m < network.members(); m++) {
            double force = force(m);
            results.add(new MemberResult(network.member(m), force, sense(force), howFound(m), surd(m)));
        }
        return results;
    }

    private List<ReactionResult> reactions() {
        List<ReactionResult> results = new ArrayList<>();
        for (int u = network.members(); u < network.unknowns(); u++) {
            results.add(new ReactionResult(network.reaction(u), force(u), surd(u)));
        }
        return results;
    }

    /** The exact force rounded once, where there is one; else the force by the steps. */
    private double force(int unknown) {
        return surd(unknown).map(s -> Quantity.of(s.doubleValue(), network.model().forceUnit()).in(StructuralUnits.N))
                .orElse(values.get(unknown));
    }

    private Optional<Surd> surd(int unknown) {
        return exact.flatMap(e -> e.forces().get(unknown));
    }

    private Found howFound(int member) {
        if (inspections.isZero(member)) {
            return Found.INSPECTION;
        }
        if (found[member] == null) {
            return Found.SAME_AS_IN_LINE;
        }
        return found[member] instanceof Move.AtSection || found[member] instanceof Move.TwoBodies ? Found.SECTION : found[member] instanceof Move.Together
                ? Found.JOINTS_TOGETHER : Found.JOINT;
    }

    private static Sense sense(double force) {
        return force == 0 ? Sense.ZERO : force > 0 ? Sense.TENSION : Sense.COMPRESSION;
    }
}
