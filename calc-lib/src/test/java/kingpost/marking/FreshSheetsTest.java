package kingpost.marking;

import static kingpost.units.StructuralUnits.ft;
import static kingpost.units.StructuralUnits.kip;
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
import kingpost.statics.Solver;
import kingpost.truss.Direction;
import kingpost.truss.TrussBuilder;
import kingpost.truss.TrussModel;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Slips of reading, working and writing in six kinds of trusses; how the sheets came about is said at their head. */
class FreshSheetsTest {

    private static final Pattern SHEET = Pattern.compile("sheet (?<number>\\d+) of (?<truss>\\w+): (?<note>.*)\n"
            + "planted (?<planted>.*)\nslipped (?<slipped>.*)\nfollows (?<follows>.*)\nright (?<right>.*)\n"
            + "(?<answers>(?:.+\n)+)");

    private static final Map<String, Marker> MARKERS = Map.of("fink", marker(fink()), "ktruss", marker(kTruss()),
            "warren", marker(warren()), "scissors", marker(scissors()), "cantilever", marker(cantilever()),
            "roller", marker(roller()), "footbridge", Marker.of(SampleTrusses.footbridge()));

    private static Marker marker(TrussBuilder<TrussModel> truss) {
        return Marker.of(Solver.solve(truss.build()));
    }

    private static TrussBuilder<TrussModel> inFeet(String name) {
        return new TrussBuilder<TrussModel>(name, Function.identity()).units(ft, kip);
    }

    private static TrussBuilder<TrussModel> fink() {
        return inFeet("Compound Fink").joint("A", 0, 0).joint("B", 6, 3).joint("C", 12, 6)
                .joint("D", 18, 9).joint("E", 24, 12).joint("F", 7.5, 0).joint("G", 15, 0).joint("H", 19.5, 6)
                .joint("K", 48, 0).joint("L", 42, 3).joint("M", 36, 6).joint("N", 30, 9).joint("P", 40.5, 0)
                .joint("Q", 33, 0).joint("S", 28.5, 6)
                .members("AB BC CD DE AF FG BF CF CG CH DH GH HE KL LM MN NE KP PQ LP MP MQ MS NS QS SE GQ")
                .pin("A").roller("K").loads("B C D E L M N", 2, Direction.DOWN).load("M", 1.5, Direction.DOWN);
    }

    private static TrussBuilder<TrussModel> kTruss() {
        return SampleTrusses.named("K truss").joint("L0", 0, 0).joint("L1", 4, 0).joint("L2", 8, 0).joint("L3", 12, 0)
                .joint("L4", 16, 0).joint("U1", 4, 6).joint("U2", 8, 6).joint("U3", 12, 6).joint("M1", 4, 3).joint("M3", 12, 3)
                .members("L0-L1 L1-L2 L2-L3 L3-L4 U1-U2 U2-U3 L0-U1 U3-L4 L1-M1 M1-U1 L3-M3 M3-U3 M1-U2 M1-L2 M3-U2 M3-L2"
                        + " L2-U2").pin("L0").roller("L4").load("L1", 18, Direction.DOWN).load("L2", 25, Direction.DOWN)
                .load("L3", 30, Direction.DOWN).load("U2", 7, Direction.DOWN);
    }

    private static TrussBuilder<TrussModel> warren() {
        return inFeet("Warren with verticals").joint("A", 0, 0).joint("B", 10, 0).joint("C", 20, 0)
                .joint("D", 30, 0).joint("E", 40, 0).joint("F", 50, 0).joint("G", 60, 0).joint("H", 10, 10).joint("I", 20, 10)
                .joint("J", 30, 10).joint("K", 40, 10).joint("L", 50, 10)
                .members("AB BC CD DE EF FG AH HI IJ JK KL LG BH CI DJ EK FL HC CJ JE EL").pin("A").roller("G")
                .load("B", 8, Direction.DOWN).load("C", 12, Direction.DOWN).load("D", 12, Direction.DOWN)
                .load("E", 5, Direction.DOWN).load("F", 3, Direction.DOWN).load("J", 4, Direction.RIGHT);
    }

    private static TrussBuilder<TrussModel> scissors() {
        return inFeet("Scissors").joint("A", 0, 0).joint("B", 8, 9).joint("C", 16, 18)
                .joint("D", 24, 9).joint("E", 32, 0).joint("F", 16, 6).members("AB BC CD DE AF FD FE BF CF").pin("A")
                .roller("E").load("B", 4, Direction.slope(9, -8)).load("C", 3, Direction.DOWN).load("D", 2.5, Direction.DOWN);
    }

    private static TrussBuilder<TrussModel> cantilever() {
        return SampleTrusses.named("Cantilever").joint("A", 0, 4).joint("B", 0, 0).joint("C", 4, 0).joint("D", 4, 4)
                .joint("E", 8, 0).members("AD AC AB BC CD CE DE").pin("A").roller("B", Direction.RIGHT)
                .load("E", 12, Direction.DOWN).load("D", 9, Direction.DOWN);
    }

    private static TrussBuilder<TrussModel> roller() {
        return SampleTrusses.named("Inclined roller").joint("A", 0, 0).joint("C", 4, 0).joint("B", 8, 0).joint("D", 4, 3)
                .members("AC CB AD DB CD").pin("A").roller("B", Direction.slope(-3, 4)).load("D", 20, Direction.DOWN)
                .load("C", 10, Direction.DOWN).load("D", 6, Direction.RIGHT);
    }

    record Sheet(String title, String truss, List<String> planted, List<String> slipped, List<String> follows,
                 List<String> right, String answers) {
        @Override
        public String toString() {
            return title;
        }
    }

    static Stream<Sheet> sheets() throws IOException {
        List<Sheet> sheets = new ArrayList<>();
        try (InputStream in = FreshSheetsTest.class.getResourceAsStream("fresh-sheets.txt")) {
            Matcher sheet = SHEET.matcher(new String(in.readAllBytes(), StandardCharsets.UTF_8));
            while (sheet.find()) {
                sheets.add(new Sheet(sheet.group("number") + " " + sheet.group("truss") + ": " + sheet.group("note"),
                        sheet.group("truss"), List.of(sheet.group("planted").strip().split("\\s*;\\s*")),
                        names(sheet.group("slipped")), names(sheet.group("follows")), names(sheet.group("right")),
                        sheet.group("answers")));
            }
        }
        assertTrue(sheets.size() >= 14, "sheets are missing");
        return sheets.stream();
    }

    private static List<String> names(String line) {
        return Stream.of(line.strip().split(" ")).filter(name -> !name.isEmpty()).toList();
    }

    @ParameterizedTest
    @MethodSource("sheets")
    void namesTheSlipsAndFollowsThem(Sheet sheet) {
        MarkedSheet marked = MARKERS.get(sheet.truss()).mark(sheet.answers());
        assertEquals(0, marked.notRead(), () -> marked.answers().toString());
        List<String> wrong = new ArrayList<>();
        sheet.right().forEach(name -> expect(marked, name, Verdict.Right.class, wrong));
        sheet.slipped().forEach(name -> expect(marked, name, Verdict.Slipped.class, wrong));
        sheet.follows().forEach(name -> expect(marked, name, Verdict.FollowThrough.class, wrong));
        assertEquals(sheet.planted().stream().map(each -> each.split(" ")[0]).filter(each -> !each.equals("none")).sorted().toList(),
                Marker.kinds(marked).stream().map(Slip.Kind::name).sorted().toList(), () -> marked.slips() + " " + marked.others());
        for (String planted : sheet.planted()) {
            String subject = planted.substring(planted.indexOf(' ') + 1);
            assertTrue(planted.indexOf(' ') < 0 || marked.slips().stream().anyMatch(slip -> planted.startsWith(slip.kind().name())
                    && slip.subject().contains(subject)), () -> marked.slips().toString());
        }
        assertEquals(List.of(), wrong, () -> marked.slips().toString());
    }

    private static void expect(MarkedSheet marked, String name, Class<? extends Verdict> kind, List<String> wrong) {
        MarkedSheet.MarkedAnswer answer = marked.answer(name).orElseThrow(() -> new AssertionError(name + " in " + marked.answers()));
        if (!kind.isInstance(answer.verdict())) {
            wrong.add(name + " " + answer.text() + ": " + answer.verdict() + " for " + kind.getSimpleName());
        }
    }
}
