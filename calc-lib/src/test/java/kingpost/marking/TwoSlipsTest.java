package kingpost.marking;

import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import kingpost.marking.Slip.Kind;
import kingpost.statics.Solution;
import org.junit.jupiter.api.Test;

/**
 * A slip planted in the working of a random truss, and one more in writing down a member that was right until then.
 * {@code -Dtrusses=20 -Dshow=true} makes a longer campaign of it.
 */
class TwoSlipsTest {

    private static final List<Kind> IN_WORKING = List.of(Kind.SENSE_REVERSED, Kind.SINE_COSINE_SWAPPED, Kind.LOAD_FORGOTTEN,
            Kind.WRONG_MEMBER_CARRIED);

    private final List<String> misses = new ArrayList<>();
    private int shown;
    private int named;

    @Test
    void namesBothOfTwoSlips() {
        int trusses = Integer.getInteger("trusses", 4);
        for (int seed = 0; seed < trusses; seed++) {
            Random random = new Random(500 + seed);
            Solution solution = SampleTrusses.random(random);
            Marker marker = Marker.of(solution);
            for (Kind kind : IN_WORKING) {
                new SlipPlanter(solution, random).plant(kind)
                        .ifPresent(sheet -> mark(marker, kind, sheet, random));
            }
        }
        if (Boolean.getBoolean("show")) {
            misses.forEach(System.err::println);
            System.err.println(named + " of " + shown + " pairs named");
        }
        assertTrue(shown > 2 * trusses, () -> "too few: " + shown);
        assertTrue(named >= 0.85 * shown, () -> named + " of " + shown + " " + misses);
    }

    private void mark(Marker marker, Kind kind, Map<String, String> sheet, Random random) {
        MarkedSheet one = marker.mark(sheet);
        boolean shows = Marker.kinds(one).equals(List.of(kind));
        Map<String, String> two = new LinkedHashMap<>(sheet);
        Optional<Kind> written = shows ? spoil(one, two, random) : Optional.empty();
        if (written.isPresent()) {
            shown++;
            MarkedSheet marked = marker.mark(two);
            List<Kind> kinds = new ArrayList<>(Marker.kinds(marked));
            boolean both = kinds.remove(kind) && kinds.remove(written.get()) && kinds.isEmpty();
            named += both ? 1 : 0;
            if (!both) {
                misses.add(kind + " " + written.get() + " " + two + "\n    " + one.slips() + "\n    " + marked.slips() + "\n    "
                        + marked.others());
            }
        }
    }

    /** Turns the sense of a right answer round, or two of its digits. */
    private static Optional<Kind> spoil(MarkedSheet marked, Map<String, String> sheet, Random random) {
        List<MarkedSheet.MarkedAnswer> right = marked.answers().stream().filter(answer -> answer.isMember()
                && answer.verdict() instanceof Verdict.Right && Math.abs(answer.right().orElseThrow().getValue()) >= 10
                && answer.text().matches("-?\\d\\d\\.\\d.*")).toList();
        if (right.isEmpty()) {
            return Optional.empty();
        }
        MarkedSheet.MarkedAnswer one = right.get(random.nextInt(right.size()));
        String text = one.text();
        char tens = text.replace("-", "").charAt(0);
        char ones = text.replace("-", "").charAt(1);
        if (random.nextBoolean() && tens != ones && ones != '0') {
            sheet.put(one.subject(), text.replace("" + tens + ones, "" + ones + tens));
            return Optional.of(Kind.DIGITS_TRANSPOSED);
        }
        boolean word = text.endsWith("T") || text.endsWith("C");
        sheet.put(one.subject(), word ? text.replaceAll("[TC]$", text.endsWith("T") ? "C" : "T")
                : text.startsWith("-") ? text.substring(1) : "-" + text);
        return Optional.of(word ? Kind.WRONG_SENSE_WORD : Kind.SENSE_REVERSED);
    }
}
