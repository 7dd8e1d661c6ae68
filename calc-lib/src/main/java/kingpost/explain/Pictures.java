package kingpost.explain;

import java.util.List;

import kingpost.derivation.Block;
import kingpost.derivation.Figure;
import kingpost.derivation.Phrase;
import kingpost.diagram.ForceDiagramFigure;
import kingpost.diagram.EnvelopeFigure;
import kingpost.diagram.ForceFigure;
import kingpost.diagram.ForcePolygonFigure;
import kingpost.diagram.FreeBodyFigure;
import kingpost.diagram.InfluenceFigure;
import kingpost.diagram.MechanismFigure;
import kingpost.diagram.ProgressFigure;
import kingpost.diagram.SectionFigure;
import kingpost.diagram.TrussFigure;
import kingpost.diagram.WholeBodyFigure;
import kingpost.graphic.ForceDiagram;
import kingpost.graphic.ForcePolygon;
import kingpost.moving.InfluenceLine;
import kingpost.moving.TrainEffect;
import kingpost.moving.UniformEffect;
import kingpost.statics.AxisEquation;
import kingpost.statics.BodyEquation;
import kingpost.statics.Envelope;
import kingpost.statics.Determinacy;
import kingpost.statics.Solution;
import kingpost.statics.Source;
import kingpost.statics.Step;
import kingpost.svg.Svg;
import kingpost.truss.TrussModel;

/** The figures of a derivation, each with its caption; the figure's own description serves who cannot see it. */
final class Pictures {

    private Pictures() {
    }

    static List<Block> truss(TrussModel truss) {
        return List.of(figure(TrussFigure.of(truss), Phrase.of(truss.name() + " as given.")));
    }

    private static Figure figure(Svg svg, Phrase caption) {
        return new Figure(svg, caption, svg.description());
    }

    static List<Block> wholeTruss(TrussModel truss, Step.Reactions step) {
        return List.of(figure(WholeBodyFigure.of(truss, step),
                Phrase.of("The whole truss cut free, each reaction drawn the way it counts positive.")));
    }

    /** Nothing where no joint of the truss is known to move. */
    static List<Block> mechanism(TrussModel truss, Determinacy.Mechanism mechanism) {
        if (truss.joints().stream().noneMatch(joint -> mechanism.motion().containsKey(joint.name()))) {
            return List.of();
        }
        return List.of(figure(MechanismFigure.of(truss, mechanism),
                Phrase.of("How it moves: dashed, and drawn much larger than it begins.")));
    }

    /** @param first whether it is the first free body on the page, so that its arrows are explained */
    static List<Block> freeBody(TrussModel truss, Step.AtJoint step, boolean first) {
        String arrows = first ? ": known forces in their true sense with their sizes, unknown ones as tension, away from"
                + " the joint." : ".";
        return List.of(figure(FreeBodyFigure.of(truss, step),
                Phrase.of("Free body of joint " + step.joint() + arrows)));
    }

    static List<Block> section(TrussModel truss, Step.AtSection step) {
        boolean moments = step.equations().stream().anyMatch(e -> e.kind() instanceof BodyEquation.Kind.Moment
                && !(e.role() instanceof AxisEquation.Role.Check));
        return List.of(figure(SectionFigure.of(truss, step), Phrase.of((step.cut().isEmpty() ? "The whole truss"
                + " cut free" : "The part cut free") + ", the unknown forces drawn as"
                + " tension, away from it" + (moments ? "; ringed: the points about which moments are taken, with the arms"
                + " from each below and beside." : "."))));
    }

    /** Nothing where the step gave no member. */
    static List<Block> progress(Solution solution, Step step) {
        boolean members = step.answers().stream().anyMatch(answer -> answer.unknown() instanceof Source.OfMember);
        if (!(step instanceof Step.AtJoint) && !members) {
            return List.of();
        }
        String after = step instanceof Step.AtJoint joint ? "After joint " + joint.joint() + ", what it" : "What this step";
        return List.of(figure(ProgressFigure.of(solution, step), Phrase.of(after + " gave is on the broad band.")));
    }

    static List<Block> envelope(Envelope envelope) {
        return List.of(figure(EnvelopeFigure.of(envelope), Phrase.of("The largest tension (T) and compression (C) in each"
                + " member.")));
    }

    static List<Block> results(Solution solution) {
        return List.of(figure(ForceFigure.of(solution), Phrase.of("The forces in the members, and the reactions.")));
    }

    static List<Block> polygon(ForcePolygon polygon) {
        return List.of(figure(ForcePolygonFigure.of(polygon), Phrase.of("Joint " + polygon.joint()
                + ": its forces numbered clockwise, and drawn to scale from tip to tail.")));
    }

    static List<Block> forceDiagram(ForceDiagram.Drawn diagram) {
        return List.of(figure(ForceDiagramFigure.of(diagram), Phrase.of("The spaces, and the force diagram to scale.")));
    }

    static List<Block> influence(InfluenceLine line) {
        return List.of(figure(InfluenceFigure.of(line), Phrase.of("The influence line beneath the truss, above its base where"
                + " the effect is positive.")));
    }

    static List<Block> train(InfluenceLine line, TrainEffect.Placement placement) {
        return List.of(figure(InfluenceFigure.of(line, placement), Phrase.of("The train where it does most, and the"
                + " ordinates under its wheels.")));
    }

    static List<Block> uniform(UniformEffect effect) {
        return List.of(figure(InfluenceFigure.of(effect), Phrase.of("The stretches to load: the upper strips for the largest"
                + " value, the lower ones for the smallest.")));
    }
}
