package kingpost.kernel.bench;

import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.List;
import java.util.function.ToLongFunction;
import kingpost.kernel.bench.LongSession.Mark;
import kingpost.kernel.evaluation.CalcOptions;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;

/**
 * A session of many mixed cells: each tells what it should, and neither VM keeps what nobody can use any more. What
 * the cells cost early and late is printed and not judged: the machine may have other things to do.
 */
@Timeout(1_400)
class LongSessionIT {

    private static final int CELLS = Integer.getInteger("kingpost.longSession", 2_000);
    private static final long MEGABYTE = 1_000_000;

    @TempDir
    Path folder;

    @Test
    void keepsItsMemory() throws Exception {
        // the calc VM has little to compute, and compiling it well would take longer
        LongSession.Report report = LongSession.run(folder, CELLS,
                CalcOptions.standard().plusFlag("-XX:TieredStopAtLevel=1"), System.out);
        List<Mark> marks = report.marks();
        List<Mark> early = marks.subList(0, marks.size() / 2);
        List<Mark> late = marks.subList(marks.size() / 2, marks.size());
        // most against most: the compiler in the kernel VM is renewed after every thousand statements
        assertFlat("heap of the kernel VM", early, late, Mark::kernelHeap, 8 * MEGABYTE);
        // a declaration leaves its class
        assertFlat("heap of the calc VM", early, late, Mark::calcHeap, 2 * MEGABYTE + 1_000L * CELLS / 2);
        assertFlat("classes in the calc VM", early, late, Mark::calcClasses, CELLS * 6L / 10);
    }

    private static void assertFlat(String what, List<Mark> early, List<Mark> late, ToLongFunction<Mark> measure, long more) {
        long before = early.stream().mapToLong(measure).max().orElseThrow();
        long after = late.stream().mapToLong(measure).max().orElseThrow();
        assertTrue(after <= before + more, () -> what + ": at most " + before + " in the first half, " + after
                + " in the second; " + late);
    }
}
