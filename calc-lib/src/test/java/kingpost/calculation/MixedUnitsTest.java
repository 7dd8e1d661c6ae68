package kingpost.calculation;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.stream.Stream;
import kingpost.units.CalculationException;
import kingpost.units.Quantity;
import kingpost.units.UnitLabel;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * One sheet in metric and foot-pound units mixed. Each value was worked outside this program, in SI, from the exact
 * factors of NIST SP 811 (2008), appendix B: 1 in = 25.4 mm, 1 lb = 0.45359237 kg, 1 lbf = 4.4482216152605 N.
 */
class MixedUnitsTest {

    private static final double NEAR = 1e-12;

    private static Stream<List<String>> rows(String kind) {
        try (InputStream in = MixedUnitsTest.class.getResourceAsStream("mixed-units.txt")) {
            return new String(in.readAllBytes(), StandardCharsets.UTF_8).lines().filter(line -> line.startsWith(kind))
                    .map(line -> Stream.of(line.split("\\|", -1)).map(String::strip).toList());
        } catch (IOException e) {
            throw new IllegalStateException(e);
        }
    }

    private static Stream<List<String>> lines() {
        return rows("line");
    }

    private static Stream<List<String>> slips() {
        return rows("slip");
    }

    private static CalculationSheet sheet() {
        CalculationSheet sheet = CalculationSheet.titled("Mixed");
        rows("given").forEach(row -> sheet.given(row.get(1), Quantity.parse(row.get(2)), ""));
        return sheet;
    }

    @ParameterizedTest
    @MethodSource("lines")
    void agreesWithTheValueWorkedFromTheFactors(List<String> row) {
        double expected = Double.parseDouble(row.get(3));
        double answer = sheet().formula("x", row.get(1), UnitLabel.parse(row.get(2)), "").value().getValue();
        assertEquals(expected, answer, Math.abs(expected) * NEAR);
    }

    @ParameterizedTest
    @MethodSource("slips")
    void refusesTheSlip(List<String> row) {
        CalculationSheet sheet = sheet();
        assertThrows(CalculationException.class, () -> sheet.formula("x", row.get(1), ""));
    }
}
