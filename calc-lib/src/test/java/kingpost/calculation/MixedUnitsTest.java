package kingpost.calculation;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.stream.Stream;
import kingpost.units.CalculationException;
import kingpost.units.Quantity;
import kingpost.units.UnitLabel;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Two sheets in metric and foot-pound units mixed. Each value was worked outside this program, in SI, from the exact
 * factors of NIST SP 811 (2008), appendix B: 1 in = 25.4 mm, 1 lb = 0.45359237 kg, 1 lbf = 4.4482216152605 N.
 */
class MixedUnitsTest {

    private static final double NEAR = 1e-12;

    /** A line of a sheet: what it is, then its parts. */
    private record Row(String sheet, List<String> parts) {
        String part(int number) {
            return parts.get(number);
        }

        CalculationSheet withGivens() {
            CalculationSheet all = CalculationSheet.titled("Mixed");
            rows(sheet, "given").forEach(row -> all.given(row.part(1), Quantity.parse(row.part(2)), ""));
            return all;
        }
    }

    private static Stream<Row> rows(String sheet, String kind) {
        try (InputStream in = MixedUnitsTest.class.getResourceAsStream(sheet)) {
            return new String(in.readAllBytes(), StandardCharsets.UTF_8).lines().filter(line -> line.startsWith(kind + " |"))
                    .map(line -> new Row(sheet, Stream.of(line.split("\\|", -1)).map(String::strip).toList()));
        } catch (IOException e) {
            throw new IllegalStateException(e);
        }
    }

    private static Stream<Row> rows(String kind) {
        return Stream.of("mixed-units.txt", "second-sheet.txt").flatMap(sheet -> rows(sheet, kind));
    }

    private static Stream<Row> lines() {
        return rows("line");
    }

    private static Stream<Row> slips() {
        return rows("slip");
    }

    @ParameterizedTest
    @MethodSource("lines")
    void agreesWithTheValueWorkedFromTheFactors(Row row) {
        double expected = Double.parseDouble(row.part(3));
        double answer = row.withGivens().formula("x", row.part(1), UnitLabel.parse(row.part(2)), "").value().getValue();
        assertEquals(expected, answer, Math.abs(expected) * NEAR);
    }

    @ParameterizedTest
    @MethodSource("slips")
    void refusesTheSlipAndNamesBothSides(Row row) {
        CalculationSheet sheet = row.withGivens();
        String message = assertThrows(CalculationException.class, () -> sheet.formula("x", row.part(1), "")).getMessage();
        row.parts().stream().skip(2).forEach(side -> assertTrue(message.contains(side), message));
    }

    @Test
    void tellsWhatHoldsAndWhatDoesNot() {
        rows("check").forEach(row -> assertEquals(row.part(2).equals("yes"),
                row.withGivens().check(row.part(1), "").verdict().satisfied(), row::toString));
    }

    @Test
    void answersInNoUnitOfAnotherKind() {
        rows("unit").forEach(row -> assertThrows(CalculationException.class,
                () -> row.withGivens().formula("x", row.part(1), UnitLabel.parse(row.part(2)), ""), row::toString));
        rows("unlike").forEach(row -> assertThrows(CalculationException.class,
                () -> row.withGivens().check(row.part(1), ""), row::toString));
        assertEquals(12, Stream.of("unit", "unlike").mapToLong(kind -> rows(kind).count()).sum());
    }
}
