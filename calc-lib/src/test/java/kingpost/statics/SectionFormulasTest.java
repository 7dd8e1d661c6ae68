package kingpost.statics;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;

import java.util.HashMap;
import java.util.Map;
import java.util.Random;
import java.util.stream.Stream;
import kingpost.truss.Direction;
import kingpost.truss.TrussBuilder;
import kingpost.truss.TrussModel;
import org.junit.jupiter.api.RepeatedTest;
import org.junit.jupiter.api.RepetitionInfo;
import org.junit.jupiter.api.Test;

/** Formulas that the method of sections gives, against sections and shortest ways as they are worked here. */
class SectionFormulasTest {

    private static Map<String, Double> cut(TrussModel truss, String members) {
        SectionResult.Solved solved = assertInstanceOf(SectionResult.Solved.class, Sections.of(truss,
                Stream.of(members.split(" ")).map(m -> truss.member(m).orElseThrow()).toList()), members);
        Map<String, Double> answers = new HashMap<>();
        solved.section().answers().forEach(a -> answers.put(((Source.OfMember) a.unknown()).member().name(),
                a.value() / 1000));
        return answers;
    }

    private static double way(TrussModel truss, String member) {
        return MemberSearch.of(truss, truss.member(member).orElseThrow()).force() / 1000;
    }

    /**
     * Howe roof of six panels, any loads at its joints (OER-5). Source: D. Baker and W. Haynes, Engineering Statics:
     * Open and Interactive, chapter 6 exercises, question "Method of sections: Howe Truss".
     */
    @RepeatedTest(5)
    void howeRoofBySections(RepetitionInfo repetition) {
        Random random = new Random(repetition.getCurrentRepetition());
        double w = 2 + random.nextInt(4);
        double h = 3 + random.nextInt(8);
        TrussBuilder<TrussModel> builder = Trusses.named("Howe").joint("A", 0, 0).joint("G", 6 * w, 0)
                .joint("B", w, h / 3).joint("H", w, 0).joint("C", 2 * w, 2 * h / 3).joint("J", 2 * w, 0)
                .joint("D", 3 * w, h).joint("K", 3 * w, 0).joint("E", 4 * w, 2 * h / 3).joint("L", 4 * w, 0)
                .joint("F", 5 * w, h / 3).joint("M", 5 * w, 0)
                .members("AB BC CD DE EF FG AH HJ JK KL LM MG BH CJ DK EL FM BJ CK EK FL").pin("A").roller("G");
        Map<String, Double> f = new HashMap<>();
        for (String joint : "B C D E F H J K L M".split(" ")) {
            f.put(joint, 1.0 + random.nextInt(40));
            builder.load(joint, f.get(joint), Direction.DOWN);
        }
        TrussModel truss = builder.build();
        double g = (f.get("B") + f.get("H") + 2 * (f.get("C") + f.get("J")) + 3 * (f.get("D") + f.get("K"))
                + 4 * (f.get("E") + f.get("L")) + 5 * (f.get("F") + f.get("M"))) / 6;
        double a = f.values().stream().mapToDouble(Double::doubleValue).sum() - g;
        double first = f.get("B") + f.get("H");
        double last = f.get("F") + f.get("M");
        double alpha = Math.atan2(h, 3 * w);
        double beta = Math.atan2(2 * h / 3, w);
        Map<String, Double> published = Map.of("BC", (-2 * a + first) / 2 / Math.sin(alpha),
                "CJ", (2 * f.get("J") + first) / 2, "JK", (2 * a - first) * w / (2 * h / 3),
                "DE", (2 * last + f.get("E") + f.get("L") - 3 * g) * (w / h) / Math.cos(alpha),
                "EK", -(last + 2 * (f.get("E") + f.get("L"))) / 3 / Math.sin(beta),
                "KL", (2 * g * w - last * w) / (2 * h / 3));

        Map<String, Double> found = cut(truss, "BC CJ JK");
        found.putAll(cut(truss, "DE EK KL"));
        double scale = 1e-9 * (a + g) * 10;
        published.forEach((member, force) -> {
            assertEquals(force, found.get(member), scale, member);
            assertEquals(force, way(truss, member), scale, member);
        });
    }

    /**
     * Parallel chords, a load P at each inner bottom joint, V(i) = P (n + 1 - 2 i) / 2 in panel i and M(i) = P p i
     * (n - i) / 2 at joint i: chords M / h, diagonals V d / h (HB-02; derived from statics, no published source).
     */
    @Test
    void parallelChordsBySections() {
        int n = 8;
        double p = 4;
        double h = 3;
        double load = 12;
        TrussModel pratt = ParallelChords.pratt(n, p, h, load);
        TrussModel howe = ParallelChords.howe(n, p, h, load);
        for (int i = 2; i <= n / 2; i++) {
            String bottom = "L" + (i - 1) + "-L" + i;
            String top = "U" + (i - 1) + "-U" + i;
            String falling = "U" + (i - 1) + "-L" + i;
            String rising = "L" + (i - 1) + "-U" + i;
            double shear = load * (n + 1 - 2 * i) / 2;
            Map<String, Double> inPratt = cut(pratt, bottom + " " + top + " " + falling);
            Map<String, Double> inHowe = cut(howe, bottom + " " + top + " " + rising);
            assertEquals(moment(load, p, n, i - 1) / h, inPratt.get(bottom), 1e-9);
            assertEquals(-moment(load, p, n, i) / h, inPratt.get(top), 1e-9);
            assertEquals(shear * 5 / 3, inPratt.get(falling), 1e-9);
            assertEquals(moment(load, p, n, i) / h, inHowe.get(bottom), 1e-9);
            assertEquals(-moment(load, p, n, i - 1) / h, inHowe.get(top), 1e-9);
            assertEquals(-shear * 5 / 3, inHowe.get(rising), 1e-9);
            assertEquals(inPratt.get(falling), way(pratt, falling), 1e-9);
        }
    }

    private static double moment(double load, double p, int n, int i) {
        return load * p * i * (n - i) / 2;
    }

    /** A roller on a slope of 30 degrees (IR-01: constructed, checked by an independent joint solution, not published). */
    @Test
    void inclinedRoller() {
        TrussModel truss = Trusses.named("Inclined roller").joint("A", 0, 0).joint("F", 4, 0).joint("E", 8, 0)
                .joint("B", 0, 4).joint("C", 4, 4).joint("D", 8, 4).members("AB AF BF BC CF CD DF DE EF").pin("A")
                .roller("E", 120).load("B", 30, Direction.DOWN).load("C", 50, Direction.DOWN).load("D", 20, -40)
                .load("F", 30, Direction.DOWN).build();
        Map<String, Double> computed = Map.of("AB", -60.0, "AF", -31.96152, "BF", 42.42641, "BC", -30.0, "CF", -50.0,
                "CD", -30.0, "DF", 70.71068, "DE", -90.0, "EF", -51.96152);
        Solution solution = Solver.solve(truss);

        assertEquals(103.92305, Answers.reaction(solution, "R_E"), 0.5e-5);
        assertEquals(31.96152, Answers.reaction(solution, "A_x"), 0.5e-5);
        computed.forEach((member, force) -> {
            assertEquals(force, Answers.force(solution, member), 0.5e-5, member);
            assertEquals(force, way(truss, member), 0.5e-5, member);
        });
        assertEquals(-51.96152, cut(truss, "CD DF EF").get("EF"), 0.5e-5);
    }
}
