package kingpost.explain;

import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.stream.Stream;
import kingpost.render.PlainRenderer;
import kingpost.statics.PublishedCase;
import kingpost.statics.Sections;
import kingpost.truss.TrussModel;
import org.junit.jupiter.api.Test;

class SectionExplanationTest {

    private static String text(TrussModel truss, String... members) {
        return new PlainRenderer().render(SectionExplanation.of(Sections.of(truss,
                Stream.of(members).map(m -> truss.member(m).orElseThrow()).toList()))).replaceAll("\\s+", " ");
    }

    @Test
    void saysWhyEachEquationLeavesItsUnknownAlone() {
        String text = text(PublishedCase.of("MS-07").truss(), "BC", "EG", "CG");

        assertTrue(text.contains("For F_BC, take moments about joint G: F_CG and F_EG meet there and drop out."), text);
        assertTrue(text.contains("For F_CG, take the sum ΣF_y: F_BC and F_EG are level. Parallel forces meet in no"
                + " point, but this sum leaves them out."), text);
        assertTrue(text.contains("BC is in tension"), text);
    }

    @Test
    void saysWhyACutGivesNothingAndOffersOne() {
        String text = text(PublishedCase.of("MS-01").truss(), "FH", "GI");

        assertTrue(text.contains("the truss still hangs together: the ends of FH are joined through FG and GH"), text);
        assertTrue(text.contains("A section through GI, FH and GH would do."), text);
    }
}
