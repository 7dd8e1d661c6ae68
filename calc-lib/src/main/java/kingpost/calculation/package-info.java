/**
 * Calculation lines: data and formulas with names, in ordinary infix text, with units checked and every step shown.
 * Read {@link kingpost.calculation.CalculationSheet} first, then {@link kingpost.calculation.Formula}.
 *
 * <p>The text of a formula, and of a check, is read by this grammar; spaces may stand between its parts:
 *
 * <pre>
 * check    = sum ( "&lt;=" | "&lt;" | "&gt;=" | "&gt;" | "=" ) sum
 * sum      = term { ( "+" | "-" ) term }
 * term     = signed { ( "*" | "/" ) signed }
 * signed   = [ "-" | "+" ] power
 * power    = value [ "^" signed ]                  right to left; -x^2 is the opposite of x^2
 * value    = amount | name | name "(" sum { "," sum } ")" | "(" sum ")"
 * amount   = number [ unit | "[" any unit "]" ]    3 kN, 100 mm^2, 30 deg, 5 %, 2.5 [kN/m^2]
 * unit     = one known name with a power: what follows it is a formula again
 * name     = letter { letter | digit | "_" }
 * </pre>
 *
 * <p>The signs \u00b7 \u00d7 \u2212 \u2264 \u2265 and raised digits may stand for {@code * * - <= >= ^}. {@code pi} is
 * built in. Functions: sqrt, abs, min, max, sin, cos, tan, asin, acos, atan, ln, log10, exp, floor, ceil. An angle must
 * carry a unit: {@code sin(30 deg)}; the inverse functions answer in degrees.
 *
 * <p>A name shows as mathematics: {@code sigma_max} as \u03c3 with subscript max, {@code L1} as L with subscript 1.
 *
 * <p>No notebook, no markup here: a line becomes a block of {@code derivation}. Arguments and results are not null
 * unless said.
 */
package kingpost.calculation;
