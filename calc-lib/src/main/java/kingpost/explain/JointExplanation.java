package kingpost.explain;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

import kingpost.derivation.Block;
import kingpost.derivation.Block.Prose;
import kingpost.derivation.Block.Section;
import kingpost.derivation.Derivation;
import kingpost.derivation.Expressions;
import kingpost.derivation.Phrase;
import kingpost.statics.AxisEquation;
import kingpost.statics.AxisEquation.Role;
import kingpost.statics.Checks;
import kingpost.statics.JointForce;
import kingpost.statics.Inspection;
import kingpost.statics.Solution;
import kingpost.statics.Source;
import kingpost.statics.Step;
import kingpost.statics.Vector;

/** One joint: why it is its turn, its free body, its equations and what their answers mean. */
public final class JointExplanation {

    private final Notation notation;
    private final Solution solution;
    private final Variety variety = new Variety();
    private final JointIntroduction introduction;
    private final JointOutcome outcome;
    private final Slopes slopes = new Slopes(variety);

    JointExplanation(Notation notation, Solution solution) {
        this(notation, solution, solution.inspection());
    }

    /** For joints that are worked outside the solution of a whole truss. */
    JointExplanation(Notation notation, Inspection inspection) {
        this(notation, null, inspection);
    }

    /** @param solution null where single joints are explained */
    private JointExplanation(Notation notation, Solution solution, Inspection inspection) {
        this.notation = notation;
        this.solution = solution;
        InLine inLine = new InLine(inspection);
        this.introduction = new JointIntroduction(notation, variety, inLine);
        this.outcome = new JointOutcome(notation, variety, inLine);
    }

    /**
     * The work at one joint.
     *
     * @throws kingpost.units.CalculationException when the truss has no joint of that name
     */
    public static Derivation of(Solution solution, String joint) {
        Notation notation = new Notation(solution.truss());
        if (solution.truss().joint(joint).isEmpty()) {
            throw new kingpost.units.CalculationException("Joint " + joint + ": " + solution.truss().name()
                    + " has no joint of that name; its joints are "
                    + String.join(", ", solution.truss().joints().stream().map(kingpost.truss.Joint::name).toList()) + ".");
        }
        JointExplanation explanation = new JointExplanation(notation, solution);
        List<Step.AtJoint> steps = joints(solution);
        for (int i = 0; i < steps.size(); i++) {
            if (steps.get(i).joint().equals(joint)) {
                return new Derivation(solution.truss().name() + ": joint " + joint, explanation.blocks(steps, i));
            }
        }
        return new Derivation(solution.truss().name() + ": joint " + joint, explanation.notWorked(joint));
    }

    /** The joints worked, in order. */
    static List<Step.AtJoint> joints(Solution solution) {
        return solution.steps().stream().filter(Step.AtJoint.class::isInstance).map(Step.AtJoint.class::cast).toList();
    }

    /** A section for each joint worked and for whatever opens the truss between them, in order. */
    List<Block> sections() {
        List<Step.AtJoint> joints = joints(solution);
        OpeningExplanation opening = new OpeningExplanation(notation, variety);
        ReactionsExplanation reactions = new ReactionsExplanation(notation);
        List<Block> sections = new ArrayList<>();
        int next = 0;
        for (Step step : solution.steps()) {
            if (step instanceof Step.AtJoint joint) {
                List<Block> blocks = new ArrayList<>(blocks(joints, next++));
                blocks.addAll(Pictures.progress(solution, joint));
                sections.add(Section.of("Joint " + joint.joint(), blocks));
            } else if (step instanceof Step.Reactions again && again.why() == Step.WhyReactions.WITHIN_REACH_NOW) {
                sections.add(Section.of("The whole truss once more", reactions.blocks(again)));
            } else if (step instanceof Step.AtSection section) {
                sections.add(opened(OpeningExplanation.title(section), opening.blocks(section), step));
            } else if (step instanceof Step.JointsTogether together) {
                sections.add(opened(OpeningExplanation.title(together), opening.blocks(together), step));
            } else if (step instanceof Step.TwoBodies two) {
                sections.add(opened(OpeningExplanation.title(two), opening.blocks(two), step));
            }
        }
        return sections;
    }

    private Section opened(String title, List<Block> blocks, Step step) {
        List<Block> all = new ArrayList<>(blocks);
        all.addAll(Pictures.progress(solution, step));
        return Section.of(title, all);
    }

    private List<Block> blocks(List<Step.AtJoint> steps, int index) {
        Step.AtJoint step = steps.get(index);
        Optional<Step.AtJoint> previous = index == 0 ? Optional.empty() : Optional.of(steps.get(index - 1));
        return blocks(step, introduction.why(step, previous, index == steps.size() - 1));
    }

    /** @param why why it is this joint's turn */
    List<Block> blocks(Step.AtJoint step, Phrase why) {
        List<Block> blocks = new ArrayList<>();
        blocks.add(new Prose(why.sentence(introduction.known(step))));
        blocks.addAll(Pictures.freeBody(notation.truss(), step, variety.isFirst("free body")));
        if (notation.truss().isSpace()) {
            blocks.addAll(new DirectionTable(notation).of(step));
        }
        Phrase geometry = notation.truss().isSpace() ? across(step) : axes(step).sentence(slopes.at(step));
        if (!geometry.isEmpty()) {
            blocks.add(new Prose(geometry));
        }
        equations(step, blocks);
        Phrase meaning = outcome.of(step);
        if (!meaning.isEmpty()) {
            blocks.add(new Prose(meaning));
        }
        return blocks;
    }

    /** In space: the axis that leaves one unknown alone, where x, y and z do not. */
    private Phrase across(Step.AtJoint step) {
        if (!(step.axes() instanceof Step.Axes.Across across)) {
            return Phrase.EMPTY;
        }
        List<Source> plane = across.plane();
        Phrase others = Series.and(plane, source -> Phrase.of(notation.symbol(source)));
        Phrase alone = Series.and(step.answers().stream().map(Step.Answer::unknown)
                .filter(source -> !plane.contains(source)).toList(), source -> Phrase.of(notation.symbol(source)));
        Vector n = across.direction();
        return Phrase.of("Let n stand at right angles to the plane of ").then(others).text(", with the cosines (")
                .math(Notation.four(n.x())).text(", ").math(Notation.four(n.y())).text(", ").math(Notation.four(n.z()))
                .text("). Along n only ").then(alone).text(" is left of the unknowns.");
    }

    private Phrase axes(Step.AtJoint step) {
        if (!(step.axes() instanceof Step.Axes.Turned turned)) {
            return Phrase.EMPTY;
        }
        Phrase along = Phrase.of(notation.symbol(turned.along()));
        Phrase angle = Phrase.of(Cosine.angle(turned.degrees()));
        if (step.selection().reason() == Step.Selection.Reason.ONE_ACROSS) {
            return Phrase.of("Let x\u2032 lie along ").then(along).text(", ").then(angle)
                    .text(" from x. Across it, along y\u2032, only ").then(unknowns(step)).text(" is left of the unknowns.");
        }
        Phrase turn = variety.isFirst("turned")
                ? Phrase.of("Here it pays to turn the axes: let x′ lie along ").then(along).text(", ").then(angle)
                .text(" from x, and y′ across it. What share of a force counts then follows from its angle with x′.")
                : variety.of("turned again",
                Phrase.of("Turn the axes again, with x′ along ").then(along).text(" (").then(angle).text(" from x)."),
                Phrase.of("With x′ along ").then(along).text(", ").then(angle).text(" from x, the work is shorter."),
                Phrase.of("Let x′ follow ").then(along).text(" here, at ").then(angle).text(" from x."));
        return turn.sentence(switch (turned.reason()) {
            case UNKNOWNS_PERPENDICULAR -> variety.of("perpendicular",
                    unknowns(step).text(" are at right angles, so each equation will hold only one of them."),
                    Phrase.of("Being at right angles, ").then(unknowns(step)).text(" then have an equation each."));
            case FREES_ONE -> variety.of("frees one",
                    Phrase.of("Both unknowns are inclined; but across x′, ").then(along).text(" has no part, and ")
                            .then(others(step, turned)).text(" stands alone."),
                    along.text(" then drops out of one equation, which ").then(others(step, turned))
                            .text(" has to itself."),
                    Phrase.of("That keeps ").then(along).text(" out of the sum across it."));
        });
    }

    private Phrase unknowns(Step.AtJoint step) {
        return Series.and(step.answers(), answer -> Phrase.of(notation.symbol(answer.unknown())));
    }

    private Phrase others(Step.AtJoint step, Step.Axes.Turned turned) {
        return Series.and(step.answers().stream().map(Step.Answer::unknown).filter(other -> !other.equals(turned.along()))
                .toList(), source -> Phrase.of(notation.symbol(source)));
    }

    private void equations(Step.AtJoint step, List<Block> blocks) {
        JointEquations written = new JointEquations(notation, step.axes(), step.forces());
        List<AxisEquation> together = new ArrayList<>();
        boolean first = true;
        for (AxisEquation equation : step.equations()) {
            if (equation.role() instanceof Role.Gives gives) {
                blocks.add(new Prose(lead(step, equation, gives.unknown(), first)));
                blocks.add(written.giving(equation, answer(step, gives.unknown())));
                first = false;
            } else if (equation.role() instanceof Role.Together) {
                together.add(equation);
            }
        }
        if (!together.isEmpty()) {
            List<Source> unknowns = ((Role.Together) together.get(0).role()).unknowns();
            blocks.add(new Prose(Phrase.of(first ? "Every equation holds more than one of " : "The others each hold more than one of ")
                    .then(Series.and(unknowns, source -> Phrase.of(notation.symbol(source))))
                    .text(", so they are solved together.")));
            blocks.addAll(written.together(together, unknowns.stream().map(source -> answer(step, source)).toList()));
        }
    }

    private static Step.Answer answer(Step.AtJoint step, Source unknown) {
        return step.answers().stream().filter(answer -> answer.unknown().equals(unknown)).findFirst().orElseThrow();
    }

    /** Why this equation, in a few words before it. */
    private Phrase lead(Step.AtJoint step, AxisEquation equation, Source unknown, boolean first) {
        Phrase sum = Phrase.of(Expressions.sigma(Expressions.symbol("F", equation.axis().label())));
        Phrase symbol = Phrase.of(notation.symbol(unknown));
        if (!first) {
            return variety.of("second equation",
                    Phrase.of("With that, ").then(sum).text(" gives ").then(symbol).text(":"),
                    Phrase.of("The other equation then holds only ").then(symbol).text(":"),
                    Phrase.of("Then ").then(sum).text(" leaves ").then(symbol).text(":"),
                    Phrase.of("Put this into ").then(sum).text(" to find ").then(symbol).text(":"));
        }
        List<Phrase> absent = step.answers().stream().map(Step.Answer::unknown).filter(other -> !other.equals(unknown))
                .map(source -> Phrase.of(notation.symbol(source))).toList();
        if (absent.isEmpty()) {
            return variety.of("one unknown", Phrase.of("One equation is enough for ").then(symbol).text(", and ").then(sum).text(" holds it:"),
                    Phrase.of("Only ").then(sum).text(" is needed to find ").then(symbol).text(":"),
                    Phrase.of("From ").then(sum).text(" comes ").then(symbol).text(":"));
        }
        Phrase others = Series.and(absent);
        boolean one = absent.size() == 1;
        String lies = direction(step, unknown);
        return variety.of("first equation",
                Phrase.of("Start with ").then(sum).text(": ").then(others).text(lies.isEmpty() ? one ? " has" : " have"
                        : (one ? " is " : " are ") + lies + " and " + (one ? "has" : "have"))
                        .text(" no part in it, so ").then(symbol).text(" is alone there."),
                others.text(one ? " drops" : " drop").text(" out of ").then(sum).text(", which gives ").then(symbol).text(" at once:"),
                Phrase.of("In ").then(sum).text(" the only unknown is ").then(symbol).text(":"),
                sum.text(" first, because ").then(others).text(one ? " does" : " do").text(" not enter it:"));
    }

    /** "horizontal" or "vertical" where the other unknowns lie so, else nothing. */
    private static String direction(Step.AtJoint step, Source unknown) {
        List<JointForce> others = step.forces().stream().filter(force -> !force.known() && !force.source().equals(unknown))
                .toList();
        boolean horizontal = others.stream().allMatch(force -> Heading.isHorizontal(force.along()));
        boolean vertical = others.stream().allMatch(force -> Heading.isVertical(force.along()));
        return horizontal ? "horizontal" : vertical ? "vertical" : "";
    }

    /** A joint whose equations no answer needed: they check the others. */
    private List<Block> notWorked(String joint) {
        List<Block> blocks = new ArrayList<>();
        List<AxisEquation> unused = solution.checks().unused().stream().filter(each -> each.joint().equals(joint))
                .map(Checks.UnusedEquation::equation).toList();
        if (unused.isEmpty()) {
            blocks.add(Prose.of("Joint " + joint + " needs no calculation: inspection told all that its equations could."));
            blocks.addAll(new InspectionExplanation(notation).at(solution.inspection(), joint));
            return blocks;
        }
        blocks.add(Prose.of("Every force at joint " + joint + " was found at its neighbours, so its own equations were not"
                + " needed. They serve as a check:"));
        List<JointForce> forces = unused.stream().flatMap(equation -> equation.terms().stream())
                .map(AxisEquation.Term::force).distinct().toList();
        blocks.addAll(Pictures.freeBody(solution.truss(), new Step.AtJoint(0, joint, new Step.Selection(List.of(),
                Step.Selection.Reason.ONLY_ONE), forces, List.of(), new Step.Axes.Conventional(), unused, List.of()), true));
        for (AxisEquation equation : unused) {
            if (!equation.terms().isEmpty()) {
                blocks.add(new JointEquations(notation, new Step.Axes.Conventional(), forces).checking(equation));
            }
        }
        return blocks;
    }
}
