package kingpost.marking;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.Locale;
import java.util.function.BiFunction;
import kingpost.statics.Solution;
import kingpost.statics.Solution.MemberResult;
import kingpost.truss.Member;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Right answers in every notation that people use: none is marked wrong, none is left unread. */
class NotationsTest {

    private record Notation(String name, String between, BiFunction<Member, Double, String> written) {
    }

    private static final List<Notation> NOTATIONS = List.of(
            new Notation("word", "\n", (m, f) -> m.name() + " = " + three(Math.abs(f)) + " kN " + word(f)),
            new Notation("letter before", "; ", (m, f) -> m.name() + ": " + letter(f) + " " + three(Math.abs(f))),
            new Notation("letter in brackets", ", ", (m, f) -> m.name() + " " + three(Math.abs(f)) + "kN(" + letter(f) + ")"),
            new Notation("sign", ", ", (m, f) -> m.name() + "=" + signed(f, "-")),
            new Notation("true minus", "\n", (m, f) -> "F_" + m.name() + " = " + signed(f, "\u2212") + " kN"),
            new Notation("en dash", "\n", (m, f) -> "F_{" + m.name() + "} = " + signed(f, "\u2013") + "\u00a0kN"),
            new Notation("newtons", "\n", (m, f) -> m.name() + " = " + three(Math.abs(f) * 1000) + " N " + letter(f)),
            new Notation("turned round", "\n", (m, f) -> m.to() + "-" + m.from() + " = " + three(Math.abs(f)) + " " + word(f)),
            new Notation("small letters", "\n", (m, f) -> m.name().toLowerCase(Locale.ROOT) + " = " + three(Math.abs(f)) + " kn, "
                    + word(f)),
            new Notation("many figures", "\n", (m, f) -> m.name() + " = " + f),
            new Notation("power of ten", "\n", (m, f) -> m.name() + " = " + three(Math.abs(f) * 10) + "e-1 kN " + letter(f)),
            new Notation("two forms", "\n", (m, f) -> m.name() + " = " + three(Math.abs(f)) + " \u2248 " + three(Math.abs(f)) + " kN "
                    + word(f)),
            new Notation("capitals", "\n", (m, f) -> m.name() + " = " + three(Math.abs(f)) + " KN " + word(f).toUpperCase(Locale.ROOT)));

    private static String three(double value) {
        return value < 1e-9 ? "0" : Double.toString(Figures.round(value, 3));
    }

    private static String word(double force) {
        return Math.abs(force) < 1e-9 ? "" : force > 0 ? "tension" : "compression";
    }

    private static String letter(double force) {
        return Math.abs(force) < 1e-9 ? "" : force > 0 ? "T" : "C";
    }

    private static String signed(double force, String minus) {
        return (force < 0 ? minus : "") + three(Math.abs(force));
    }

    @ParameterizedTest
    @ValueSource(strings = {"pratt", "fink", "bracket", "inclined", "roof"})
    void rightAnswersAreRightInEveryNotation(String truss) {
        Solution solution = UnseenSheetsTest.truss(truss);
        Marker marker = Marker.of(solution);
        for (Notation notation : NOTATIONS) {
            List<String> answers = solution.members().stream()
                    .map((MemberResult each) -> notation.written().apply(each.member(), each.force() / 1000)).toList();
            MarkedSheet marked = marker.mark(String.join(notation.between(), answers));
            assertEquals(answers.size(), marked.right(), () -> notation.name() + ": " + marked);
        }
    }
}
