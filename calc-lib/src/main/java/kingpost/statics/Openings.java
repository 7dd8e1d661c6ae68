package kingpost.statics;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.BitSet;
import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import kingpost.statics.Step.Selection.Reason;

/**
 * What opens a truss again when no joint can be worked: a section with an equation for one unknown; else a joint
 * where one unknown lies across all the others; else two bodies that hold the same two unknowns; else several joints
 * whose equations are solved at once. In a large truss, where nobody reads the steps and the search for a section would
 * take long, all that is left is solved at once.
 */
final class Openings {

    /** Unknowns met by a section: with four, three may still pass through one point. */
    private static final int MOST_CUT = 4;
    /** Beyond this many joints no section is sought. */
    private static final int LARGE = 400;

    private final Network network;
    private final JointPlanner planner;
    private final Progress progress;

    Openings(Network network, JointPlanner planner) {
        this.network = network;
        this.planner = planner;
        this.progress = planner.progress();
    }

    /** The next move, or empty where nothing helps. */
    Optional<Move> next() {
        if (network.joints() > LARGE) {
            return Optional.of(allThatIsLeft());
        }
        Optional<Move> move = network.dimension() == 2 ? section().or(this::acrossTheRest).or(this::twoBodies)
                : acrossTheRest();
        if (move.isPresent()) {
            return move;
        }
        return new JointGroups(network, progress).smallest()
                .map(g -> new Move.Together(planner.nextTurn(), g.joints(), g.unknowns()));
    }

    /**
     * The whole truss, where one of its equations holds one reaction since the move just made gave another; in a plane
     * truss that is small enough for steps to be read.
     */
    Optional<Move> wholeAfter(Move move) {
        boolean tellsMore = move.unknowns().stream().anyMatch(u -> !network.isMember(u));
        if (!tellsMore || network.dimension() != 2 || network.joints() > LARGE) {
            return Optional.empty();
        }
        List<BodyPlan.Planned> plan = BodyPlan.ofReactions(network, Body.whole(network), f -> !progress.isSolved(f.unknown()));
        return plan.isEmpty() ? Optional.empty() : Optional.of(new Move.OfWhole(planner.nextTurn(), plan));
    }

    private Move allThatIsLeft() {
        List<Integer> joints = new ArrayList<>();
        Set<Integer> unknowns = new LinkedHashSet<>();
        for (int joint : SolutionOrder.alongLongest(network)) {
            List<Integer> open = Arrays.stream(network.unknownsAt(joint)).filter(u -> !progress.isSolved(u)).boxed()
                    .toList();
            if (!open.isEmpty()) {
                joints.add(joint);
                unknowns.addAll(open);
            }
        }
        return new Move.Together(planner.nextTurn(), joints, List.copyOf(unknowns));
    }

    private Optional<Move> twoBodies() {
        TwoBodies search = new TwoBodies(network, progress.inspections(), progress);
        return search.find(unknowns -> opens(unknowns.stream().flatMap(u -> progress.sameAs(u).stream()).toList()))
                .map(found -> new Move.TwoBodies(planner.nextTurn(), found, search.unknowns(found.get(0))));
    }

    private Optional<Move> section() {
        List<Candidate> candidates = new ArrayList<>();
        List<BitSet> parts = new CutSearch(network, u -> !progress.isSolved(u), MOST_CUT).parts();
        for (int i = 0; i < parts.size(); i++) {
            int order = i;
            candidate(parts.get(i), order).ifPresent(candidates::add);
            candidate(Cut.other(network, parts.get(i)), order).ifPresent(candidates::add);
        }
        return candidates.stream()
                .min(Comparator.comparing((Candidate c) -> !c.unlocks).thenComparing(c -> c.open)
                        .thenComparing(c -> awkwardness(c.plan.get(0))).thenComparing(c -> c.order)
                        .thenComparing(c -> c.forces))
                .map(c -> new Move.AtSection(planner.nextTurn(), c.part, c.plan));
    }

    /**
     * A section that gives something.
     *
     * @param unlocks whether a joint can be worked after it
     * @param open    unknowns that it meets
     * @param order   of the search: stiff parts first, then straight cuts
     * @param forces  outside forces on the part
     */
    private record Candidate(BitSet part, List<BodyPlan.Planned> plan, boolean unlocks, int open, int order,
                             int forces) {
    }

    private Optional<Candidate> candidate(BitSet part, int order) {
        Body body = Body.part(network, part);
        List<Body.Force> open = body.unknowns().stream().filter(f -> !progress.isSolved(f.unknown())).toList();
        if (open.isEmpty() || open.size() > MOST_CUT) {
            return Optional.empty();
        }
        List<BodyPlan.Planned> plan = BodyPlan.ofPart(network, body, open::contains);
        if (plan.isEmpty()) {
            return Optional.empty();
        }
        List<BodyPlan.Planned> one = plan.stream().sorted(Comparator.comparing(Openings::awkwardness)).map(List::of)
                .filter(this::unlocks).findFirst().orElse(plan);
        return Optional.of(new Candidate(part, one, unlocks(one), open.size(), order, body.forces().size()));
    }

    /**
     * 0 for a moment about a joint where the other members cut end, 1 for one about a joint in line with them and for
     * a sum along x or y, 2 for any other equation.
     */
    private static int awkwardness(BodyPlan.Planned planned) {
        if (planned.kind() instanceof BodyEquation.Kind.Moment moment) {
            boolean ends = moment.passing().stream()
                    .allMatch(s -> !(s instanceof Source.OfMember m) || m.member().meets(moment.joint()));
            return moment.joint().isEmpty() ? 2 : ends ? 0 : 1;
        }
        return ((BodyEquation.Kind.Along) planned.kind()).axis().label().length() == 1 ? 1 : 2;
    }

    /** Whether some joint can be worked once these are known. */
    private boolean unlocks(List<BodyPlan.Planned> plan) {
        return opens(plan.stream().flatMap(p -> progress.sameAs(p.unknown().unknown()).stream()).toList());
    }

    private boolean opens(List<Integer> known) {
        for (int unknown : known) {
            for (int joint : network.jointsOf(unknown)) {
                List<Integer> left = new ArrayList<>(progress.unknownsAt(joint, Integer.MAX_VALUE));
                left.removeAll(known);
                if (progress.isReady(joint, left)) {
                    return true;
                }
            }
        }
        return false;
    }

    /**
     * A joint where all unknowns but one lie in one line, or in space in one plane: a sum across that line or plane
     * gives the one.
     */
    private Optional<Move> acrossTheRest() {
        for (int joint = 0; joint < network.joints(); joint++) {
            List<Integer> unknowns = progress.unknownsAt(joint, Integer.MAX_VALUE);
            for (int one : unknowns) {
                List<Integer> rest = unknowns.stream().filter(u -> u != one).toList();
                if (rest.size() >= 2 && areAcross(joint, rest, one)) {
                    return Optional.of(new Move.AtJoint(planner.nextTurn(), planner.nextNumber(), joint, List.of(one),
                            Reason.ONE_ACROSS));
                }
            }
        }
        return Optional.empty();
    }

    private boolean areAcross(int joint, List<Integer> rest, int one) {
        Spanned spanned = Spanned.by(rest.stream().map(u -> network.unit(u, joint)).toList());
        return spanned.rank() < network.dimension() && !spanned.contains(network.unit(one, joint));
    }
}
