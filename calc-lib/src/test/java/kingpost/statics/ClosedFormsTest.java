package kingpost.statics;

import static kingpost.statics.Answers.force;
import static kingpost.statics.Answers.reaction;
import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.Random;
import kingpost.truss.Direction;
import kingpost.truss.TrussBuilder;
import kingpost.truss.TrussModel;
import org.junit.jupiter.api.RepeatedTest;
import org.junit.jupiter.api.RepetitionInfo;
import org.junit.jupiter.api.Test;

/** Trusses with formulas for any load, tried with seeded random loads. */
class ClosedFormsTest {

    private static final double TINY = 1e-9;

    /**
     * Symmetric gable truss of 13 members. Source: D. Baker and W. Haynes, Engineering Statics: Open and Interactive,
     * chapter 6 exercises, question "Method of Joints: Symmetric Truss".
     */
    @RepeatedTest(20)
    void gableTruss(RepetitionInfo repetition) {
        Random random = new Random(repetition.getCurrentRepetition());
        double b = 1 + random.nextInt(12);
        double h = 1 + random.nextInt(9);
        double pa = random.nextInt(500);
        double pb = 1 + random.nextInt(500);
        double pd = 1 + random.nextInt(500);
        TrussBuilder<TrussModel> builder = Trusses.named("Gable").joint("A", 0, 0).joint("C", b, 0)
                .joint("E", 2 * b, 0).joint("G", 3 * b, 0).joint("H", 4 * b, 0).joint("B", b, h)
                .joint("D", 2 * b, 2 * h).joint("F", 3 * b, h)
                .members("AB AC BC BD BE CE DE DF EF EG FG FH GH").pin("A").roller("H")
                .load("A", 0, -pa - 1e-3).load("H", 0, -pa - 1e-3).load("B", pb, Direction.DOWN)
                .load("F", pb, Direction.DOWN).load("D", pd, Direction.DOWN);
        Solution s = Solver.solve(builder.build());
        pa += 1e-3;

        double theta = Math.atan2(h, b);
        double ra = (2 * pa + 2 * pb + pd) / 2;
        double ab = (pa - ra) / Math.sin(theta);
        double be = -pb * Math.cos(theta) / Math.sin(2 * theta);
        double bd = ab + pb * Math.sin(theta) - be * Math.cos(2 * theta);
        assertEquals(ra, reaction(s, "A_y"), TINY * ra);
        assertEquals(ab, force(s, "AB"), TINY * ra);
        assertEquals(-ab * Math.cos(theta), force(s, "AC"), TINY * ra);
        assertEquals(-ab * Math.cos(theta), force(s, "CE"), TINY * ra);
        assertEquals(0, force(s, "BC"));
        assertEquals(be, force(s, "BE"), TINY * ra);
        assertEquals(bd, force(s, "BD"), TINY * ra);
        assertEquals(-(pd + 2 * bd * Math.sin(theta)), force(s, "DE"), TINY * ra);
        assertEquals(ab, force(s, "FH"), TINY * ra);
    }

    /**
     * Cantilever with members at 30 and 60 degrees. Source: the same book and chapter, question "Method of joints:
     * cantilever truss". Joints alone, without the reactions first.
     */
    @RepeatedTest(10)
    void cantilever(RepetitionInfo repetition) {
        Random random = new Random(repetition.getCurrentRepetition());
        double a = 1 + random.nextInt(900);
        double b = 1 + random.nextInt(900);
        double c = 1 + random.nextInt(900);
        double root = Math.sqrt(3);
        Solution s = Solver.solve(Trusses.named("Cantilever").joint("A", 0, 0).joint("B", -1.5, root / 2)
                .joint("C", -2, 0).joint("D", -3, root).joint("E", -3, 0).members("AB AC BC BD CD CE").pin("D").pin("E")
                .load("A", a, Direction.DOWN).load("B", b, Direction.DOWN).load("C", c, Direction.DOWN).build());

        double scale = TINY * (a + b + c);
        double ab = a / 0.5;
        double bc = b * root / 2;
        double cd = (bc * root / 2 + c) / (root / 2);
        assertEquals(ab, force(s, "AB"), scale);
        assertEquals(-ab * root / 2, force(s, "AC"), scale);
        assertEquals(-bc, force(s, "BC"), scale);
        assertEquals(b / 2 + ab, force(s, "BD"), scale);
        assertEquals(cd, force(s, "CD"), scale);
        assertEquals(-(3 * a + 1.5 * b + c) / root, force(s, "CE"), scale);
        assertEquals(0, s.steps().stream().filter(step -> step instanceof Step.Reactions).count());
    }

    /**
     * Five members and an inclined load. Source: the same book and chapter, question "Truss: Method of Joints".
     */
    @RepeatedTest(10)
    void inclinedLoad(RepetitionInfo repetition) {
        Random random = new Random(repetition.getCurrentRepetition());
        double fb = 1 + random.nextInt(900);
        double fc = 1 + random.nextInt(900);
        double degrees = random.nextInt(360) + 0.5;
        double root = Math.sqrt(3);
        Solution s = Solver.solve(Trusses.named("Five").joint("A", 0, 0).joint("B", root, 1).joint("C", root, 0)
                .joint("D", 2 * root, 0).members("AB AC BC BD CD").pin("A").roller("D")
                .load("B", fb, Direction.at(degrees)).load("C", fc, Direction.DOWN).build());

        double fbx = fb * Math.cos(Math.toRadians(degrees));
        double fby = -fb * Math.sin(Math.toRadians(degrees));
        double dy = fbx / (2 * root) + fby / 2 + fc / 2;
        double scale = TINY * (fb + fc);
        assertEquals(dy, reaction(s, "D_y"), scale);
        assertEquals(-dy / 0.5, force(s, "BD"), scale);
        assertEquals(dy * root / 2 / 0.5, force(s, "CD"), scale);
        assertEquals(force(s, "CD"), force(s, "AC"), scale);
        assertEquals(fc, force(s, "BC"), scale);
    }

    /**
     * Howe roof of six panels, three loads. Source: the same book and chapter, question "Method of sections: Howe
     * Truss"; panel 4, rise 8.
     */
    @Test
    void howeRoof() {
        Solution s = Solver.solve(Trusses.named("Howe").joint("A", 0, 0).joint("G", 24, 0).joint("B", 4, 8.0 / 3)
                .joint("H", 4, 0).joint("C", 8, 16.0 / 3).joint("J", 8, 0).joint("D", 12, 8).joint("K", 12, 0)
                .joint("E", 16, 16.0 / 3).joint("L", 16, 0).joint("F", 20, 8.0 / 3).joint("M", 20, 0)
                .members("AB BC CD DE EF FG AH HJ JK KL LM MG BH CJ DK EL FM BJ CK EK FL").pin("A").roller("G")
                .load("B", 200, Direction.DOWN).load("J", 350, Direction.DOWN).load("E", 125, Direction.DOWN).build());

        double alpha = Math.atan2(8, 12);
        double beta = Math.atan2(16.0 / 3, 4);
        double g = (200 * 1 + 350 * 2 + 125 * 4) / 6.0;
        double a = 200 + 350 + 125 - g;
        assertEquals((-2 * a + 200) / 2 / Math.sin(alpha), force(s, "BC"), 1e-6);
        assertEquals((2 * 350 + 200) / 2, force(s, "CJ"), 1e-6);
        assertEquals((2 * a - 200) * 4 / (16.0 / 3), force(s, "JK"), 1e-6);
        assertEquals((125 - 3 * g) * (4 / 8.0) / Math.cos(alpha), force(s, "DE"), 1e-6);
        assertEquals(-(2 * 125) / 3.0 / Math.sin(beta), force(s, "EK"), 1e-6);
        assertEquals(2 * g * 4 / (16.0 / 3), force(s, "KL"), 1e-6);
    }

    /**
     * Parallel chords, equal panels, a load at every bottom joint: forces from the shear and the moment of a beam.
     * Derived from statics, no published source.
     */
    @RepeatedTest(4)
    void prattAndHoweWithParallelChords(RepetitionInfo repetition) {
        int n = 2 * repetition.getCurrentRepetition() + 2;
        double p = 5;
        double h = 6;
        double load = 10;
        double d = Math.hypot(p, h);
        Solution pratt = Solver.solve(ParallelChords.pratt(n, p, h, load));
        Solution howe = Solver.solve(ParallelChords.howe(n, p, h, load));
        for (int i = 1; i <= n / 2; i++) {
            double shear = load * (n + 1 - 2 * i) / 2;
            assertEquals(i == 1 ? -shear * d / h : shear * d / h,
                    force(pratt, i == 1 ? "L0-U1" : "U" + (i - 1) + "-L" + i), TINY);
            assertEquals(moment(load, p, n, Math.max(i - 1, 1)) / h, force(pratt, "L" + (i - 1) + "-L" + i), 1e-8);
            assertEquals(moment(load, p, n, i) / h, force(howe, "L" + (i - 1) + "-L" + i), 1e-8);
            if (i >= 2) {
                assertEquals(-moment(load, p, n, i) / h, force(pratt, "U" + (i - 1) + "-U" + i), 1e-8);
                assertEquals(-moment(load, p, n, i - 1) / h, force(howe, "U" + (i - 1) + "-U" + i), 1e-8);
                assertEquals(-shear * d / h, force(howe, "L" + (i - 1) + "-U" + i), 1e-8);
            }
            double next = load * (n - 1 - 2 * i) / 2;
            double vertical = i == n / 2 ? 0 : i == 1 ? load : -next;
            assertEquals(vertical, force(pratt, "U" + i + "-L" + i), 1e-8);
            assertEquals(i == n / 2 ? load : next + load, force(howe, "U" + i + "-L" + i), 1e-8);
        }
    }

    private static double moment(double load, double p, int n, int i) {
        return load * p * i * (n - i) / 2;
    }
}
