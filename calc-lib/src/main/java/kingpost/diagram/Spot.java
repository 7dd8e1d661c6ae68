package kingpost.diagram;

/**
 * A place where a label could stand.
 *
 * @param centre  middle of the label
 * @param degrees how far its writing is turned, counter-clockwise
 * @param cost    how much a reader would rather see it elsewhere; 0 is the first choice, 1 a clearly worse one
 */
record Spot(Place centre, double degrees, double cost) {
}
