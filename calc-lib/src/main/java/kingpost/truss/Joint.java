package kingpost.truss;

import kingpost.units.Quantity;

/**
 * A joint: a name and a place.
 *
 * @param name as the user wrote it
 * @param x    in the truss's unit of length, to the right
 * @param y    upwards
 * @param z    towards the reader; zero in a planar truss
 */
public record Joint(String name, Quantity x, Quantity y, Quantity z) {
}
