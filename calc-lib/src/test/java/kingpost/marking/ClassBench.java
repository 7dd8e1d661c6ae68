package kingpost.marking;

import java.lang.management.ManagementFactory;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import kingpost.marking.Slip.Kind;
import kingpost.statics.Solution;
import kingpost.truss.Member;

/**
 * How long it takes to mark a class of thirty on a Pratt truss of 21 members; run by hand:
 * {@code java -cp ... kingpost.marking.ClassBench}. Ten sheets are right, ten hold one slip, five two, three are
 * half at random, two wholly.
 */
final class ClassBench {

    private static final Kind[] KINDS = {Kind.WRONG_SENSE_WORD, Kind.SENSE_REVERSED, Kind.SINE_COSINE_SWAPPED,
        Kind.DIGITS_TRANSPOSED, Kind.LOAD_FORGOTTEN, Kind.WRONG_MEMBER_CARRIED, Kind.ROUNDED_CARRIED};

    private final Solution solution = UnseenSheetsTest.truss("pratt");
    private final Random random = new Random(7);

    private ClassBench() {
    }

    public static void main(String[] args) {
        ClassBench bench = new ClassBench();
        List<Map<String, String>> sheets = bench.sheets();
        for (int round = 0; round < 4; round++) {
            Marker marker = Marker.of(bench.solution);
            List<Long> each = new ArrayList<>();
            for (Map<String, String> sheet : sheets) {
                long start = ManagementFactory.getThreadMXBean().getCurrentThreadCpuTime();
                marker.mark(sheet);
                each.add((ManagementFactory.getThreadMXBean().getCurrentThreadCpuTime() - start) / 1_000_000);
            }
            System.out.println("round " + round + ": " + each.stream().mapToLong(ms -> ms).sum() + " ms of processor in all; each " + each);
        }
        long start = System.nanoTime();
        Marker marker = Marker.of(bench.solution);
        sheets.parallelStream().forEach(marker::mark);
        System.out.println("as a class: " + (System.nanoTime() - start) / 1_000_000 + " ms");
    }

    private List<Map<String, String>> sheets() {
        List<Map<String, String>> sheets = new ArrayList<>();
        for (int i = 0; i < 10; i++) {
            sheets.add(right());
        }
        for (int i = 0; i < 10; i++) {
            sheets.add(planted(KINDS[i % KINDS.length]));
        }
        for (int i = 0; i < 5; i++) {
            Map<String, String> two = planted(KINDS[i % KINDS.length]);
            spoil(two, 1);
            sheets.add(two);
        }
        for (int i = 0; i < 5; i++) {
            Map<String, String> wild = right();
            spoil(wild, i < 3 ? 10 : 21);
            sheets.add(wild);
        }
        return sheets;
    }

    private Map<String, String> right() {
        Map<String, String> sheet = new LinkedHashMap<>();
        solution.members().forEach(each -> sheet.put(each.member().name(), SlipPlanter.digits(each.force() / 1000)));
        return sheet;
    }

    private Map<String, String> planted(Kind kind) {
        while (true) {
            var sheet = new SlipPlanter(solution, random).plant(kind);
            if (sheet.isPresent()) {
                return new LinkedHashMap<>(sheet.get());
            }
        }
    }

    private void spoil(Map<String, String> sheet, int count) {
        List<Member> members = new ArrayList<>(solution.truss().members());
        for (int i = 0; i < count; i++) {
            Member member = members.remove(random.nextInt(members.size()));
            sheet.put(member.name(), SlipPlanter.digits(5 + 80 * random.nextDouble()) + (random.nextBoolean() ? " T" : " C"));
        }
    }
}
