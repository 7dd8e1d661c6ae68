package kingpost.diagram;

/**
 * A place where a label could stand.
 *
 * @param centre  middle of the label
 * @param degrees how far its writing is turned, counter-clockwise
 * @param foot    where it meets what it names: nothing drawn may come between
 * @param cost    how much a reader would rather see it elsewhere; 0 is the first choice, 1 a clearly worse one
 */
record Spot(Place centre, double degrees, Place foot, double cost) {

    /** What must be clear between the label and what it names. */
    Patch tether() {
        return Patch.line(centre, foot, 0.5);
    }
}
