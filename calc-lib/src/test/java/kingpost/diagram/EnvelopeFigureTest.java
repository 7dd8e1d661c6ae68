package kingpost.diagram;

import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import kingpost.statics.Envelope;
import kingpost.truss.Direction;
import kingpost.truss.Measured;
import kingpost.truss.TrussBuilder;
import kingpost.truss.TrussModel;
import kingpost.units.StructuralUnits;
import org.junit.jupiter.api.Test;

class EnvelopeFigureTest {

    @Test
    void showsBothExtremesOfEachMember() {
        TrussModel roof = new TrussBuilder<TrussModel>("Roof", t -> t).units(StructuralUnits.m, StructuralUnits.kN)
                .joint("A", 0, 0).joint("B", 4, 3).joint("C", 8, 6).joint("D", 12, 3).joint("E", 16, 0).joint("F", 8, 0)
                .members("AB BC CD DE AF FE BF DF CF").pin("A").roller("E")
                .loadCase("snow").roofLoad("A B C D E", 3, Measured.ON_PLAN)
                .loadCase("wind").load("C", 12, Direction.UP).build();
        Envelope envelope = Envelope.of(roof);

        FigureContract.check(() -> EnvelopeFigure.of(envelope));
        List<String> texts = Clashes.textsOf(EnvelopeFigure.of(envelope));
        assertTrue(texts.stream().anyMatch(t -> t.startsWith("10 kN T, 30 kN C")), texts::toString);
        assertTrue(texts.contains("tension or compression, as the loads are"), texts::toString);
        assertTrue(EnvelopeFigure.of(envelope).description().contains("AB up to 10 kN in tension and 30 kN in compression"),
                EnvelopeFigure.of(envelope).description());
    }
}
