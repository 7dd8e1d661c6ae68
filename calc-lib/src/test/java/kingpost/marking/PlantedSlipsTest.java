package kingpost.marking;

import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import kingpost.marking.MarkedSheet.MarkedAnswer;
import kingpost.marking.Slip.Kind;
import kingpost.statics.Solution;
import org.junit.jupiter.api.Test;

/** One slip planted in the working of a random truss, and what it is then called. */
class PlantedSlipsTest {

    private static final List<Kind> PLANTED = List.of(Kind.WRONG_SENSE_WORD, Kind.SENSE_REVERSED,
            Kind.SINE_COSINE_SWAPPED, Kind.DIGITS_TRANSPOSED, Kind.LOAD_FORGOTTEN, Kind.WRONG_MEMBER_CARRIED,
            Kind.ROUNDED_CARRIED);

    @Test
    void namesPlantedSlips() {
        Tally tally = new Tally();
        int trusses = Integer.getInteger("trusses", 5);
        for (int seed = 0; seed < trusses; seed++) {
            Solution solution = SampleTrusses.random(new Random(seed));
            Marker marker = Marker.of(solution);
            for (Kind kind : PLANTED) {
                for (int i = 0; i < 4; i++) {
                    Random random = new Random(1000L * seed + 10 * kind.ordinal() + i);
                    Optional<Map<String, String>> sheet = new SlipPlanter(solution, random).plant(kind);
                    sheet.ifPresent(answers -> tally.add(kind, answers, marker.mark(answers)));
                }
            }
        }
        if (Boolean.getBoolean("show")) {
            tally.misses.forEach(System.err::println);
            System.err.println(tally);
        }
        assertTrue(tally.counted > 80, () -> "too few: " + tally);
        assertTrue(tally.hits >= 0.95 * (tally.hits + tally.misses()), tally::toString);
    }

    /** What each planted kind was called; a sheet whose answers all stay right shows nothing and is not counted. */
    private static final class Tally {
        private final Map<Kind, Map<String, Integer>> table = new EnumMap<>(Kind.class);
        private final List<String> misses = new ArrayList<>();
        private int counted;
        private int hits;
        private int either;

        void add(Kind planted, Map<String, String> answers, MarkedSheet marked) {
            if (marked.right() == marked.answers().size()) {
                return;
            }
            counted++;
            List<Kind> named = Marker.kinds(marked);
            boolean hit = named.equals(List.of(planted)) || isSameOnPaper(planted, named, marked) || named.isEmpty() && onlyRounded(marked)
                    && planted == Kind.ROUNDED_CARRIED;
            boolean tied = !hit && marked.others().stream().anyMatch(o -> o.size() == 1 && o.get(0).kind() == planted);
            hits += hit ? 1 : 0;
            either += tied ? 1 : 0;
            String name = hit ? planted.name() : tied ? "EITHER" : named.toString();
            table.computeIfAbsent(planted, k -> new java.util.TreeMap<>()).merge(name, 1, Integer::sum);
            if (!hit) {
                misses.add(planted + (tied ? " (tied)" : "") + " " + answers + "\n    " + marked.slips() + "\n    "
                        + marked.others() + "\n    " + wrong(marked));
            }
        }

        /** A sense that is only written wrong, or wrong where nothing uses it any more, looks the same in words. */
        private static boolean isSameOnPaper(Kind planted, List<Kind> named, MarkedSheet marked) {
            return planted == Kind.SENSE_REVERSED && named.equals(List.of(Kind.WRONG_SENSE_WORD))
                    && marked.right() == marked.answers().size() - 1;
        }

        private static boolean onlyRounded(MarkedSheet marked) {
            return marked.answers().stream().allMatch(a -> a.verdict() instanceof Verdict.Right
                    || a.verdict() instanceof Verdict.Slipped s && s.slip().kind() == Kind.ROUNDED_CARRIED);
        }

        private static List<String> wrong(MarkedSheet marked) {
            return marked.answers().stream().filter(a -> !(a.verdict() instanceof Verdict.Right))
                    .map((MarkedAnswer a) -> a.subject() + " " + a.text() + " for " + a.right().orElseThrow()).toList();
        }

        int misses() {
            return counted - hits - either;
        }

        @Override
        public String toString() {
            return counted + " shown, " + hits + " named, " + either + " tied: " + table;
        }
    }
}
