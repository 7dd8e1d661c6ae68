package kingpost.marking;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import kingpost.marking.MarkedSheet.MarkedAnswer;
import kingpost.statics.Solution;
import kingpost.statics.Solver;
import kingpost.truss.Direction;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Answer sheets for trusses that no other test of marking knows; how they came about is said at their head. */
class UnseenSheetsTest {

    private static final Pattern SHEET = Pattern.compile("sheet (?<number>\\d+) of (?<truss>\\w+): (?<note>.*)\n"
            + "planted (?<kind>\\w+) (?<subject>.*)\nslipped (?<slipped>.*)\nfollows (?<follows>.*)\nright (?<right>.*)\n"
            + "(?<answers>(?:.+\n)+)");

    private static final Map<String, Function<String, Solution>> TRUSSES = Map.of("pratt", UnseenSheetsTest::pratt,
            "fink", UnseenSheetsTest::fink, "bracket", UnseenSheetsTest::bracket, "inclined", UnseenSheetsTest::inclined,
            "roof", UnseenSheetsTest::roof);

    static Solution truss(String name) {
        return TRUSSES.get(name).apply(name);
    }

    private static Solution pratt(String name) {
        return Solver.solve(SampleTrusses.named(name).joint("L0", 0, 0).joint("L1", 3, 0).joint("L2", 6, 0)
                .joint("L3", 9, 0).joint("L4", 12, 0).joint("L5", 15, 0).joint("L6", 18, 0).joint("U1", 3, 4)
                .joint("U2", 6, 4).joint("U3", 9, 4).joint("U4", 12, 4).joint("U5", 15, 4)
                .members("L0-L1 L1-L2 L2-L3 L3-L4 L4-L5 L5-L6 L0-U1 U1-U2 U2-U3 U3-U4 U4-U5 U5-L6 L1-U1 L2-U2 L3-U3 L4-U4"
                        + " L5-U5 U1-L2 U2-L3 L3-U4 L4-U5").pin("L0").roller("L6").load("L1", 10, Direction.DOWN)
                .load("L2", 24, Direction.DOWN).load("L3", 30, Direction.DOWN).load("L4", 18, Direction.DOWN)
                .load("L5", 12, Direction.DOWN).build());
    }

    private static Solution fink(String name) {
        return Solver.solve(SampleTrusses.named(name).joint("A", 0, 0).joint("B", 4, 0).joint("C", 8, 0).joint("D", 12, 0)
                .joint("E", 6, 4).joint("F", 3, 2).joint("G", 9, 2).members("AB BC CD AF FE EG GD FB BE EC CG")
                .pin("A").roller("D").load("F", 8, Direction.DOWN).load("E", 10, Direction.DOWN)
                .load("G", 6, Direction.DOWN).build());
    }

    private static Solution bracket(String name) {
        return Solver.solve(SampleTrusses.named(name).joint("A", 0, 3).joint("B", 0, 0).joint("C", 4, 0).joint("D", 4, 3)
                .joint("E", 8, 0).members("AB AD AC BC CD CE DE").pin("A").roller("B", Direction.RIGHT)
                .load("D", 15, Direction.DOWN).load("E", 10, Direction.DOWN).load("E", 6, Direction.RIGHT).build());
    }

    private static Solution inclined(String name) {
        return Solver.solve(SampleTrusses.named(name).joint("A", 0, 0).joint("C", 3, 0).joint("B", 6, 0)
                .joint("D", 1.5, 2).joint("E", 4.5, 2).members("AC CB AD DC CE EB DE").pin("A")
                .roller("B", Direction.slope(-5, 12)).load("D", 14, Direction.DOWN).load("E", 5, Direction.RIGHT)
                .load("C", 9, Direction.DOWN).build());
    }

    private static Solution roof(String name) {
        return Solver.solve(SampleTrusses.named(name).joint("A", 0, 0).joint("B", 4, 0).joint("C", 8, 0).joint("D", 12, 0)
                .joint("E", 16, 0).joint("F", 4, 3).joint("G", 8, 6).joint("H", 12, 3)
                .members("AB BC CD DE AF FG GH HE BF CG DH FC CH").pin("A").roller("E")
                .load("F", 10, Direction.slope(3, -4)).load("G", 16, Direction.DOWN).load("H", 12, Direction.DOWN)
                .load("B", 9, Direction.DOWN).build());
    }

    record Sheet(String title, String truss, Slip.Kind planted, String subject, List<String> slipped,
                 List<String> follows, List<String> right, String answers) {
        @Override
        public String toString() {
            return title;
        }
    }

    static Stream<Sheet> sheets() throws IOException {
        List<Sheet> sheets = new ArrayList<>();
        try (InputStream in = UnseenSheetsTest.class.getResourceAsStream("unseen-sheets.txt")) {
            Matcher sheet = SHEET.matcher(new String(in.readAllBytes(), StandardCharsets.UTF_8));
            while (sheet.find()) {
                sheets.add(new Sheet(sheet.group("number") + " " + sheet.group("truss") + ": " + sheet.group("note"),
                        sheet.group("truss"), Slip.Kind.valueOf(sheet.group("kind")), sheet.group("subject"),
                        names(sheet.group("slipped")), names(sheet.group("follows")), names(sheet.group("right")),
                        sheet.group("answers")));
            }
        }
        assertEquals(30, sheets.size());
        return sheets.stream();
    }

    private static List<String> names(String line) {
        return Stream.of(line.strip().split(" ")).filter(name -> !name.isEmpty()).toList();
    }

    @ParameterizedTest
    @MethodSource("sheets")
    void namesTheSlipAndFollowsIt(Sheet sheet) {
        MarkedSheet marked = Marker.of(TRUSSES.get(sheet.truss()).apply(sheet.title())).mark(sheet.answers());
        assertEquals(0, marked.notRead(), () -> marked.answers().toString());
        List<String> wrong = new ArrayList<>();
        sheet.right().forEach(name -> expect(marked, name, Verdict.Right.class, wrong));
        sheet.slipped().forEach(name -> expect(marked, name, Verdict.Slipped.class, wrong));
        if (!sheet.slipped().isEmpty()) {
            sheet.follows().forEach(name -> expect(marked, name, Verdict.FollowThrough.class, wrong));
        }
        assertEquals(List.of(sheet.planted()), Marker.kinds(marked), () -> marked.slips() + " " + marked.others());
        assertTrue(marked.slips().get(0).subject().contains(sheet.subject()), () -> marked.slips().toString());
        assertEquals(List.of(), wrong, () -> marked.slips().toString());
    }

    private static void expect(MarkedSheet marked, String name, Class<? extends Verdict> kind, List<String> wrong) {
        MarkedAnswer answer = marked.answers().stream().filter(each -> each.subject().equals(name)).findFirst()
                .orElseThrow(() -> new AssertionError(name + " in " + marked.answers()));
        if (!kind.isInstance(answer.verdict())) {
            wrong.add(name + " " + answer.text() + ": " + answer.verdict() + " for " + kind.getSimpleName());
        }
    }
}
