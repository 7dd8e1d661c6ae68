package kingpost.explain;

import static org.junit.jupiter.api.Assertions.assertTrue;

import kingpost.render.PlainRenderer;
import kingpost.statics.PublishedCase;
import kingpost.statics.Solver;
import org.junit.jupiter.api.Test;

class OpeningExplanationTest {

    /**
     * Two simple trusses with a hinge and a tie. Source: S. S. Bhavikatti, Mechanics of Solids, chapter 3, example
     * 3.11 (MS-04 in the test resources).
     */
    @Test
    void saysWhereJointsStopAndHowTheSectionOpensTheTruss() {
        String text = new PlainRenderer().render(SolutionExplanation.of(Solver.solve(PublishedCase.of("MS-04").truss())))
                .replaceAll("\\s+", " ");

        assertTrue(text.contains("no joint being ready, a section through BC, FC and AE for F_AE"), text);
        assertTrue(text.contains("Here joint by joint comes to a stop"), text);
        assertTrue(text.contains("For F_AE, take moments about joint C: F_BC and F_FC meet there and drop out."), text);
        assertTrue(text.contains("AE is in tension."), text);
    }
}
