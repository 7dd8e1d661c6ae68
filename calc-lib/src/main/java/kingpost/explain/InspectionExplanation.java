package kingpost.explain;

import java.util.ArrayList;
import java.util.List;

import kingpost.derivation.Block;
import kingpost.derivation.Block.Listing;
import kingpost.derivation.Block.Prose;
import kingpost.derivation.Derivation;
import kingpost.derivation.Expression;
import kingpost.derivation.Expressions;
import kingpost.derivation.Phrase;
import kingpost.statics.Inspection;
import kingpost.statics.Inspection.Finding;
import kingpost.statics.Inspection.NearMiss;
import kingpost.truss.Load;
import kingpost.truss.Member;
import kingpost.truss.TrussModel;

/** What looking at the joints tells before any calculation, and what only looks as if it did. */
public final class InspectionExplanation {

    private static final int FEW = 8;

    private final Notation notation;
    private final Variety variety = new Variety();

    InspectionExplanation(Notation notation) {
        this.notation = notation;
    }

    public static Derivation of(TrussModel truss, Inspection inspection) {
        return new Derivation(truss.name() + ": members that carry nothing",
                new InspectionExplanation(new Notation(truss)).blocks(inspection));
    }

    List<Block> blocks(Inspection inspection) {
        List<Block> blocks = new ArrayList<>();
        int rounds = inspection.findings().stream().mapToInt(Finding::round).max().orElse(0);
        if (rounds == 0) {
            blocks.add(Prose.of(notation.truss().isSpace() ? "Before calculating, look at each joint without a load or a"
                    + " support: where three members meet that do not lie in one plane, none of them carries anything, and"
                    + " where all members but one lie in one plane, that one carries nothing. No joint of this truss is"
                    + " such a joint."
                    : "Before calculating, look at each joint without a load or a support: where two members"
                    + " meet that are not in line, both carry nothing, and where three meet of which two are in line,"
                    + " the third carries nothing. No joint of this truss is such a joint."));
        }
        for (int round = 1; round <= rounds; round++) {
            blocks.addAll(round(inspection, round));
        }
        if (!inspection.nearMisses().isEmpty()) {
            int misses = inspection.nearMisses().size();
            blocks.add(Prose.of(misses == 1 ? "One joint looks like such a case but is not:"
                    : "Some joints look like such a case but are not" + (misses > FEW ? ", among them:" : ":")));
            blocks.add(new Listing(false, inspection.nearMisses().stream().limit(FEW).map(this::nearMiss).toList()));
        }
        conclusion(inspection).ifPresent(blocks::add);
        return blocks;
    }

    /** Findings as sentences, the first of each kind with its reason. */
    List<Phrase> sentences(List<Finding> findings) {
        return findings.stream().map(finding -> finding.accept(new Sentence())).toList();
    }

    /** What was seen at one joint. */
    List<Block> at(Inspection inspection, String joint) {
        List<Phrase> items = inspection.findings().stream().filter(finding -> finding.joint().equals(joint))
                .map(finding -> finding.accept(new Sentence())).toList();
        return items.isEmpty() ? List.of() : List.of(new Listing(false, items));
    }

    private List<Block> round(Inspection inspection, int round) {
        List<Phrase> items = inspection.findings().stream().filter(finding -> finding.round() == round)
                .map(finding -> finding.accept(new Sentence())).toList();
        if (items.isEmpty()) {
            return List.of();
        }
        String lead = round == 1
                ? "Before calculating, look for joints whose equilibrium can be read off:"
                : variety.of("round", "Take those members away in thought and look again:",
                        "That bares more:", "And once more, with these taken away too:");
        return List.of(Prose.of(lead), new Listing(false, items));
    }

    private java.util.Optional<Block> conclusion(Inspection inspection) {
        List<Member> idle = inspection.zeroForceMembers();
        if (idle.isEmpty()) {
            return java.util.Optional.empty();
        }
        Phrase said = Phrase.of("So ").then(names(idle)).text(" need not be drawn on the free bodies that follow.");
        return java.util.Optional.of(new Prose(said.sentence(idle.size() == 1
                ? "It is not useless: it braces its neighbours and carries other loads than these."
                : "They are not useless: they brace their neighbours and carry other loads than these.")));
    }

    private static Phrase names(List<Member> members) {
        return Series.names(members.stream().map(Member::name).toList());
    }

    private static Phrase zero(Member... members) {
        Expression[] sides = new Expression[members.length + 1];
        for (int i = 0; i < members.length; i++) {
            sides[i] = Notation.force(members[i]);
        }
        sides[members.length] = Expressions.number(0);
        return Phrase.of(Expressions.equal(sides));
    }

    private static Phrase same(Member first, Member second) {
        return Phrase.of(Expressions.equal(Notation.force(first), Notation.force(second)));
    }

    private static Phrase at(String joint) {
        return Phrase.of("Joint ").strong(joint).text(": ");
    }

    private Phrase nearMiss(NearMiss miss) {
        Phrase shape = miss.rule() == 2
                ? Phrase.of("two members meet, ").then(names(miss.members())).text(", ")
                : Phrase.of("three members meet, two of them in line, ");
        Phrase acting = Series.and(acting(miss));
        boolean several = miss.loads().size() + miss.supports().size() > 1;
        Phrase but = Phrase.of("but ").then(acting).text(several ? " act there" : " acts there");
        String end = variety.of("near miss", " and needs a force to balance it, so nothing follows.",
                "; the rule does not hold.", ", and the members have to answer it.",
                ": their forces wait for the calculation.");
        return at(miss.joint()).then(shape).then(but).text(several && end.startsWith(" and needs")
                ? " and need forces to balance them, so nothing follows." : end);
    }

    private List<Phrase> acting(NearMiss miss) {
        List<Phrase> acting = new ArrayList<>();
        miss.loads().forEach(load -> acting.add(Phrase.of("the load of ").then(size(load))));
        miss.supports().forEach(support -> acting.add(Phrase.of("the reaction of the "
                + support.kind().name().toLowerCase(java.util.Locale.ROOT))));
        return acting;
    }

    private Phrase size(Load load) {
        return Phrase.of(notation.loadAmount(load));
    }

    /** The first time, the rule with its reason; after that, only what it says here. */
    private final class Sentence implements Finding.Visitor<Phrase> {

        @Override
        public Phrase twoMembers(Finding.TwoMembers f) {
            Phrase zero = zero(f.first(), f.second());
            if (variety.isFirst("two members")) {
                return at(f.joint()).text("only ").then(names(List.of(f.first(), f.second())))
                        .text(" meet here, not in line, and nothing else acts. Across either of them the other would be alone,"
                                + " so neither can carry anything: ").then(zero).text(".");
            }
            return at(f.joint()).then(variety.of("two members again",
                    Phrase.of("two members at an angle and no load: ").then(zero).text("."),
                    Phrase.of("likewise, nothing could balance either ").then(either(f.first(), f.second()))
                            .text(", so ").then(zero).text(".")));
        }

        @Override
        public Phrase singleMember(Finding.SingleMember f) {
            return at(f.joint()).then(variety.of("single member",
                    Phrase.of("only ").text(f.member().name())
                            .text(" is left, with nothing at its end to pull or push against: ").then(zero(f.member())).text("."),
                    Phrase.of(f.member().name()).text(" alone remains, so ").then(zero(f.member())).text(".")));
        }

        @Override
        public Phrase threeMembers(Finding.ThreeMembers f) {
            Phrase pair = names(List.of(f.first(), f.second()));
            Phrase follows = zero(f.idle()).text(", and ").then(same(f.first(), f.second())).text(".");
            if (variety.isFirst("three members")) {
                return at(f.joint()).then(pair).text(" lie in one line, and " + f.idle().name()
                        + " is the only other force. Across the line nothing could balance it, so ").then(follows);
            }
            return at(f.joint()).then(variety.of("three members again",
                    Phrase.of("the same with " + f.idle().name() + ", which stands alone beside the line of ").then(pair)
                            .text(": ").then(follows),
                    Phrase.of("here " + f.idle().name() + " would have no partner across ").then(pair).text(", so ")
                            .then(follows),
                    Phrase.of("again ").then(pair).text(" are in line and " + f.idle().name() + " is left over: ")
                            .then(follows)));
        }

        @Override
        public Phrase loadInLine(Finding.LoadInLine f) {
            String idle = f.idle().name();
            Phrase follows = zero(f.idle()).text(".");
            if (f.carrying().isEmpty()) {
                return at(f.joint()).text("the support takes all that acts here along its own line; across it only " + idle
                        + " could act, so ").then(follows);
            }
            Phrase carrying = names(f.carrying());
            boolean one = f.carrying().size() == 1;
            return at(f.joint()).then(variety.of("load in line",
                    Phrase.of("what acts here from outside lies along ").then(carrying).text(one ? ", which answers it; across"
                            : ", which answer it; across").text(" that line only " + idle + " could act, so ").then(follows),
                    Phrase.of("here too the outside force points along ").then(carrying)
                            .text(", which leaves nothing for " + idle + ": ").then(follows)));
        }

        @Override
        public Phrase sameForce(Finding.SameForce f) {
            return at(f.joint()).then(names(List.of(f.first(), f.second())))
                    .text(variety.of("same force", " are in line and alone here, so one hands its force on to the other: ",
                            " again only pass a force along: ")).then(same(f.first(), f.second())).text(".");
        }

        @Override
        public Phrase notInOnePlane(Finding.NotInOnePlane f) {
            Phrase all = names(f.members());
            Phrase zero = zero(f.members().toArray(Member[]::new)).text(".");
            return at(f.joint()).then(variety.of("not in one plane",
                    Phrase.of("only ").then(all).text(" meet here, not in one plane, and nothing else acts. Across the plane of"
                            + " any two of them the third would be alone, so none can carry anything: ").then(zero),
                    Phrase.of("again three members that do not lie in one plane, and no load: ").then(zero)));
        }

        @Override
        public Phrase outOfPlane(Finding.OutOfPlane f) {
            String idle = f.idle().name();
            Phrase others = names(f.inPlane());
            Phrase rest = !f.loaded() ? others.text(f.inPlane().size() == 1 ? " is the only other member" : " lie in one plane")
                    : f.inPlane().isEmpty() ? Phrase.of("what acts here from outside lies in one plane")
                    : Phrase.of("what acts here from outside lies in one plane with ").then(others);
            Phrase follows = zero(f.idle()).text(".");
            return at(f.joint()).then(rest).then(variety.of("out of plane",
                    Phrase.of("; out of it only " + idle + " could act, and nothing would balance it, so ").then(follows),
                    Phrase.of(", which leaves " + idle + " alone across it: ").then(follows)));
        }

        private Phrase either(Member first, Member second) {
            return Phrase.of(first.name() + " or " + second.name());
        }
    }
}
