package kingpost.explain;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

import kingpost.derivation.Block;
import kingpost.derivation.Block.Prose;
import kingpost.derivation.Derivation;
import kingpost.derivation.Phrase;
import kingpost.graphic.ForceDiagram;
import kingpost.statics.AxisEquation;
import kingpost.statics.BodyEquation;
import kingpost.statics.Checks;
import kingpost.statics.JointForce;
import kingpost.statics.Solution;
import kingpost.statics.Step;

/** How the answers were checked: equations left over, the truss as a whole, a second method. */
public final class ChecksExplanation {

    private static final int FEW = 6;

    private final Notation notation;
    private final Solution solution;
    private final Checks checks;

    ChecksExplanation(Notation notation, Solution solution) {
        this.notation = notation;
        this.solution = solution;
        this.checks = solution.checks();
    }

    public static Derivation of(Solution solution) {
        ChecksExplanation explanation = new ChecksExplanation(new Notation(solution.truss()), solution);
        List<Block> blocks = new ArrayList<>(explanation.blocks());
        blocks.addAll(explanation.drawing());
        return new Derivation(solution.truss().name() + ": checks", blocks);
    }

    List<Block> blocks() {
        List<Block> blocks = new ArrayList<>(leftOver());
        blocks.addAll(whole());
        blocks.add(new Prose(second()));
        blocks.add(new Prose(verdict()));
        if (solution.determinacy().isNearlyAMechanism()) {
            blocks.add(new Prose(DeterminacyExplanation.warning(solution.determinacy())));
        }
        return blocks;
    }

    private List<Block> leftOver() {
        Map<String, List<AxisEquation>> byJoint = new LinkedHashMap<>();
        checks.unused().stream().filter(unused -> !unused.equation().terms().isEmpty()).limit(FEW)
                .forEach(unused -> byJoint.computeIfAbsent(unused.joint(), joint -> new ArrayList<>())
                        .add(unused.equation()));
        if (byJoint.isEmpty()) {
            return List.of();
        }
        List<Block> blocks = new ArrayList<>();
        int all = (int) checks.unused().stream().filter(unused -> !unused.equation().terms().isEmpty()).count();
        blocks.add(Prose.of(all == 1 ? "One equation was left over. With the answers put in, it must come to nothing."
                : Series.capital(Series.number(all)) + " equations were left over. With the answers put in, each must come"
                + " to nothing" + (all > FEW ? "; here are the first " + Series.number(FEW) + "." : ".")));
        byJoint.forEach((joint, equations) -> {
            blocks.add(new Prose(Phrase.of("At joint ").strong(joint).text(":")));
            equations.forEach(equation -> blocks.add(written(joint, equation)));
        });
        return blocks;
    }

    private Block written(String joint, AxisEquation equation) {
        Step.Axes axes = JointExplanation.joints(solution).stream().filter(step -> step.joint().equals(joint))
                .map(Step.AtJoint::axes).findFirst().orElse(new Step.Axes.Conventional());
        List<JointForce> forces = equation.terms().stream().map(AxisEquation.Term::force).toList();
        return new JointEquations(notation, axes, forces).checking(equation);
    }

    private List<Block> whole() {
        List<Block> blocks = new ArrayList<>();
        blocks.add(Prose.of("The loads and reactions must balance over the truss as a whole, whatever happens inside it:"));
        BodyEquations written = new BodyEquations(notation);
        for (BodyEquation equation : checks.loadsAndReactions()) {
            if (!equation.terms().isEmpty()) {
                blocks.add(written.block(equation));
            }
        }
        return blocks;
    }

    private Phrase second() {
        double worst = checks.secondMethod().values().stream()
                .mapToDouble(answer -> Math.abs(answer.first() - answer.second())).max().orElse(0);
        Phrase method = Phrase.of("As a second method, all ").text(Integer.toString(solution.determinacy().count().equations()))
                .text(" joint equations were written down at once and solved by elimination, without any order of joints.");
        return method.sentence(worst == 0 ? Phrase.of("It gives the same answers to the last figure.")
                : Phrase.of("Its answers differ from those above by no more than ").math(notation.answer(worst)).text("."));
    }

    private Phrase verdict() {
        if (checks.worst() == 0) {
            return Phrase.of("Every check closes exactly. The answers hold.");
        }
        Phrase size = Phrase.of("Measured against the largest force, ").math(notation.answer(checks.scale()))
                .text(", the worst remainder of all these checks is ").math(Notation.three(checks.worst()));
        return checks.pass()
                ? size.text(", which is rounding in the last of some sixteen figures. The answers hold.")
                : size.text(", which is more than rounding. ").strong("Do not use these answers")
                .text(": the truss is close to a mechanism, so that small errors grow; look at its geometry.");
    }

    /** The force diagram as a check of its own, where the truss is plane and has one. */
    private List<Block> drawing() {
        if (solution.truss().joints().stream().anyMatch(joint -> joint.z().getValue() != 0)
                || !(ForceDiagram.of(solution) instanceof ForceDiagram.Drawn diagram)) {
            return List.of();
        }
        if (!diagram.closes()) {
            return List.of(new Prose(Phrase.of("Drawn as a force diagram, with lines parallel to the members, the truss does"
                    + " not close: it misses by ").math(notation.answer(diagram.worst() * diagram.scale())).text(".")));
        }
        Phrase said = Phrase.of("Drawn as a force diagram, with lines parallel to the members, the truss closes");
        return List.of(new Prose(diagram.worst() == 0 ? said.text(" exactly.") : said.text(" to within ")
                .math(Notation.three(diagram.worst())).text(" of the largest force.")));
    }
}
