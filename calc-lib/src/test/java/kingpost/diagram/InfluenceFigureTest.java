package kingpost.diagram;

import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.stream.Stream;
import kingpost.moving.Effect;
import kingpost.moving.InfluenceLine;
import kingpost.moving.LoadedChord;
import kingpost.moving.TrainEffect;
import kingpost.moving.UniformEffect;
import kingpost.moving.WheelTrain;
import kingpost.statics.Source;
import kingpost.svg.Svg;
import kingpost.truss.TrussModel;
import kingpost.units.Quantity;
import kingpost.units.StructuralUnits;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class InfluenceFigureTest {

    static InfluenceLine line(TrussModel truss, Effect effect) {
        return InfluenceLine.of(truss, effect, LoadedChord.atSupports(truss));
    }

    static InfluenceLine member(TrussModel truss, String name) {
        return line(truss, new Effect.OfMember(truss.member(name).orElseThrow()));
    }

    static WheelTrain train(TrussModel truss) {
        return WheelTrain.of(truss, List.of(Quantity.of(35, StructuralUnits.kN), Quantity.of(4.3, StructuralUnits.m),
                Quantity.of(145, StructuralUnits.kN), Quantity.of(4.3, StructuralUnits.m),
                Quantity.of(145, StructuralUnits.kN)));
    }

    static Stream<InfluenceLine> lines() {
        return Stream.of(member(Example.bridge(4, 4, 5, 10), "L1-L2"), member(Example.bridge(12, 4, 5, 10), "L4-U4"),
                line(Example.bridge(6, 4, 5, 10), new Effect.OfShear("L2", "L3")),
                line(Example.roof(6, 2.5, 4), new Effect.OfReaction(Source.OfReaction.of(Example.roof(6, 2.5, 4)).get(1))));
    }

    @ParameterizedTest
    @MethodSource("lines")
    void keepsTheContractOfFigures(InfluenceLine line) {
        FigureContract.check(() -> InfluenceFigure.of(line));
        TrainEffect effect = TrainEffect.of(line, train(line.truss()));
        effect.largest().ifPresent(at -> FigureContract.check(() -> InfluenceFigure.of(line, at)));
        effect.smallest().ifPresent(at -> FigureContract.check(() -> InfluenceFigure.of(line, at)));
        FigureContract.check(() -> InfluenceFigure.of(UniformEffect.of(line, Quantity.of(8, StructuralUnits.kN_per_m))));
    }

    @Test
    void writesEveryOrdinate() {
        InfluenceLine line = member(Example.bridge(6, 4, 5, 10), "U1-L2");
        Svg svg = InfluenceFigure.of(line);
        List<String> texts = Clashes.textsOf(svg);

        line.ordinates().forEach(o -> assertTrue(texts.contains(InfluenceFigure.number(o.value())),
                o + " in " + texts));
        assertTrue(svg.description().startsWith("The truss, and beneath it the influence line of the force in member U1-L2"
                + " for a unit load on the joints L0 0, L1 "), svg.description());
    }
}
