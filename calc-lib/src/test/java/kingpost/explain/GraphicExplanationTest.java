package kingpost.explain;

import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.stream.Stream;

import kingpost.GoldenFile;
import kingpost.derivation.Derivation;
import kingpost.derivation.Phrase;
import kingpost.graphic.ForceDiagram;
import kingpost.graphic.ForcePolygon;
import kingpost.render.PlainRenderer;
import kingpost.statics.Solver;
import kingpost.truss.Direction;
import kingpost.truss.Joint;
import kingpost.truss.TrussBuilder;
import kingpost.truss.TrussModel;
import kingpost.units.StructuralUnits;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class GraphicExplanationTest {

    static Stream<TrussModel> trusses() {
        return Stream.of(SampleTrusses.canopy(), SampleTrusses.bracket(), SampleTrusses.footbridge(),
                SampleTrusses.roof(), frenchRoof());
    }

    private static String text(Derivation derivation) {
        return new PlainRenderer().render(WordsOnly.of(derivation));
    }

    private static String flat(Derivation derivation) {
        return text(derivation).replaceAll("\\s+", " ");
    }

    private static Derivation diagram(TrussModel truss) {
        return ForceDiagramExplanation.of(ForceDiagram.of(Solver.solve(truss)));
    }

    @Test
    void readsAsTheGoldenFilesHaveIt() {
        GoldenFile.check("kingpost/explain/graphic/footbridge-diagram.txt", text(diagram(SampleTrusses.footbridge())));
        GoldenFile.check("kingpost/explain/graphic/bracket-diagram.txt", text(diagram(SampleTrusses.bracket())));
        GoldenFile.check("kingpost/explain/graphic/footbridge-polygon.txt",
                text(ForcePolygonExplanation.of(ForcePolygon.of(Solver.solve(SampleTrusses.footbridge()), "U3"))));
    }

    @ParameterizedTest
    @MethodSource("trusses")
    void writesWholeSentences(TrussModel truss) {
        for (Phrase phrase : WordsOnly.phrases(diagram(truss).blocks())) {
            check(phrase);
        }
        for (Joint joint : truss.joints().subList(0, 3)) {
            ForcePolygon polygon = ForcePolygon.of(Solver.solve(truss), joint.name());
            WordsOnly.phrases(ForcePolygonExplanation.of(polygon).blocks()).forEach(GraphicExplanationTest::check);
        }
    }

    private static void check(Phrase phrase) {
        String said = new PlainRenderer().render(new kingpost.derivation.Block.Prose(phrase)).replace('\n', ' ').strip();
        assertFalse(said.contains("  ") || said.contains(" ,") || said.contains(" .") || said.contains("..")
                || said.contains("null"), said);
        assertTrue(said.endsWith("."), said);
    }

    @Test
    void saysWhereItStopsAndHowItGoesOn() {
        String said = flat(diagram(frenchRoof()));

        assertTrue(said.contains("No joint is left with a single point missing. Member D-E is known from the solution: laid"
                + " off from "), said);
        assertTrue(said.contains("which is rounding."), said);
    }

    /** Two trussed rafters with a tie between them: joints alone stop in each rafter. */
    private static TrussModel frenchRoof() {
        TrussBuilder<TrussModel> roof = new TrussBuilder<TrussModel>("French roof", t -> t)
                .units(StructuralUnits.m, StructuralUnits.kN).joint("A", 0, 0).joint("C", 9, 6).joint("B", 18, 0);
        for (int i = 1; i < 4; i++) {
            roof.joint("R" + i, 9 * i / 4.0, 6 * i / 4.0).joint("S" + i, 18 - 9 * i / 4.0, 6 * i / 4.0)
                    .load("R" + i, 3, Direction.DOWN).load("S" + i, 3, Direction.DOWN);
        }
        return roof.joint("D", 6, 0).joint("E", 12, 0).joint("P", 3, 0).joint("T", 15, 0).joint("Q", 7.5, 3)
                .joint("V", 10.5, 3).members("A-R1 R1-R2 R2-R3 R3-C A-P P-D D-E D-Q Q-C R1-P P-R2 R2-D R2-Q Q-R3")
                .members("B-S1 S1-S2 S2-S3 S3-C B-T T-E E-V V-C S1-T T-S2 S2-E S2-V V-S3").pin("A").roller("B")
                .load("C", 3, Direction.DOWN).build();
    }

    @Test
    void saysWhyThereIsNone() {
        TrussBuilder<TrussModel> crossed = new TrussBuilder<TrussModel>("Crossed", t -> t)
                .units(StructuralUnits.m, StructuralUnits.kN).joint("A", 0, 0).joint("B", 4, 0).joint("C", 4, 3)
                .joint("D", 0, 3).members("AB BC CD AC BD").pin("A").roller("B");

        assertTrue(flat(diagram(crossed.load("C", 5, Direction.RIGHT).build()))
                .contains("There is no force diagram of this truss: AC and BD cross"));
    }

    @Test
    void aLoadThatTheTrussEnclosesPartsNoSpaces() {
        TrussModel hung = new TrussBuilder<TrussModel>("Hung", t -> t).units(StructuralUnits.m, StructuralUnits.kN)
                .joint("A", 0, 0).joint("B", 6, 0).joint("C", 3, 5).joint("D", 3, 2).members("AB BC CA AD BD").pin("A")
                .roller("B").load("D", 5, Direction.DOWN).build();

        assertTrue(flat(diagram(hung)).contains("the load 5 kN acts at D, which the members enclose"), flat(diagram(hung)));
    }
}
