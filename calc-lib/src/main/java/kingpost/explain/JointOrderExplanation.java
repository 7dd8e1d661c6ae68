package kingpost.explain;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.StreamSupport;

import kingpost.derivation.Block;
import kingpost.derivation.Block.Listing;
import kingpost.derivation.Block.Prose;
import kingpost.derivation.Derivation;
import kingpost.derivation.Phrase;
import kingpost.derivation.Table;
import kingpost.derivation.Table.Column;
import kingpost.statics.JointOrder;
import kingpost.statics.JointOrder.Turn;
import kingpost.statics.Solution;
import kingpost.statics.Source;
import kingpost.statics.Step;
import kingpost.statics.Step.JointCount;
import kingpost.truss.TrussModel;

/** Which joint comes when, how many unknowns each other joint has then, and why. */
public final class JointOrderExplanation {

    private static final int FEW = 12;

    private final Notation notation;

    JointOrderExplanation(Notation notation) {
        this.notation = notation;
    }

    public static Derivation of(TrussModel truss, JointOrder order) {
        return new Derivation(truss.name() + ": order of the joints",
                new JointOrderExplanation(new Notation(truss)).blocks(order));
    }

    /** The plan as part of a solution: the order and what each joint will give. */
    List<Block> plan(Solution solution) {
        List<Step.AtJoint> steps = JointExplanation.joints(solution);
        List<Block> blocks = new ArrayList<>();
        if (steps.isEmpty()) {
            blocks.add(Prose.of("Nothing is left to calculate: inspection has told every member force."));
            return blocks;
        }
        String number = notation.truss().isSpace() ? "three" : "two";
        blocks.add(new Prose(Phrase.of("A joint gives " + number + " equations, so it can be worked when no more than "
                + number + " forces there are unknown.").sentence(atTheStart(start(solution)))
                .sentence("The order is then:")));
        blocks.add(new Listing(true, solution.steps().stream().filter(step -> !comesFirst(step))
                .map(step -> step.accept(new Turns()).text(" for ")
                        .then(Series.and(step.answers(), answer -> Phrase.of(notation.symbol(answer.unknown())))))
                .toList()));
        return blocks;
    }

    private static boolean comesFirst(Step step) {
        return step instanceof Step.Reactions reactions && reactions.why() != Step.WhyReactions.WITHIN_REACH_NOW;
    }

    /** The look round before the first move after the reactions. */
    private static List<JointCount> start(Solution solution) {
        Step first = solution.steps().stream().filter(step -> !(step instanceof Step.Reactions)).findFirst().orElseThrow();
        return first instanceof Step.AtSection section ? section.stuck()
                : first instanceof Step.JointsTogether together ? together.stuck()
                : first instanceof Step.TwoBodies two ? two.stuck()
                : ((Step.AtJoint) first).selection().counts();
    }

    /** What is worked in a step, as the plan lists it. */
    private static final class Turns implements Step.Visitor<Phrase> {

        @Override
        public Phrase reactions(Step.Reactions step) {
            return Phrase.of("the whole truss once more,");
        }

        @Override
        public Phrase joint(Step.AtJoint step) {
            return Phrase.of("joint ").strong(step.joint());
        }

        @Override
        public Phrase section(Step.AtSection step) {
            return Phrase.of("no joint being ready, a section through ")
                    .then(Series.names(step.cut().stream().map(kingpost.truss.Member::name).toList()));
        }

        @Override
        public Phrase twoBodies(Step.TwoBodies step) {
            return Phrase.of("no joint being ready, an equation each of "
                    + OpeningExplanation.plain(step.bodies().stream().map(OpeningExplanation::body).toList()));
        }

        @Override
        public Phrase together(Step.JointsTogether step) {
            return Phrase.of("no joint being ready, joints ").then(Series.names(step.joints())).text(" together");
        }
    }

    private static Phrase atTheStart(List<JointCount> counts) {
        if (counts.size() > FEW) {
            return Phrase.EMPTY;
        }
        List<Phrase> each = new ArrayList<>();
        for (JointCount count : counts) {
            int unknowns = count.unknowns().size();
            String number = each.isEmpty() ? Series.count(unknowns, "force") : Series.number(unknowns);
            each.add(Phrase.of(number + " at " + count.joint()));
        }
        return Phrase.of("Unknown at the start are ").then(Series.and(each)).text(".");
    }

    private List<Block> blocks(JointOrder order) {
        List<Block> blocks = new ArrayList<>();
        blocks.add(Prose.of(notation.truss().isSpace()
                ? "A joint gives three equations, so it can be worked when no more than three forces there are unknown,"
                + " and not all in one plane. " + reactions(order)
                : "A joint gives two equations, so it can be worked when no more than two forces there are"
                + " unknown, and not both in one line. " + reactions(order)));
        if (!order.turns().isEmpty()) {
            blocks.add(table(order));
        }
        for (JointOrder.Opening opening : order.openings()) {
            blocks.add(new Prose(opening(opening)));
        }
        if (!order.stuckAt().isEmpty()) {
            blocks.add(new Prose(Phrase.of(order.turns().isEmpty() ? "No joint can be worked: at " : "There the way ends: at ")
                    .then(Series.names(order.stuckAt(), FEW))
                    .text(notation.truss().isSpace() ? " more than three forces stay unknown."
                            : " more than two forces stay unknown. A section through the truss has to help.")));
        }
        return blocks;
    }

    private Phrase opening(JointOrder.Opening opening) {
        Phrase when = Phrase.of(opening.after() == 0 ? "No joint can be worked to begin with. "
                : "After " + Series.count(opening.after(), "joint") + " no other is ready. ");
        Phrase how = opening.kind() == JointOrder.Opening.Kind.SECTION
                ? when.text("A section through ").then(Series.names(opening.names())).text(" gives ")
                : opening.kind() == JointOrder.Opening.Kind.WHOLE_TRUSS
                ? Phrase.of("With that, equations of the whole truss give ")
                : opening.kind() == JointOrder.Opening.Kind.TWO_BODIES
                ? when.text("An equation of the whole truss and one of a part, or of two parts, cut through ")
                        .then(Series.names(opening.names())).text(", together give ")
                : when.text("Joints ").then(Series.names(opening.names())).text(", solved together, give ");
        return how.then(Series.and(opening.gives(), this::symbol)).text(", and the work goes on from there.");
    }

    private static String reactions(JointOrder order) {
        return order.reactionsFirst().map(why -> switch (why) {
            case NO_JOINT_TO_START -> "At first no joint is like that, so the reactions come before all joints.";
            case JOINTS_STOP_SHORT -> "Without the reactions the way from joint to joint would stop short, so they come first.";
            case WITHIN_REACH_NOW, ASKED_FOR, SECTION_NEEDS_THEM, MEMBER_NEEDS_THEM -> "The reactions were asked for and come first.";
        }).orElse("The reactions are not needed to begin.");
    }

    private Table table(JointOrder order) {
        List<Column> columns = List.of(Column.left("Joint"), Column.left("Gives"), Column.left("Chosen because"),
                Column.left("Unknowns at the others"));
        return new Table(Phrase.of("The joints in order"), columns, order.turns().stream().map(this::row).toList(), true);
    }

    private List<Phrase> row(Turn turn) {
        return List.of(Phrase.of(turn.number() + ". " + turn.joint()),
                Series.and(turn.gives(), this::symbol), Phrase.of(reason(turn)), others(turn));
    }

    private Phrase symbol(Source source) {
        return Phrase.of(notation.symbol(source));
    }

    private static String reason(Turn turn) {
        return switch (turn.selection().reason()) {
            case ONLY_ONE -> "only this one is ready";
            case FEWEST_UNKNOWNS -> "it has the fewest unknowns";
            case NEXT_ALONG -> "it is next to the last one";
            case FIRST_NAMED -> "the first of several alike";
            case ONE_ACROSS -> "one unknown lies across the others";
        };
    }

    private static Phrase others(Turn turn) {
        List<String> each = new ArrayList<>();
        StreamSupport.stream(turn.selection().counts().spliterator(), false)
                .filter(count -> !count.joint().equals(turn.joint()))
                .forEach(count -> each.add(count.joint() + " " + count.unknowns().size() + (count.ready() ? " (ready)" : "")));
        return Phrase.of(each.isEmpty() ? "none left" : each.size() <= FEW ? String.join(", ", each)
                : String.join(", ", each.subList(0, FEW)) + " and so on");
    }
}
