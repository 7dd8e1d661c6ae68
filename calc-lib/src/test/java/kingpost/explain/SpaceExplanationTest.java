package kingpost.explain;

import static org.junit.jupiter.api.Assertions.assertTrue;

import kingpost.GoldenFile;
import kingpost.render.PlainRenderer;
import kingpost.statics.JointOrder;
import kingpost.statics.PublishedCase;
import kingpost.statics.Solver;
import kingpost.statics.SpaceTrusses;
import kingpost.truss.TrussModel;
import org.junit.jupiter.api.Test;

/** Worked solutions of space trusses, as the golden files have them. */
class SpaceExplanationTest {

    private static String text(TrussModel truss) {
        return new PlainRenderer().render(WordsOnly.of(SolutionExplanation.of(Solver.solve(truss))));
    }

    @Test
    void readAsTheGoldenFilesHaveThem() {
        GoldenFile.check("kingpost/explain/lantern-mast.txt", text(SpaceTrusses.mast()));
        GoldenFile.check("kingpost/explain/conveyor-boom.txt", text(SpaceTrusses.boom()));
        GoldenFile.check("kingpost/explain/st-01.txt", text(PublishedCase.of("ST-01").truss()));
    }

    @Test
    void theOrderSpeaksOfThreeUnknowns() {
        TrussModel truss = SpaceTrusses.tripod();
        String said = new PlainRenderer().render(WordsOnly.of(JointOrderExplanation.of(truss, JointOrder.of(truss))))
                .replaceAll("\\s+", " ");
        assertTrue(said.contains("A joint gives three equations, so it can be worked when no more than three forces there"
                + " are unknown, and not all in one plane."), said);
    }
}
