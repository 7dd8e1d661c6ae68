package kingpost.explain;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;

import kingpost.GoldenFile;
import kingpost.derivation.Block;
import kingpost.derivation.Block.Prose;
import kingpost.derivation.Block.Section;
import kingpost.derivation.Derivation;
import kingpost.derivation.Phrase;
import kingpost.render.HtmlRenderer;
import kingpost.render.LatexRenderer;
import kingpost.render.MarkdownRenderer;
import kingpost.render.PlainRenderer;
import kingpost.render.Renderer;
import kingpost.statics.PublishedCase;
import kingpost.statics.RandomTrusses;
import kingpost.statics.Solution;
import kingpost.statics.Solver;
import kingpost.statics.Step;
import kingpost.truss.TrussModel;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class SolutionExplanationTest {

    private static final PlainRenderer PLAIN = new PlainRenderer();

    static Stream<TrussModel> samples() {
        return Stream.of(SampleTrusses.canopy(), SampleTrusses.bracket(), SampleTrusses.footbridge(),
                SampleTrusses.roof());
    }

    static Stream<TrussModel> trusses() {
        Stream<TrussModel> published = Stream.of("MJ-01", "MJ-02", "MJ-04", "MJ-06", "MJ-07", "MJ-08", "MJ-09", "MJ-10",
                "MJ-13", "MJ-15", "MJ-16", "MS-02", "ZF-01", "ZF-03", "ZF-04").map(id -> PublishedCase.of(id).truss());
        return Stream.concat(samples(), Stream.concat(published, RandomTrusses.simple(20, 4)));
    }

    @ParameterizedTest
    @MethodSource("samples")
    void readsAsTheGoldenFileHasIt(TrussModel truss) {
        Derivation words = WordsOnly.of(SolutionExplanation.of(Solver.solve(truss)));
        String name = "kingpost/explain/" + truss.name().toLowerCase(java.util.Locale.ROOT).replace(' ', '-');
        GoldenFile.check(name + ".txt", PLAIN.render(words));
    }

    @Test
    void standsInEveryFormatAsTheGoldenFilesHaveIt() {
        Derivation words = WordsOnly.of(SolutionExplanation.of(Solver.solve(SampleTrusses.canopy())));
        record Format(String extension, Renderer renderer) {
        }
        for (Format format : List.of(new Format("md", new MarkdownRenderer()), new Format("html", new HtmlRenderer()),
                new Format("tex", new LatexRenderer()))) {
            GoldenFile.check("kingpost/explain/loading-dock-canopy." + format.extension(), format.renderer().render(words));
        }
    }

    @ParameterizedTest
    @MethodSource("trusses")
    void saysNoSentenceTwice(TrussModel truss) {
        Derivation derivation = SolutionExplanation.of(Solver.solve(truss));
        Set<String> said = new HashSet<>();
        List<String> again = new ArrayList<>();
        for (Phrase phrase : WordsOnly.phrases(derivation.blocks())) {
            for (String sentence : line(phrase).split("(?<=[.]) ")) {
                if (sentence.length() > 25 && !said.add(sentence)) {
                    again.add(sentence);
                }
            }
        }
        assertEquals(List.of(), again);
    }

    @ParameterizedTest
    @MethodSource("trusses")
    void writesWholeSentences(TrussModel truss) {
        Derivation derivation = SolutionExplanation.of(Solver.solve(truss));
        for (Phrase phrase : WordsOnly.phrases(derivation.blocks())) {
            String text = line(phrase);
            assertFalse(text.contains("  ") || text.contains(" ,") || text.contains(" .") || text.contains("..")
                    || text.contains("null") || text.contains(": ."), text);
        }
        for (Prose prose : proses(derivation.blocks())) {
            String text = line(prose.phrase());
            assertTrue(text.endsWith(".") || text.endsWith(":"), text);
        }
    }

    @ParameterizedTest
    @MethodSource("trusses")
    void hasASectionForEachJointUsedAndStatesEachAnswerThere(TrussModel truss) {
        Solution solution = Solver.solve(truss);
        Notation notation = new Notation(truss);
        List<Section> sections = SolutionExplanation.of(solution).blocks().stream().map(Section.class::cast).toList();
        for (Step.AtJoint step : JointExplanation.joints(solution)) {
            Section section = sections.stream().filter(s -> line(s.title()).equals("Joint " + step.joint())).findFirst()
                    .orElseThrow();
            String text = PLAIN.render(section);
            for (Step.Answer answer : step.answers()) {
                String stated = line(Phrase.of(kingpost.derivation.Expressions.equal(notation.symbol(answer.unknown()),
                        notation.answer(answer.value()))));
                assertTrue(text.contains(stated), () -> stated + " is not in:\n" + text);
            }
        }
    }

    @Test
    void tellsTensionFromCompressionInWords() {
        String text = PLAIN.render(SolutionExplanation.of(Solver.solve(SampleTrusses.bracket())));
        assertTrue(text.contains("F_CD = −8 kN   compression"), text);
        assertTrue(text.contains("F_BD = 5 kN   tension"), text);
    }

    @Test
    void usesSlopeTrianglesWhereTheyAreWholeNumbers() {
        String text = PLAIN.render(SolutionExplanation.of(Solver.solve(SampleTrusses.footbridge())));
        assertTrue(text.contains("(3/5) F_L0-U1 + L0_y = 0"), text);
        assertFalse(text.contains("sin "), text);
    }

    @Test
    void usesAnglesElsewhere() {
        String text = PLAIN.render(SolutionExplanation.of(Solver.solve(SampleTrusses.bracket())));
        assertTrue(text.contains("F_BC sin 45° − 8 kN = 0"), text);
        assertTrue(text.contains("0.7071 F_BC − 8 kN = 0"), text);
    }

    @Test
    void givesTheSameTextEachTime() {
        assertEquals(PLAIN.render(SolutionExplanation.of(Solver.solve(SampleTrusses.roof()))),
                PLAIN.render(SolutionExplanation.of(Solver.solve(SampleTrusses.roof()))));
    }

    private static String line(Phrase phrase) {
        return PLAIN.render(new Prose(phrase)).replace('\n', ' ').strip();
    }

    private static List<Prose> proses(List<Block> blocks) {
        List<Prose> proses = new ArrayList<>();
        for (Block block : blocks) {
            if (block instanceof Prose prose) {
                proses.add(prose);
            } else if (block instanceof Section section) {
                proses.addAll(proses(section.blocks()));
            }
        }
        return proses;
    }
}
