package kingpost.explain;

import java.util.ArrayList;
import java.util.List;

import kingpost.derivation.Block;
import kingpost.derivation.Block.Equations;
import kingpost.derivation.EquationLine;
import kingpost.derivation.Expression;
import kingpost.derivation.Expression.Relator;
import kingpost.derivation.Expressions;
import kingpost.statics.AxisEquation;
import kingpost.statics.JointForce;
import kingpost.statics.Source;
import kingpost.statics.Step;
import kingpost.statics.Vector;
import kingpost.truss.Load;

/** The equations of one joint, written with symbols, then with numbers, then solved. */
final class JointEquations {

    private final Notation notation;
    private final Step.Axes axes;
    private final List<JointForce> forces;
    private final boolean isInSpace;
    private final List<Source> solved = new ArrayList<>();

    JointEquations(Notation notation, Step.Axes axes, List<JointForce> forces) {
        this.notation = notation;
        this.isInSpace = notation.truss().isSpace();
        this.axes = axes;
        this.forces = forces;
    }

    /** An equation that gives one unknown: symbols, numbers, answer. */
    Block giving(AxisEquation equation, Step.Answer answer) {
        List<EquationLine> lines = equation.terms().size() > 1 ? lines(equation, false) : new ArrayList<>();
        solved.add(answer.unknown());
        EquationLine line = answerLine(answer);
        lines.add(lines.isEmpty() ? line.ledBy(lead(equation.axis(), isInSpace)) : line);
        return new Equations(lines);
    }

    /** Equations that give their unknowns only together: symbols and numbers of each, then the answers. */
    List<Block> together(List<AxisEquation> equations, List<Step.Answer> answers) {
        List<EquationLine> lines = new ArrayList<>();
        equations.forEach(equation -> lines.addAll(lines(equation, false)));
        answers.forEach(answer -> solved.add(answer.unknown()));
        return List.of(new Equations(lines), new Equations(answers.stream().map(this::answerLine).toList()));
    }

    /** Equations whose unknowns stay open for now. */
    Block unsolved(List<AxisEquation> equations) {
        List<EquationLine> lines = new ArrayList<>();
        equations.forEach(equation -> lines.addAll(lines(equation, false)));
        return new Equations(lines);
    }

    Block answers(List<Step.Answer> answers) {
        return new Equations(answers.stream().map(this::answerLine).toList());
    }

    /** An equation without an unknown: its numbers add up to nothing. */
    Block checking(AxisEquation equation) {
        forces.forEach(force -> solved.add(force.source()));
        return new Equations(lines(equation, true));
    }

    private EquationLine answerLine(Step.Answer answer) {
        String remark = answer.unknown() instanceof Source.OfReaction reaction ? Heading.words(reaction, answer.value())
                : SenseWords.noun(answer.value());
        return EquationLine.of(notation.symbol(answer.unknown()), Relator.EQUAL, notation.answer(answer.value()))
                .remarked(remark);
    }

    private List<EquationLine> lines(AxisEquation equation, boolean check) {
        List<Share> shares = equation.terms().stream().map(term -> share(term, equation.axis())).toList();
        return Share.lines(shares, lead(equation.axis(), isInSpace), check);
    }

    /** The sum's name with the sense that counts as positive; in space without, as arrows on paper tell two axes only. */
    static Expression lead(AxisEquation.Axis axis, boolean isInSpace) {
        Expression sum = Expressions.sigma(Expressions.symbol("F", axis.label()));
        if (isInSpace) {
            return Expressions.equal(sum, Expressions.number(0));
        }
        return Expressions.equal(Expressions.product(Heading.sense(axis.direction()), sum), Expressions.number(0));
    }

    private Share share(AxisEquation.Term term, AxisEquation.Axis axis) {
        JointForce force = term.force();
        boolean first = axis.label().startsWith("x") || force.along().z() != 0;
        if (force.source() instanceof Source.OfLoad of && of.load() instanceof Load.Components parts
                && (axes instanceof Step.Axes.Conventional || isInSpace && !axis.label().equals("n"))) {
            Expression part = Notation.given(component(parts, axis).abs());
            return Share.ofSum(term.cosine() < 0, Cosine.of(axis.direction(), axis.direction(), true), part, part);
        }
        Cosine cosine = isInSpace ? Cosine.inSpace(force.along(), axis.direction())
                : Cosine.of(force.along(), exactly(axis.direction()), first);
        Expression symbol = notation.symbol(force.source());
        boolean isKnown = force.known() || solved.contains(force.source());
        boolean isLoad = force.source() instanceof Source.OfLoad;
        Expression value = isKnown && !isLoad ? notation.answer(force.value()) : symbol;
        return Share.ofSum(term.cosine() < 0, cosine, symbol, value);
    }

    private static kingpost.units.Quantity component(Load load, AxisEquation.Axis axis) {
        return switch (axis.label()) {
            case "x" -> load.fx();
            case "y" -> load.fy();
            default -> load.fz();
        };
    }

    /** The axis in the numbers of the force that it lies along or across, which may be exact where a unit vector is not. */
    private Vector exactly(Vector direction) {
        if (!(axes instanceof Step.Axes.Turned turned)) {
            return direction;
        }
        return forces.stream().filter(force -> force.source().equals(turned.along())).map(JointForce::along)
                .map(along -> Math.abs(along.unit().dot(direction)) > 0.5 ? along
                        : new Vector(-along.y(), along.x(), 0))
                .findFirst().orElse(direction);
    }
}
