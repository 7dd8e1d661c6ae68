package kingpost.explain;

import static org.junit.jupiter.api.Assertions.assertTrue;

import kingpost.render.PlainRenderer;
import kingpost.statics.SubstitutedMember;
import kingpost.truss.Direction;
import kingpost.truss.TrussBuilder;
import kingpost.truss.TrussModel;
import kingpost.units.StructuralUnits;
import org.junit.jupiter.api.Test;

class SubstituteExplanationTest {

    @Test
    void tellsTheExchangeAndAddsBothSolutions() {
        TrussModel truss = new TrussBuilder<TrussModel>("Complex", t -> t).units(StructuralUnits.m, StructuralUnits.kN)
                .joint("A", 0, 0).joint("B", 4, -1).joint("C", 8, 0).joint("D", 7, 4).joint("E", 4, 6).joint("F", 0, 5)
                .members("AB BC CD DE EF AF AD BE CF").pin("A").roller("C").load("E", 7, Direction.DOWN)
                .load("F", 3, Direction.RIGHT).build();
        String text = new PlainRenderer().render(WordsOnly.of(SubstituteExplanation.of(
                SubstitutedMember.of(truss, truss.member("AD").orElseThrow())))).replaceAll("\\s+", " ");

        assertTrue(text.contains("Take AD out and put BD in"), text);
        assertTrue(text.contains("F\u2032_BD + x f_BD = 0 3.59 kN \u2212 0.4295 x = 0 x = 8.37 kN"), text);
        assertTrue(text.contains("CF 0.168 0.9612 8.21 tension"), text);
        assertTrue(text.contains("which is rounding."), text);
    }
}
