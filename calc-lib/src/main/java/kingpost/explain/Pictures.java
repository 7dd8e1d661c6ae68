package kingpost.explain;

import java.util.List;

import kingpost.derivation.Block;
import kingpost.statics.Solution;
import kingpost.statics.Step;
import kingpost.truss.TrussModel;

/** The figures of a derivation, each with its caption; the figure's own description serves who cannot see it. */
final class Pictures {

    private Pictures() {
    }

    static List<Block> truss(TrussModel truss) {
        return List.of();
    }

    static List<Block> wholeTruss(TrussModel truss) {
        return List.of();
    }

    static List<Block> freeBody(Solution solution, Step.AtJoint step, boolean first) {
        return List.of();
    }

    static List<Block> progress(Solution solution, Step.AtJoint step) {
        return List.of();
    }

    static List<Block> results(Solution solution) {
        return List.of();
    }
}
