package kingpost.explain;

import java.util.List;

import kingpost.derivation.Block;
import kingpost.derivation.Figure;
import kingpost.derivation.Phrase;
import kingpost.diagram.ForceFigure;
import kingpost.diagram.FreeBodyFigure;
import kingpost.diagram.TrussFigure;
import kingpost.statics.Solution;
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

    static List<Block> wholeTruss(TrussModel truss) {
        return List.of();
    }

    /** @param first whether it is the first free body on the page, so that its arrows are explained */
    static List<Block> freeBody(Solution solution, Step.AtJoint step, boolean first) {
        String arrows = first ? ": known forces in their true sense with their sizes, unknown ones as tension, away from"
                + " the joint." : ".";
        return List.of(figure(FreeBodyFigure.of(solution.truss(), step),
                Phrase.of("Free body of joint " + step.joint() + arrows)));
    }

    static List<Block> section(TrussModel truss, Step.AtSection step) {
        return List.of();
    }

    static List<Block> progress(Solution solution, Step.AtJoint step) {
        return List.of();
    }

    static List<Block> results(Solution solution) {
        return List.of(figure(ForceFigure.of(solution), Phrase.of("The forces in the members, and the reactions.")));
    }
}
