package kingpost.statics;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import kingpost.statics.MemberWays.Count;
import kingpost.statics.MemberWays.Means;
import kingpost.statics.MemberWays.Way;
import kingpost.statics.ShortestWay.Link;
import kingpost.truss.Member;
import kingpost.truss.TrussModel;
import kingpost.units.CalculationException;

/** Finds and works the shortest way to one member of a plane, determinate truss. */
public final class MemberSearch {

    private final Network network;
    private final Inspections inspections;
    private final Route route;
    private final Member member;
    private final int number;
    private final EquationPool pool;
    private List<EquationPool.Entry> ofSections;

    private MemberSearch(TrussModel truss, Member member) {
        this.network = new Network(truss);
        this.inspections = new Inspections(network);
        this.route = Route.of(network, inspections);
        this.member = member;
        this.number = truss.members().indexOf(member);
        this.pool = new EquationPool(network, inspections, u -> !inspections.isZero(u));
    }

    /**
     * The ways to a member, compared, and the shortest one worked.
     *
     * @param member one of the truss's own
     * @throws NotSolvable          when the truss is a mechanism or indeterminate
     * @throws CalculationException when the truss is not plane, or joints and sections do not lead to the member
     */
    public static MemberWays of(TrussModel truss, Member member) {
        MemberSearch search = new MemberSearch(truss, member);
        if (search.network.dimension() != 2) {
            throw new CalculationException("Member " + member.name() + ": " + truss.name()
                    + " is a space truss, in which ways to one member are not compared; use solve(), or s.joint(\""
                    + member.from() + "\") for one joint.");
        }
        Determinacy determinacy = Determinacies.of(search.network, search.route);
        if (!(determinacy instanceof Determinacy.Determinate)) {
            throw NotSolvable.because(truss.name(), determinacy);
        }
        return search.ways();
    }

    /**
     * The work that leads to some reactions: equations of the whole truss where they suffice, else also of parts, else
     * also of joints; empty where no chain of them does.
     *
     * @throws NotSolvable when the truss is a mechanism or indeterminate
     */
    public static List<Step> toReactions(TrussModel truss, List<Source.OfReaction> reactions) {
        MemberSearch search = new MemberSearch(truss, truss.members().get(0));
        Determinacy determinacy = Determinacies.of(search.network, search.route);
        if (!(determinacy instanceof Determinacy.Determinate)) {
            throw NotSolvable.because(truss.name(), determinacy);
        }
        List<Integer> numbers = reactions.stream().map(r -> search.network.members() + Source.OfReaction.of(truss).indexOf(r))
                .toList();
        return Stream.of(Means.SECTIONS, Means.MIXED).map(means -> search.links(means, numbers)).flatMap(Optional::stream)
                .findFirst().map(links -> new MemberWork(search.network, search.inspections, search.route).steps(links))
                .orElse(List.of());
    }

    private Optional<List<Link>> links(Means means, List<Integer> unknowns) {
        ShortestWay way = way(means);
        List<Optional<List<Link>>> each = unknowns.stream().map(way::to).toList();
        return each.stream().allMatch(Optional::isPresent)
                ? Optional.of(each.stream().flatMap(Optional::stream).flatMap(List::stream).distinct().toList())
                : Optional.empty();
    }

    private MemberWays ways() {
        List<Inspection.Finding> seen = seen();
        if (inspections.isZero(number)) {
            return new MemberWays(network.model(), member, seen, true, List.of(), List.of(), 0, 0);
        }
        List<Found> found = new ArrayList<>(List.of(found(Means.JOINTS), found(Means.REACTIONS_AND_JOINTS),
                found(Means.SECTIONS), found(Means.MIXED)));
        if (found.get(0).links.isPresent() && found.get(1).links.get().stream().noneMatch(this::isOfWhole)) {
            found.remove(1);
        }
        Found mixed = found.remove(found.size() - 1);
        if (found.stream().noneMatch(f -> f.size() <= mixed.size())) {
            found.add(mixed);
        }
        found.sort(Comparator.comparingInt(Found::size));
        Found best = found.get(0);
        if (best.links.isEmpty()) {
            throw new CalculationException("Member " + member.name() + ": neither joints one by one nor sections lead to"
                    + " it in " + network.model().name() + "; use solve(), which solves several"
                    + " equations at once.");
        }
        MemberWork work = new MemberWork(network, inspections, route);
        List<Step> steps = work.steps(best.links.get());
        return new MemberWays(network.model(), member, seen, false,
                found.stream().map(f -> new Way(f.means, f.links.map(this::count))).toList(), steps,
                work.force(number), work.worst(number));
    }

    /** @param links empty where the means do not lead to the member */
    private record Found(Means means, Optional<List<Link>> links) {
        int size() {
            return links.map(List::size).orElse(Integer.MAX_VALUE);
        }
    }

    private boolean isOfWhole(Link link) {
        return link.entry().part().cardinality() == network.joints();
    }

    private Found found(Means means) {
        return new Found(means, way(means).to(number));
    }

    private ShortestWay way(Means means) {
        List<EquationPool.Entry> entries = new ArrayList<>();
        if (means != Means.SECTIONS) {
            entries.addAll(pool.ofJoints());
        }
        if (means != Means.JOINTS) {
            entries.addAll(pool.ofWhole());
        }
        if (means == Means.SECTIONS || means == Means.MIXED) {
            if (ofSections == null) {
                ofSections = pool.ofSections();
            }
            entries.addAll(ofSections);
        }
        return new ShortestWay(network, inspections, entries);
    }

    private Count count(List<Link> links) {
        List<String> joints = new ArrayList<>();
        List<List<Member>> cuts = new ArrayList<>();
        int reactions = 0;
        for (Link link : links) {
            EquationPool.Entry entry = link.entry();
            if (entry.isOfJoint()) {
                String joint = network.name(entry.part().nextSetBit(0));
                if (!joints.contains(joint)) {
                    joints.add(joint);
                }
            } else if (isOfWhole(link)) {
                reactions++;
            } else {
                List<Member> cut = Cut.of(network, entry.part()).stream().map(network::member).toList();
                if (!cuts.contains(cut)) {
                    cuts.add(cut);
                }
            }
        }
        return new Count(links.size(), reactions, joints, cuts);
    }

    /** The findings that speak of the member, and before each those that it rests on. */
    private List<Inspection.Finding> seen() {
        List<Inspection.Finding> all = inspections.result().findings();
        List<Inspection.Finding> needed = new ArrayList<>();
        boolean zero = inspections.isZero(number);
        all.stream().filter(f -> zero ? f.zero().contains(member) : pair(f).contains(member)).limit(zero ? 1 : 99)
                .forEach(f -> need(f, all, needed));
        return all.stream().filter(needed::contains).toList();
    }

    private static void need(Inspection.Finding finding, List<Inspection.Finding> all, List<Inspection.Finding> needed) {
        if (!needed.contains(finding)) {
            needed.add(finding);
            all.stream().filter(f -> f.round() < finding.round() && f.zero().stream().anyMatch(m -> m.meets(finding.joint())))
                    .forEach(f -> need(f, all, needed));
        }
    }

    private static List<Member> pair(Inspection.Finding finding) {
        if (finding instanceof Inspection.Finding.ThreeMembers three) {
            return List.of(three.first(), three.second());
        }
        return finding instanceof Inspection.Finding.SameForce same ? List.of(same.first(), same.second()) : List.of();
    }
}
