package kingpost.truss;

import static kingpost.units.StructuralUnits.kN;
import static kingpost.units.StructuralUnits.kN_per_m;
import static kingpost.units.StructuralUnits.kPa;
import static kingpost.units.StructuralUnits.m;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.params.provider.Arguments.arguments;

import java.util.List;
import java.util.function.Consumer;
import java.util.stream.Stream;
import kingpost.units.Quantity;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

/** Loads over members and along chords, load cases and combinations. The rule of halves is common practice, no source. */
class SpreadLoadsTest {

    /** Eaves A and E, ridge C over the middle, 3-4-5 slopes of 5 m each panel. */
    private static TrussBuilder<TrussModel> roof() {
        return new TrussBuilder<TrussModel>("Roof", t -> t).units(m, kN).joint("A", 0, 0).joint("B", 4, 3)
                .joint("C", 8, 6).joint("D", 12, 3).joint("E", 16, 0).joint("F", 8, 0)
                .members("AB BC CD DE AF FE BF DF CF").pin("A").roller("E");
    }

    private static double at(TrussModel truss, String joint) {
        return truss.loadsAt(joint).stream().mapToDouble(l -> l.fy().in(kN)).sum();
    }

    private static double all(TrussModel truss, boolean up) {
        return truss.loads().stream().mapToDouble(l -> (up ? l.fy() : l.fx()).in(kN)).sum();
    }

    /** Members 4 of 5 m, 2 of 8 m, 2 of 5 m and 1 of 6 m, 0.2 kN a metre: 52 m are 10.4 kN. */
    @Test
    void halvesTheWeightOfEachMember() {
        TrussModel truss = roof().selfWeight(0.2).build();

        assertEquals(-10.4, all(truss, true), 1e-12);
        assertEquals(-0.2 * (5 + 8) / 2, at(truss, "A"), 1e-12);
        assertEquals(-0.2 * (5 + 5 + 6) / 2, at(truss, "C"), 1e-12);
        assertEquals(-0.2 * (8 + 8 + 5 + 5 + 6) / 2, at(truss, "F"), 1e-12);
    }

    @Test
    void weighsSomeMembersOtherwise() {
        TrussModel truss = roof().selfWeight("AB BC", 0.3).selfWeight("CF", Quantity.of(0.1, kN_per_m)).build();

        assertEquals(-(10 * 0.3 + 6 * 0.1), all(truss, true), 1e-12);
        Load.Gathered ridge = assertInstanceOf(Load.Gathered.class, truss.loadsAt("C").get(0));
        assertEquals(List.of(2.5, 3.0), ridge.parts().stream().map(p -> p.length().getValue()).toList());
    }

    /** 1.5 kN a square metre on plan over 16 m, trusses 4 m apart: 96 kN; a quarter to each inner joint. */
    @Test
    void measuresSnowOnPlan() {
        TrussModel truss = roof().roofLoad("A B C D E", Quantity.of(1.5, kPa), Quantity.of(4, m), Measured.ON_PLAN)
                .build();

        assertEquals(-96, all(truss, true), 1e-12);
        assertEquals(-24, at(truss, "C"), 1e-12);
        assertEquals(-12, at(truss, "E"), 1e-12);
    }

    /** The same along the slope: 20 m of it. */
    @Test
    void measuresACoveringAlongTheSlope() {
        assertEquals(-120, all(roof().roofLoad("A B C D E", 1.5, 4, Measured.ALONG_SLOPE).build(), true), 1e-12);
        assertEquals(-30, all(roof().roofLoad("A B C D E", 1.5, Measured.ALONG_SLOPE).build(), true), 1e-12);
    }

    /** 0.8 kN a metre on 10 m of slope: 6.4 kN down and 4.8 kN to the right, as 3-4-5 has it. */
    @Test
    void pressesWindSquareToTheSlope() {
        TrussModel truss = roof().windLoad("A B C", 0.8).build();

        assertEquals(-6.4, all(truss, true), 1e-12);
        assertEquals(4.8, all(truss, false), 1e-12);
        TrussModel suction = roof().windLoad("C D E", -0.2, 4).build();
        assertEquals(6.4, all(suction, true), 1e-12);
        assertEquals(4.8, all(suction, false), 1e-12);
    }

    /** A deck load w on panels p gives w p at each inner joint and half of it at the ends. */
    @Test
    void bringsADeckToThePanelPoints() {
        TrussModel truss = roof().deckLoad("A F E", Quantity.of(3, kN_per_m)).build();

        assertEquals(List.of(-12.0, -24.0, -12.0), Stream.of("A", "F", "E").map(j -> at(truss, j)).toList());
    }

    @Test
    void gathersWhatActsTheSameWayAtAJoint() {
        TrussModel truss = roof().selfWeight(0.2).deckLoad("A F E", 3).build();
        Load.Gathered load = assertInstanceOf(Load.Gathered.class, truss.loadsAt("F").get(0));

        assertEquals(1, truss.loadsAt("F").size());
        assertEquals(List.of("self weight", "deck load"), load.parts().stream().map(Tributary::load).toList());
        assertEquals(24 + 3.2, load.magnitude().in(kN), 1e-12);
    }

    @Test
    void partsLoadsIntoCases() {
        TrussModel truss = roof().loadCase("dead").selfWeight(0.2).load("C", 5, Direction.DOWN)
                .loadCase("snow").roofLoad("A B C D E", 1.5, Measured.ON_PLAN)
                .combination("1.2 dead + 1.6 snow").combination("uplift", "0.9 dead \u2212 snow").build();

        assertEquals(List.of("dead", "snow"), truss.cases().cases().stream().map(LoadCases.LoadCase::name).toList());
        assertEquals(12, truss.loads().size());
        LoadCases.Combination uplift = truss.cases().combinations().get(1);
        assertEquals("uplift", uplift.name());
        assertEquals(List.of(0.9, -1.0), uplift.parts().stream().map(LoadCases.Combination.Part::factor).toList());
    }

    @Test
    void turnsALoadRoundForAFactorBelowZero() {
        Load load = roof().load("C", 5, Direction.DOWN).build().loads().get(0).times(-1.5);

        assertEquals(7.5, load.fy().in(kN), 1e-12);
        assertEquals("up", load.direction().words());
    }

    private static Arguments bad(String message, Consumer<TrussBuilder<TrussModel>> wrong) {
        return arguments(message, wrong);
    }

    static Stream<Arguments> badInput() {
        return Stream.of(
                bad("Self weight: its size is zero; give its size or leave it out.", t -> t.selfWeight(0)),
                bad("Self weight: its size is 3 m, which is not a force per length; give a force per length, in kN/m for "
                        + "instance.", t -> t.selfWeight(Quantity.of(3, m))),
                bad("Self weight: there is no member AX; name members of the truss, as in selfWeight(\"AB BC\", 0.2).",
                        t -> t.selfWeight("AX", 0.2)),
                bad("Self weight: its size is not a number; give a finite number.", t -> t.selfWeight(Double.NaN)),
                bad("Deck load: no member joins A and E; list the joints of one chord in order, each one.",
                        t -> t.deckLoad("A E", 3)),
                bad("Deck load: there is no joint X; list joints of one chord in order, as in \"L0 L1 L2\".",
                        t -> t.deckLoad("A X", 3)),
                bad("Deck load: it needs two joints at least to lie between; list the joints of one chord in order, as in "
                        + "\"L0 L1 L2\".", t -> t.deckLoad("A", 3)),
                bad("Deck load: the spacing of the trusses is 0 m, not above zero; give the distance from truss to truss.",
                        t -> t.deckLoad("A F", 3, 0)),
                bad("Roof load: the panel C-F is upright, so it has no length on plan; leave it out or measure along the "
                        + "slope.", t -> t.roofLoad("C F", 3, Measured.ON_PLAN)),
                bad("Wind load: its size is 3 kN/m, which is not a force per area; give a force per area, in kN/m\u00b2 for "
                        + "instance.", t -> t.windLoad("A B", Quantity.of(3, kN_per_m), Quantity.of(4, m))),
                bad("Loads: 1 of them stands before the first load case; write loadCase(\"dead\") or the like before them.",
                        t -> t.load("C", 3, Direction.DOWN).loadCase("dead").selfWeight(1)),
                bad("Load case snow: no load is in it; write its loads after it, or leave it out.",
                        t -> t.loadCase("dead").selfWeight(1).loadCase("snow")),
                bad("Load case dead: it is begun twice; write all its loads in one place.",
                        t -> t.loadCase("dead").selfWeight(1).loadCase("dead").selfWeight(1)),
                bad("Load case: it has no name; write loadCase(\"dead\") or the like.", t -> t.loadCase("").selfWeight(1)),
                bad("Load case 2nd: a combination could not be read with such a name; begin it with a letter and leave out + "
                        + "- and *.", t -> t.loadCase("2nd").selfWeight(1)),
                bad("Combination 1.2 deed: there is no load case deed; name one of dead.",
                        t -> t.loadCase("dead").selfWeight(1).combination("1.2 deed")),
                bad("Combination 1.2 dead: there is no load case dead; begin one with loadCase(\"dead\") before its loads.",
                        t -> t.selfWeight(1).combination("1.2 dead")),
                bad("Combination: it is empty; write it like 1.2 dead + 1.6 snow.",
                        t -> t.loadCase("dead").selfWeight(1).combination(" ")),
                bad("Combination dead + 1.5: a factor stands there without a load case; write it like 1.2 dead + 1.6 snow.",
                        t -> t.loadCase("dead").selfWeight(1).combination("dead + 1.5")),
                bad("Combination dead + dead: the load case dead comes twice; add its factors.",
                        t -> t.loadCase("dead").selfWeight(1).combination("dead + dead")),
                bad("Combination 0 dead: the factor of dead is zero; leave the case out.",
                        t -> t.loadCase("dead").selfWeight(1).combination("0 dead")),
                bad("Combination dead: it is given twice; leave one out or rename it.",
                        t -> t.loadCase("dead").selfWeight(1).combination("dead").combination("dead")));
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("badInput")
    void saysWhatIsWrong(String message, Consumer<TrussBuilder<TrussModel>> wrong) {
        TrussBuilder<TrussModel> builder = roof();
        wrong.accept(builder);

        assertEquals(message, assertThrows(TrussProblems.class, builder::build).getMessage());
    }
}
