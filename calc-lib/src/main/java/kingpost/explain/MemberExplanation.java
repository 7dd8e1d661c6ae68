package kingpost.explain;

import java.util.ArrayList;
import java.util.List;

import kingpost.derivation.Block;
import kingpost.derivation.Block.Listing;
import kingpost.derivation.Block.Prose;
import kingpost.derivation.Block.Section;
import kingpost.derivation.Derivation;
import kingpost.derivation.Expressions;
import kingpost.derivation.Phrase;
import kingpost.derivation.Table;
import kingpost.derivation.Table.Column;
import kingpost.statics.Checks;
import kingpost.statics.Inspection;
import kingpost.statics.MemberWays;
import kingpost.statics.MemberWays.Count;
import kingpost.statics.MemberWays.Way;
import kingpost.statics.Step;
import kingpost.truss.Member;

/** The way to one member: what looking tells, the ways compared by their equations, the shortest one worked. */
public final class MemberExplanation {

    private static final int FEW = 8;

    private final MemberWays ways;
    private final Notation notation;

    private MemberExplanation(MemberWays ways) {
        this.ways = ways;
        this.notation = new Notation(ways.truss());
    }

    public static Derivation of(MemberWays ways, Inspection inspection) {
        MemberExplanation explanation = new MemberExplanation(ways);
        return new Derivation(ways.truss().name() + ": member " + ways.member().name(), explanation.blocks(inspection));
    }

    /** The shortest way worked, and what it gives, without the comparison. */
    static List<Block> work(MemberWays ways, Inspection inspection) {
        MemberExplanation explanation = new MemberExplanation(ways);
        List<Block> blocks = new ArrayList<>(explanation.worked(inspection));
        blocks.add(new Prose(explanation.answer()));
        return blocks;
    }

    private List<Block> blocks(Inspection inspection) {
        List<Block> blocks = new ArrayList<>();
        if (!ways.seen().isEmpty()) {
            blocks.add(Section.of("What can be seen", seen()));
        }
        if (ways.zero()) {
            return blocks;
        }
        blocks.add(Section.of("Which way is shortest", compared()));
        blocks.addAll(worked(inspection));
        blocks.add(Section.of("Member " + ways.member().name(), List.of(new Prose(answer()))));
        return blocks;
    }

    private List<Block> seen() {
        List<Block> blocks = new ArrayList<>();
        blocks.add(Prose.of(ways.zero() ? "No calculation is needed. The joints show it"
                + (ways.seen().size() == 1 ? ":" : ", one after the other:") : "Before any equation, the joints show this:"));
        blocks.add(new Listing(false, new InspectionExplanation(notation).sentences(ways.seen())));
        if (ways.zero()) {
            blocks.add(new Prose(Phrase.of("So ").math(Expressions.equal(Notation.force(ways.member()),
                    Expressions.number(0))).text(" under these loads. The member is not useless: it braces its neighbours and"
                    + " carries other loads than these.")));
        }
        return blocks;
    }

    private List<Block> compared() {
        List<Block> blocks = new ArrayList<>();
        blocks.add(new Table(Phrase.of("Equations to be written and solved, one after the other, up to "
                + ways.member().name()), List.of(Column.left("By"), Column.right("Equations"), Column.left("They are")),
                ways.ways().stream().map(this::row).toList(), true));
        Way best = ways.ways().get(0);
        boolean tie = ways.ways().size() > 1 && ways.ways().get(1).count().isPresent()
                && ways.ways().get(1).count().get().equations() == best.count().orElseThrow().equations();
        blocks.add(Prose.of((tie ? "Two ways are equally short; take the first, " : "The shortest is ")
                + (ways.ways().size() == 1 ? "the only one, " : "") + means(best) + ", with "
                + Series.count(best.count().orElseThrow().equations(), "equation") + "."));
        return blocks;
    }

    private List<Phrase> row(Way way) {
        return List.of(Phrase.of(means(way)),
                Phrase.of(way.count().map(count -> Integer.toString(count.equations())).orElse("\u2013")),
                way.count().map(this::said).orElse(Phrase.of("these alone do not lead to the member")));
    }

    private static String means(Way way) {
        return switch (way.means()) {
            case JOINTS -> "joints alone";
            case REACTIONS_AND_JOINTS -> "reactions and joints";
            case SECTIONS -> way.count().map(Count::ofReactions).orElse(0) > 0 ? "reactions and a section" : "a section";
            case MIXED -> "sections and joints mixed";
        };
    }

    private Phrase said(Count count) {
        List<Phrase> parts = new ArrayList<>();
        if (count.ofReactions() > 0) {
            parts.add(Phrase.of(Series.number(count.ofReactions()) + " of the whole truss"));
        }
        if (!count.joints().isEmpty()) {
            parts.add(Phrase.of(count.joints().size() == 1 ? "joint " : "joints ").then(Series.names(count.joints(), FEW)));
        }
        for (List<Member> cut : count.cuts()) {
            parts.add(Phrase.of("the section through ").then(Series.names(cut.stream().map(Member::name).toList())));
        }
        return Series.and(parts);
    }

    private List<Block> worked(Inspection inspection) {
        return work(ways.steps(), notation, inspection);
    }

    /** Steps that lead to one thing, worked. */
    static List<Block> work(List<Step> steps, Notation notation, Inspection inspection) {
        List<Block> blocks = new ArrayList<>();
        JointExplanation joints = new JointExplanation(notation, inspection);
        OpeningExplanation sections = new OpeningExplanation(notation, new Variety());
        for (Step step : steps) {
            if (step instanceof Step.Reactions reactions) {
                blocks.add(Section.of("Reactions", new ReactionsExplanation(notation).blocks(reactions)));
            } else if (step instanceof Step.AtSection section) {
                blocks.add(Section.of(OpeningExplanation.title(section), sections.blocks(section)));
            } else if (step instanceof Step.AtJoint joint) {
                Phrase gives = Series.and(joint.answers(), answer -> Phrase.of(notation.symbol(answer.unknown())));
                blocks.add(Section.of("Joint " + joint.joint(), joints.blocks(joint, Phrase.of("Joint ")
                        .strong(joint.joint()).text(" is wanted for ").then(gives).text("."))));
            }
        }
        return blocks;
    }

    private Phrase answer() {
        Phrase force = Phrase.of("The force is ").math(Expressions.equal(Notation.force(ways.member()),
                notation.answer(ways.force()))).text(ways.force() == 0 ? ", nothing under these loads."
                : ", " + SenseWords.noun(ways.force()) + ".");
        if (ways.worst() == 0) {
            return force.sentence("All joint equations, solved at once as a second method, give the same to the last figure.");
        }
        Phrase size = Phrase.of("All joint equations, solved at once as a second method, differ from it by ")
                .math(Notation.three(ways.worst())).text(" of the largest force");
        return force.sentence(ways.worst() <= Checks.TOLERANCE ? size.text(", which is rounding.")
                : size.text(", which is more than rounding. ").strong("Do not use this answer")
                        .text(": the truss is close to a mechanism."));
    }
}
