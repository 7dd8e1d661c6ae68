package kingpost.diagram;

import java.util.List;

/**
 * Something written beside what it names.
 *
 * @param caption what it says
 * @param spots   where it could stand
 * @param key     what it belongs to, as a figure without room for it would list it: "AB", "joint A"
 * @param rank    0 for what a figure is nothing without, more for what can be told elsewhere
 */
record Label(Caption caption, List<Spot> spots, String key, int rank) {

    Label {
        spots = List.copyOf(spots);
    }

    /** What the label covers at {@code spot}, with {@code margin} px of air on each side. */
    Patch at(Spot spot, double margin) {
        return Patch.box(spot.centre(), caption.width() + 2 * margin, caption.height() + 2 * margin, spot.degrees());
    }

    /** What it belongs to and what it says, where it cannot stand beside it. */
    String whole() {
        String text = caption.text();
        return text.equals(key) ? key : key + " " + text;
    }

    /** The label in its place. */
    record Placed(Label label, Spot spot) {
        Patch patch() {
            return label.at(spot, 0);
        }
    }
}
