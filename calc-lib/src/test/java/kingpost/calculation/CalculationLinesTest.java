package kingpost.calculation;

import static kingpost.units.StructuralUnits.*;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.stream.Stream;
import javax.measure.Unit;
import kingpost.units.CalculationException;
import kingpost.units.Quantity;
import kingpost.units.UnitLabel;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

/** Single lines in mixed units, each against a value worked by hand from the exact factors; and the slips. */
class CalculationLinesTest {

    private static CalculationSheet sheet() {
        CalculationSheet sheet = CalculationSheet.titled("Data");
        sheet.given("F", Quantity.of(257, kN), "");
        sheet.given("P", Quantity.of(50, kip), "");
        sheet.given("f_all", Quantity.of(165, MPa), "");
        sheet.given("F_y", Quantity.of(36, ksi), "");
        sheet.given("L", Quantity.of(6, m), "");
        sheet.given("b", Quantity.of(200, mm), "");
        sheet.given("h", Quantity.of(0.3, m), "");
        sheet.given("span", Quantity.of(20, ft), "");
        sheet.given("d", Quantity.of(12, in), "");
        sheet.given("q", Quantity.of(2.5, kN_per_m2), "");
        sheet.given("w", Quantity.of(1.5, klf), "");
        sheet.given("A", Quantity.of(1500, mm2), "");
        sheet.given("E", Quantity.of(200, GPa), "");
        sheet.given("I", Quantity.of(8000, cm4), "");
        sheet.given("theta", Quantity.of(30, deg), "");
        sheet.given("phi", Quantity.of(0.9), "");
        sheet.given("W", Quantity.of(4, t), "");
        sheet.given("g", Quantity.of(9.80665, m.divide(sec.pow(2))), "");
        sheet.given("share", Quantity.of(40, percent), "");
        return sheet;
    }

    /** Formula, unit asked for, value by hand with the arithmetic written out. */
    private static Stream<Arguments> workedByHand() {
        return Stream.of(
                Arguments.of("F/f_all", mm2, 257_000 / 165.0),
                Arguments.of("F / f_all", cm2, 2570 / 165.0),
                Arguments.of("P/F_y", in2, 50 / 36.0),
                Arguments.of("P/(0.6*F_y)", in2, 50 / 21.6),
                Arguments.of("P/f_all", mm2, 50 * 4448.2216152605 / 165),
                Arguments.of("F/A", MPa, 257_000 / 1500.0),
                Arguments.of("F/A", ksi, 257_000 / 1500.0 / 6.89475729316836133672),
                Arguments.of("b*h", mm2, 200 * 300.0),
                Arguments.of("b*h^3/12", cm4, 20 * 27_000 / 12.0),
                Arguments.of("b*h^2/6", mm3, 200 * 90_000 / 6.0),
                Arguments.of("2*(b + h)", mm, 1000.0),
                Arguments.of("L + span", m, 6 + 6.096),
                Arguments.of("span - d", ft, 19.0),
                Arguments.of("L/360", mm, 6000 / 360.0),
                Arguments.of("q*L", kN_per_m, 15.0),
                Arguments.of("q*3 [m]*L^2/8", kNm, 2.5 * 3 * 36 / 8),
                Arguments.of("w*span^2/8", kip_ft, 1.5 * 400 / 8),
                Arguments.of("w*span^2/8", kip_in, 1.5 * 400 / 8 * 12),
                Arguments.of("w*span/2", kN, 15 * 4.4482216152605),
                Arguments.of("5*q*2 [m]*L^4/(384*E*I)", mm,
                        5 * 5 * 6000.0 * 6000 * 6000 * 6000 / (384 * 200_000.0 * 8000e4)),
                Arguments.of("F*L/(E*A)", mm, 257_000 * 6000.0 / (200_000.0 * 1500)),
                Arguments.of("pi^2*E*I/L^2", kN, Math.PI * Math.PI * 200_000 * 8000e4 / 36e6 / 1000),
                Arguments.of("sqrt(I/A)", mm, Math.sqrt(8000e4 / 1500)),
                Arguments.of("L/sqrt(I/A)", one, 6000 / Math.sqrt(8000e4 / 1500)),
                Arguments.of("(I/A)^0.5", cm, Math.sqrt(8000 / 15.0)),
                Arguments.of("F*sin(theta)", kN, 128.5),
                Arguments.of("F*cos(theta)", lbf, 257_000 * Math.sqrt(3) / 2 / 4.4482216152605),
                Arguments.of("F*tan(45 deg)", kN, 257.0),
                Arguments.of("F*sin(pi/6 * 1 rad)", kN, 128.5),
                Arguments.of("atan(3/4)", deg, 36.869897645844021),
                Arguments.of("atan(h/b)", deg, 56.309932474020213),
                Arguments.of("acos(0.5)", deg, 60.0),
                Arguments.of("asin(b/(2*b))", rad, Math.PI / 6),
                Arguments.of("phi*F", kN, 231.3),
                Arguments.of("F*(1 - share)", kN, 154.2),
                Arguments.of("F - 5 %*F", kN, 244.15),
                Arguments.of("W*g", kN, 39.2266),
                Arguments.of("7850 [kg/m3]*A*g", N_per_m, 7850 * 1500e-6 * 9.80665),
                Arguments.of("min(F, P)", kN, 50 * 4.4482216152605),
                Arguments.of("max(F, P, 300 kN)", kN, 300.0),
                Arguments.of("abs(P - F)", kN, 257 - 222.411080763025),
                Arguments.of("-F + 300 kN", kN, 43.0),
                Arguments.of("-2^2*1 kN", kN, -4.0),
                Arguments.of("2^-1*F", kN, 128.5),
                Arguments.of("2^3^2*1 mm", mm, 512.0),
                Arguments.of("100 mm^2*f_all", kN, 16.5),
                Arguments.of("(100 mm)^2*f_all", kN, 1650.0),
                Arguments.of("F/L/2", kN_per_m, 257 / 12.0),
                Arguments.of("ceil(L/(1.7 m))", one, 4.0),
                Arguments.of("floor(L/(1.7 m))*1.7 m", m, 5.1),
                Arguments.of("ln(exp(phi))", one, 0.9),
                Arguments.of("log10(F/(1 kN))", one, Math.log10(257)),
                Arguments.of("0.3*(30 MPa/(1 MPa))^(2/3)*1 MPa", MPa, 0.3 * Math.cbrt(900)),
                Arguments.of("0.4*sqrt(9 [MPa*MPa])", MPa, 1.2),
                Arguments.of("1.2e3*1 N", kN, 1.2),
                Arguments.of("h\u00b2\u00b7b \u2212 0*h^3", m3, 0.018),
                Arguments.of("F/(b*h)", psi, 257_000 / 60_000.0 / 0.00689475729316836133672),
                Arguments.of("d*1 psf*span", lbf, 20.0),
                Arguments.of("span^2*25 psf", kip, 10.0),
                Arguments.of("L*theta", m, Math.PI),
                Arguments.of("150 pcf*d", psf, 150.0));
    }

    @ParameterizedTest
    @MethodSource("workedByHand")
    void agreesWithTheHand(String formula, Unit<?> unit, double value) {
        Quantity answer = sheet().formula("x", formula, unit, "").value();
        assertEquals(value, answer.getValue(), Math.abs(value) * 1e-13);
        assertEquals(unit, answer.getUnit());
    }

    /** Formula, unit asked for, and the two kinds or the words that the error must name. */
    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {
        "F + L | kN | Cannot add 257 kN and 6 m: force and length; check the units.",
        "F - A | kN | Cannot subtract 1500 mm² from 257 kN: area and force; check the units.",
        "F + F/L | kN | Cannot add 257 kN and 42.8 kN/m: force and force per length; check the units.",
        "F + 1 | kN | Cannot add 257 kN and 1: force and plain number; check the units.",
        "phi + theta | deg | Cannot add 0.9 and 30°: plain number and angle; check the units.",
        "share + theta | deg | Cannot add 40 % and 30°: plain number and angle; check the units.",
        "F/A | kN | Cannot express 171 MPa in kN: stress or pressure and force; check the units.",
        "F*L | kN | Cannot express 1540 kN·m in kN: moment and force; check the units.",
        "q*L | kN | Cannot express 15 kN/m in kN: force per length and force; check the units.",
        "b*h^3/12 | mm3 | Cannot express 45\u202f000 cm⁴ in mm³: second moment of area and volume or section modulus;",
        "W + F | kN | Cannot add 4 t and 257 kN: mass and force; check the units.",
        "W | kN | Cannot express 4 t in kN: mass and force; check the units.",
        "sin(30) | 1/m | Cannot take the sine of 30: it is a plain number, not an angle; write 30 deg or 30 rad.",
        "cos(L) | kN | Cannot take the cosine of 6 m: it is a length, not an angle; an angle is needed.",
        "tan(90 deg) | kN | Cannot take the tangent of 90°: it is infinite; check the angle.",
        "atan(L) | deg | Cannot take the arctangent of 6 m: it is a length, not a plain number; divide it by",
        "asin(F/P) | deg | Cannot take the arcsine of 1.16: it is not from \u22121 to 1; check the ratio.",
        "ln(F) | kN | Cannot take the logarithm of 257 kN: it is a force, not a plain number;",
        "ln(0) | kN | Cannot take the logarithm of 0: it is not above zero; check the value.",
        "exp(theta) | kN | Cannot take the exponential of 30°: it is an angle, not a plain number;",
        "sqrt(F) | kN | Cannot take the square root of 257 kN: force is not the square of anything; check the units.",
        "sqrt(b^2 - h^2) | mm | it is negative; check the signs.",
        "F^0.3 | kN | Cannot raise 257 kN to the power 0.3: its unit has no such power;",
        "F^L | kN | Cannot raise 257 kN to the power 6 m: the exponent is a length, not a plain number; check the units.",
        "(-2)^0.5 | kN | Cannot raise \u22122 to the power 0.5: there is no such number; check the signs.",
        "min(F, L) | kN | Cannot compare 6 m with 257 kN: length and force; check the units.",
        "max(F, 2) | kN | Cannot compare 2 with 257 kN: plain number and force; check the units.",
        "F/(A - A) | MPa | Cannot divide 257 kN by 0 mm²: the divisor is zero; check the value below the line.",
        "F/0 | kN | Cannot divide 257 kN by 0: the divisor is zero; check the value below the line.",
        "ceil(L) | m | Cannot take the whole number of 6 m: it is a length, not a plain number;"})
    void refusesTheSlip(String formula, String unit, String message) {
        CalculationSheet sheet = sheet();
        CalculationException slip = assertThrows(CalculationException.class,
                () -> sheet.formula("x", formula, UnitLabel.parse(unit), ""));
        assertTrue(slip.getMessage().startsWith("x = " + formula + ": "), slip.getMessage());
        assertTrue(slip.getMessage().contains(message), slip.getMessage());
        assertEquals(19, sheet.lines().size(), "a refused line leaves nothing behind");
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', quoteCharacter = '\0', value = {
        " F / | Formula \"F /\": at its end a value is missing; complete it.",
        "F * * A | Formula \"F * * A\": at \"* A\" something stands where it cannot be read; write values joined by",
        "(F + P | Formula \"(F + P\": at its end a closing parenthesis is missing; close what is open.",
        "F + P) | Formula \"F + P)\": at \")\" something stands where it cannot be read;",
        "2 F | a number and F, which is no unit, stand side by side; write * between them.",
        "2 L | a number and L, which is no unit, stand side by side; write * between them.",
        "F A | Formula \"F A\": at \"A\" something stands where it cannot be read;",
        "1,5*F | at \",5*F\" something stands where it cannot be read; write values joined by + - * / ^, with",
        "F <= P | at \"<= P\" there is a comparison; a comparison goes into check(...), not a formula.",
        "sqr(F) | a function called sqr is not known; known are sqrt, abs, min,",
        "F(2) | a function called F is not known;",
        "sqrt(F, P) | the function sqrt has 2 values before it; give it one value.",
        "min(F) | the function min has 1 values before it; give it two or more values.",
        "F * --P | there are two signs; put what follows the first in parentheses.",
        "F_al | Name F_al: no line above gives it; did you mean f_all?",
        "f_al*2 | Name f_al: no line above gives it; did you mean f_all?",
        "zz | Name zz: no line above gives it; give it in a line above, with given(\"zz\", ...); the sheet has F, P,",
        "3 [kM]*L | Unit \"kM\": there is no unit called kM; did you mean km?",
        "F$ | Formula \"F$\": at \"$\" something stands where it cannot be read;"})
    void saysWhatCannotBeRead(String formula, String message) {
        CalculationException error = assertThrows(CalculationException.class,
                () -> sheet().formula("x", formula, "some value"));
        assertTrue(error.getMessage().startsWith("x: "), error.getMessage());
        assertTrue(error.getMessage().contains(message), error.getMessage());
    }
}
