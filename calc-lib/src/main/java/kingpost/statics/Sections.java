package kingpost.statics;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import kingpost.truss.Member;
import kingpost.truss.TrussModel;
import kingpost.units.CalculationException;

/**
 * The method of sections in a plane, determinate truss: cuts through chosen members, keeps the simpler part, and takes
 * for each unknown the moment point or direction that leaves it alone.
 */
public final class Sections {

    private final Network network;
    private final Inspections inspections;
    private final Progress progress;
    private final Route route;
    private final List<Member> asked;
    private final List<Integer> numbers;
    private final List<BodyPlan.Planned> reactions;

    private Sections(Network network, List<Member> asked) {
        this.network = network;
        this.asked = asked;
        inspections = new Inspections(network);
        route = Route.of(network, inspections);
        progress = new Progress(network, inspections);
        reactions = BodyPlan.ofReactions(network, Body.whole(network));
        List<Member> members = network.model().members();
        numbers = asked.stream().map(members::indexOf).toList();
    }

    /**
     * A section through members of a truss.
     *
     * @param members the members to cut, each one of the truss's own, in any order
     * @throws NotSolvable          when the truss is a mechanism or indeterminate
     * @throws CalculationException when no member is given, one is given twice, or the truss is not plane
     */
    public static SectionResult of(TrussModel truss, List<Member> members) {
        refuse(truss, members);
        Sections sections = new Sections(new Network(truss), List.copyOf(members));
        Determinacy determinacy = Determinacies.of(sections.network, sections.route);
        if (!(determinacy instanceof Determinacy.Determinate)) {
            throw NotSolvable.because(truss.name(), determinacy);
        }
        return sections.result();
    }

    private static void refuse(TrussModel truss, List<Member> members) {
        if (members.isEmpty()) {
            throw new CalculationException("Section: no members are given; name those to cut, as in section(\"BC BD\").");
        }
        Set<Member> seen = new HashSet<>();
        for (Member member : members) {
            if (!truss.members().contains(member)) {
                throw new CalculationException("Section: " + truss.name() + " has no member " + member.name()
                        + "; name members of the truss.");
            }
            if (!seen.add(member)) {
                throw new CalculationException("Section: member " + member.name() + " is given twice; name it once.");
            }
        }
        if (truss.isSpace()) {
            throw new CalculationException("Section: " + truss.name()
                    + " is a space truss, and sections are worked in plane trusses; use solve(), or s.joint(\""
                    + truss.joints().get(0).name() + "\") for one joint.");
        }
    }

    private SectionResult result() {
        List<BitSet> sides = sides();
        if (sides.size() == 1) {
            return impossible(SectionResult.Why.DOES_NOT_PART, List.of());
        }
        List<BitSet> parts = sides.stream().filter(side -> cutsExactly(side)).toList();
        if (parts.isEmpty()) {
            return impossible(SectionResult.Why.NOT_ONE_CUT, surplus(sides));
        }
        Optional<Choice> best = parts.stream().flatMap(p -> List.of(p, Cut.other(network, p)).stream())
                .map(this::choice).filter(c -> !c.plan.isEmpty()).min(Choice.SIMPLEST);
        if (best.isEmpty()) {
            boolean few = choice(parts.get(0)).open <= 3;
            return impossible(few ? SectionResult.Why.NOT_INDEPENDENT : SectionResult.Why.TOO_MANY_UNKNOWNS, List.of());
        }
        return solved(best.get());
    }

    /** The connected parts that are left when the members are cut. */
    private List<BitSet> sides() {
        List<BitSet> sides = new ArrayList<>();
        BitSet seen = new BitSet();
        for (int j = 0; j < network.joints(); j++) {
            if (!seen.get(j)) {
                BitSet side = new BitSet();
                reach(j, side);
                seen.or(side);
                sides.add(side);
            }
        }
        return sides;
    }

    private void reach(int from, BitSet side) {
        List<Integer> front = new ArrayList<>(List.of(from));
        side.set(from);
        for (int i = 0; i < front.size(); i++) {
            for (int u : network.unknownsAt(front.get(i))) {
                if (network.isMember(u) && !numbers.contains(u) && !side.get(network.otherEnd(u, front.get(i)))) {
                    side.set(network.otherEnd(u, front.get(i)));
                    front.add(network.otherEnd(u, front.get(i)));
                }
            }
        }
    }

    private boolean cutsExactly(BitSet side) {
        return new HashSet<>(Cut.of(network, side)).equals(new HashSet<>(numbers));
    }

    /** Members asked for that do not cross the cut around the side that most of them touch. */
    private List<Member> surplus(List<BitSet> sides) {
        BitSet most = sides.stream().max(Comparator.comparingInt(s -> Cut.of(network, s).size())).orElseThrow();
        List<Integer> cut = Cut.of(network, most);
        return numbers.stream().filter(m -> !cut.contains(m)).map(network::member).toList();
    }

    /**
     * A part that could be kept.
     *
     * @param open    unknowns on it when the reactions that it needs are known
     * @param missing members asked for that its equations do not give
     * @param held    whether reactions act on it
     */
    private record Choice(BitSet part, List<BodyPlan.Planned> plan, int open, int missing, boolean held, int forces) {

        private static final Comparator<Choice> SIMPLEST = Comparator.comparing(Choice::missing)
                .thenComparing(Choice::held).thenComparing(Choice::forces);
    }

    private Choice choice(BitSet part) {
        Body body = Body.part(network, part);
        List<Integer> known = reactions.stream().map(p -> p.unknown().unknown()).toList();
        List<Body.Force> open = body.unknowns().stream()
                .filter(f -> !inspections.isZero(f.unknown()) && !known.contains(f.unknown())).toList();
        List<BodyPlan.Planned> plan = BodyPlan.ofPart(network, body, open::contains);
        List<Integer> given = plan.stream().map(p -> p.unknown().unknown()).toList();
        int missing = (int) numbers.stream().filter(m -> !inspections.isZero(m) && !given.contains(m)).count();
        boolean held = body.unknowns().stream().anyMatch(f -> !network.isMember(f.unknown()));
        return new Choice(part, plan, open.size(), missing, held, body.forces().size());
    }

    private SectionResult solved(Choice choice) {
        Values values = Values.of(network, route);
        for (int m = 0; m < network.members(); m++) {
            if (inspections.isZero(m)) {
                values.zero(m);
            }
        }
        List<Step.Reactions> first = new ArrayList<>();
        if (choice.held) {
            BodyWork work = new BodyWork(Body.whole(network), values).solve(reactions).check();
            first.add(new Step.Reactions(Step.WhyReactions.SECTION_NEEDS_THEM, work.equations(), work.answers()));
            reactions.forEach(p -> progress.solve(p.unknown().unknown(), 0));
        }
        Step.AtSection section = new SectionWork(network, progress, values, choice.part, 1)
                .work(choice.plan, List.of());
        List<Integer> given = choice.plan.stream().map(p -> p.unknown().unknown()).toList();
        List<Member> idle = numbers.stream().filter(inspections::isZero).map(network::member).toList();
        List<Member> notFound = numbers.stream().filter(m -> !inspections.isZero(m) && !given.contains(m))
                .map(network::member).toList();
        return new SectionResult.Solved(network.model(), asked, first, section, idle, notFound, worst(values, given));
    }

    private double worst(Values values, List<Integer> given) {
        double[] second = new EquilibriumSystem(network, SolutionOrder.of(network, route.moves())).solve();
        double scale = 0;
        for (double force : second) {
            scale = Math.max(scale, Math.abs(force));
        }
        for (Body.Force force : Body.whole(network).forces()) {
            scale = Math.max(scale, force.load());
        }
        double worst = 0;
        for (int unknown : given) {
            worst = Math.max(worst, Math.abs(values.get(unknown) - second[unknown]));
        }
        return scale == 0 ? worst : worst / scale;
    }

    private SectionResult impossible(SectionResult.Why why, List<Member> surplus) {
        List<Member> path = why == SectionResult.Why.DOES_NOT_PART ? path() : List.of();
        return new SectionResult.Impossible(network.model(), asked, why, path, surplus, offer());
    }

    /** The shortest chain of members, none of them cut, between the ends of the first member asked for. */
    private List<Member> path() {
        int start = network.firstJoint(numbers.get(0));
        int end = network.otherEnd(numbers.get(0), start);
        int[] came = new int[network.joints()];
        java.util.Arrays.fill(came, -1);
        List<Integer> front = new ArrayList<>(List.of(end));
        for (int i = 0; i < front.size() && came[start] < 0; i++) {
            for (int u : network.unknownsAt(front.get(i))) {
                int other = network.isMember(u) ? network.otherEnd(u, front.get(i)) : end;
                if (!numbers.contains(u) && other != end && came[other] < 0) {
                    came[other] = u;
                    front.add(other);
                }
            }
        }
        List<Member> path = new ArrayList<>();
        for (int at = start; at != end && came[at] >= 0; at = network.otherEnd(came[at], at)) {
            path.add(network.member(came[at]));
        }
        return path;
    }

    /** A section that gives as many of the members asked for as may be, and cuts as few others. */
    private List<Member> offer() {
        return new CutSearch(network, u -> !inspections.isZero(u), 4).parts().stream()
                .flatMap(p -> List.of(p, Cut.other(network, p)).stream()).map(this::offered)
                .filter(o -> o.given > 0)
                .max(Comparator.comparing(Offer::given).thenComparing(o -> -o.cut.size())).map(Offer::members)
                .orElse(List.of());
    }

    private record Offer(List<Integer> cut, List<Member> members, int given) {
    }

    private Offer offered(BitSet part) {
        List<Integer> given = choice(part).plan.stream().map(p -> p.unknown().unknown()).toList();
        List<Integer> cut = Cut.of(network, part);
        return new Offer(cut, cut.stream().map(network::member).toList(),
                (int) numbers.stream().filter(m -> given.contains(m)).count());
    }
}
