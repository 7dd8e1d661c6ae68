package kingpost.calculation;

import kingpost.units.Quantity;

/**
 * A value that a formula used, as it was then.
 *
 * @param value the quantity
 * @param given whether someone gave it, so that it is written with all its figures; false for a calculated one
 * @param line  the number of the line that it comes from
 */
public record Operand(Quantity value, boolean given, int line) {
}
