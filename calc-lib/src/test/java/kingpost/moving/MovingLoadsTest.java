package kingpost.moving;

import static kingpost.moving.InfluenceLineTest.girder;
import static kingpost.moving.InfluenceLineTest.member;
import static kingpost.moving.InfluenceLineTest.named;
import static kingpost.moving.InfluenceLineTest.reaction;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Random;
import kingpost.moving.TrainEffect.Edge;
import kingpost.moving.TrainEffect.Placement;
import kingpost.moving.WheelTrain.Wheel;
import kingpost.truss.TrussBuilder;
import kingpost.truss.TrussModel;
import kingpost.units.CalculationException;
import kingpost.units.Quantity;
import kingpost.units.StructuralUnits;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class MovingLoadsTest {

    private static WheelTrain train(TrussModel truss, double... written) {
        List<Quantity> quantities = new ArrayList<>();
        for (int i = 0; i < written.length; i++) {
            quantities.add(Quantity.of(written[i], i % 2 == 0 ? truss.forceUnit() : truss.lengthUnit()));
        }
        return WheelTrain.of(truss, quantities);
    }

    /**
     * End reaction of simple spans under the three-axle truck of 8, 32 and 32 kip at 14 ft: 60.8, 63.6 and 65.3 kip for 60,
     * 80 and 100 ft. Source: AASHTO, Standard Specifications for Highway Bridges, appendix A, table of maximum moments,
     * shears and reactions, loading HS 20-44; from memory.
     */
    @ParameterizedTest
    @CsvSource({"60,60.8", "80,63.6", "100,65.3"})
    void endReactionUnderAStandardTruck(double span, double printed) {
        TrussBuilder<TrussModel> builder = new TrussBuilder<TrussModel>("Span", t -> t)
                .units(StructuralUnits.ft, StructuralUnits.kip);
        for (int i = 0; i <= 4; i++) {
            builder.joint("L" + i, span / 4 * i, 0);
        }
        TrussModel truss = builder.joint("U1", span / 4, 12).joint("U2", span / 2, 12).joint("U3", span * 3 / 4, 12)
                .members("L0-L1 L1-L2 L2-L3 L3-L4 L0-U1 U1-U2 U2-U3 U3-L4 L1-U1 L2-U2 L3-U3 U1-L2 U3-L2")
                .pin("L0").roller("L4").build();

        TrainEffect effect = TrainEffect.of(reaction(truss, "L0_y"), train(truss, 8, 14, 32, 14, 32));
        Placement most = effect.largest().orElseThrow();

        assertEquals(printed, Quantity.of(most.effect(), StructuralUnits.N).in(StructuralUnits.kip), 0.05);
        assertEquals("L0", most.joint());
        assertEquals(3, most.wheel());
        assertTrue(most.rightward() && effect.smallest().isEmpty());
    }

    /** The train moved in steps of a thousandth of its way finds no more, and nearly as much. */
    @Test
    void noStepOfATrainOnItsWayExceedsThePositionFound() {
        Random random = new Random(7);
        for (int round = 0; round < 15; round++) {
            TrussModel truss = girder(4 + random.nextInt(7), 2 + random.nextInt(5), 3 + random.nextInt(4), random.nextBoolean());
            InfluenceLine line = member(truss, truss.members().get(random.nextInt(truss.members().size())).name());
            double[] written = new double[2 * random.nextInt(5) + 1];
            for (int i = 0; i < written.length; i++) {
                written[i] = 0.5 + random.nextInt(20) / 2.0;
            }
            check(line, train(truss, written));
        }
    }

    /** Lines that end off zero: an arm beyond each support, so that wheels come on with a jump. */
    @Test
    void alsoWhereTheLineEndsOffZero() {
        Random random = new Random(11);
        TrussModel truss = overhanging();
        for (String member : List.of("L0-L1", "U1-U2", "U1-L2", "L1-U1")) {
            for (int round = 0; round < 2; round++) {
                check(member(truss, member), train(truss, 1 + random.nextInt(9), 1 + random.nextInt(7) / 2.0,
                        1 + random.nextInt(9), 1 + random.nextInt(7), 1 + random.nextInt(9)));
            }
        }
    }

    private static TrussModel overhanging() {
        TrussBuilder<TrussModel> builder = named("Overhang");
        for (int i = 0; i <= 5; i++) {
            builder.joint("L" + i, 3 * i, 0);
        }
        return builder.joint("U1", 3, 4).joint("U2", 6, 4).joint("U3", 9, 4).joint("U4", 12, 4)
                .members("L0-L1 L1-L2 L2-L3 L3-L4 L4-L5 L0-U1 U1-U2 U2-U3 U3-U4 U4-L5 L1-U1 L2-U2 L3-U3 L4-U4")
                .members("U1-L2 U2-L3 U3-L4").pin("L1").roller("L4").build();
    }

    private static void check(InfluenceLine line, WheelTrain train) {
        TrainEffect effect = TrainEffect.of(line, train);
        double largest = 0;
        double smallest = 0;
        double length = line.end() - line.start() + train.length();
        double steepest = 0;
        double loads = 0;
        for (int i = 1; i < line.ordinates().size(); i++) {
            steepest = Math.max(steepest, Math.abs((line.ordinates().get(i).value() - line.ordinates().get(i - 1).value())
                    / (line.ordinates().get(i).x() - line.ordinates().get(i - 1).x())));
        }
        for (Wheel wheel : train.wheels()) {
            loads += wheel.load().in(StructuralUnits.N);
        }
        for (int way : new int[] {1, -1}) {
            for (int step = 0; step <= 1000; step++) {
                double lead = (way > 0 ? line.start() : line.end()) + way * length * step / 1000;
                double sum = 0;
                for (Wheel wheel : train.wheels()) {
                    sum += wheel.load().in(StructuralUnits.N) * line.at(lead - way * wheel.behind());
                }
                largest = Math.max(largest, sum);
                smallest = Math.min(smallest, sum);
            }
        }
        double most = effect.largest().map(Placement::effect).orElse(0.0);
        double least = effect.smallest().map(Placement::effect).orElse(0.0);
        double near = loads * steepest * length / 1000 + 1e-9 * loads;
        assertTrue(largest <= most + 1e-9 * loads && largest >= most - near, line.effect() + " " + largest + " " + most);
        assertTrue(smallest >= least - 1e-9 * loads && smallest <= least + near, line.effect() + " " + smallest + " " + least);
        for (Placement placement : List.of(effect.largest(), effect.smallest()).stream().flatMap(o -> o.stream()).toList()) {
            double exact = Quantity.of(placement.exact().orElseThrow().doubleValue(), StructuralUnits.kN)
                    .in(StructuralUnits.N);
            assertEquals(placement.effect(), exact, 1e-9 * loads);
        }
    }

    /** A light wheel on the tip of the arm relieves what the heavy one does in the span: it is worst just past the tip. */
    @Test
    void countsTheMomentAfterAWheelHasLeft() {
        TrussModel truss = overhanging();
        InfluenceLine line = member(truss, "U2-U3");
        assertEquals("L3", line.lowest().joint());
        assertTrue(line.at(line.end()) > 0, "the arm pulls where the span pushes");

        Placement least = TrainEffect.of(line, train(truss, 1, 6, 9, 6, 1)).smallest().orElseThrow();

        assertEquals(9000 * line.lowest().value(), least.effect(), 1e-9);
        assertEquals(Edge.AFTER, least.edge());
        assertEquals("L5", least.joint());
        assertEquals(List.of(false, true, true), least.wheels().stream().map(TrainEffect.WheelPlace::on).toList());
    }

    /**
     * The greatest shear in panel i under a uniform load: w p (n - i)^2 / (2(n - 1)) with p the panel and n - i panels to the
     * right. Common practice for parallel chords; from memory, no source at hand.
     */
    @ParameterizedTest
    @CsvSource({"6,1", "6,2", "6,3", "8,4", "5,2"})
    void greatestPanelShearUnderAUniformLoad(int panels, int i) {
        double panel = 4;
        TrussModel truss = girder(panels, panel, 5, true);
        InfluenceLine line = InfluenceLine.of(truss, new Effect.OfShear("L" + (i - 1), "L" + i), LoadedChord.atSupports(truss));

        UniformEffect effect = UniformEffect.of(line, Quantity.of(3, StructuralUnits.kN_per_m));

        double expected = 3000 * panel * (panels - i) * (panels - i) / (2.0 * (panels - 1));
        assertEquals(expected, effect.largest(), 1e-9 * expected);
        assertEquals(expected / 1000, effect.exact().get(0).doubleValue(), 1e-12 * expected);
        assertEquals(effect.largest() + effect.smallest(), effect.whole(), 1e-9 * expected);
        assertEquals(3000 * panel * (panels + 1 - 2 * i) / 2.0, effect.whole(), 1e-9 * expected);
    }

    @Test
    void aUniformLoadIsWorthTheAreaUnderTheLine() {
        InfluenceLine line = reaction(girder(6, 5, 4, true), "L6_y");

        UniformEffect effect = UniformEffect.of(line, Quantity.of(2, StructuralUnits.kN_per_m));

        assertEquals(30_000, effect.largest(), 1e-6);
        assertEquals(0, effect.smallest());
        assertEquals(1, effect.parts().size());
    }

    @Test
    void equalPositionsKeepTheFirstAndTheSameTrainGivesTheSameAnswer() {
        TrussModel truss = girder(6, 5, 4, true);
        TrainEffect one = TrainEffect.of(member(truss, "L2-L3"), train(truss, 10, 2, 10));
        TrainEffect other = TrainEffect.of(member(truss, "L2-L3"), train(truss, 10, 2, 10));

        assertEquals(one, other);
        assertTrue(one.largest().orElseThrow().rightward());
        assertEquals(2 * 2 * 7, one.positions());
    }

    private static String refusal(TrussModel truss, Quantity... written) {
        return assertThrows(CalculationException.class, () -> WheelTrain.of(truss, Arrays.asList(written))).getMessage();
    }

    @Test
    void refusesTrainsAndLoadsThatAreNone() {
        TrussModel truss = girder(4, 4, 3, true);
        Quantity force = Quantity.of(5, StructuralUnits.kN);
        Quantity length = Quantity.of(2, StructuralUnits.m);

        assertEquals("Wheel train: 2 numbers are given; write it as load, distance, load ... load, which is an odd number, as"
                + " in train(35, 4.3, 145).", refusal(truss, force, length));
        assertEquals("Wheel train: distance 1 is 5 kN; give a length, in m for instance.", refusal(truss, force, force, force));
        assertEquals("Wheel train: load 2 is 2 m; give a force, in kN for instance.", refusal(truss, force, length, length));
        assertEquals("Wheel train: load 1 is 0 kN; give a finite number above zero.",
                refusal(truss, Quantity.of(0, StructuralUnits.kN)));
        assertEquals("Wheel train: distance 1 is \u22122 m; give a finite number above zero.",
                refusal(truss, force, length.negate(), force));
        assertEquals("Wheel train: load 1 is missing; give a force, in kN for instance.", refusal(truss, (Quantity) null));
        InfluenceLine line = member(truss, "L1-L2");
        assertEquals("Uniform load: it is 5 kN; give a force per length, in kN/m for instance.",
                assertThrows(CalculationException.class, () -> UniformEffect.of(line, force)).getMessage());
        assertEquals("Uniform load: it is 0 kN/m; give a finite number above zero.", assertThrows(CalculationException.class,
                () -> UniformEffect.of(line, Quantity.of(0, StructuralUnits.kN_per_m))).getMessage());
    }
}
