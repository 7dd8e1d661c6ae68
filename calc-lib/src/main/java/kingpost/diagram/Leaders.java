package kingpost.diagram;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import kingpost.svg.Element;

/** Labels without room beside what they name, written at a little distance with a thin line to it. */
final class Leaders {

    private static final double NEAREST = 22;
    private static final double FARTHEST = 96;
    private static final double STEP = 5;
    private static final double CLEAR = 2;

    private final Sheet sheet;
    private final List<Patch> marks;

    /** @param marks what no line may cross besides writing: the other things that have names */
    Leaders(Sheet sheet, List<Patch> marks) {
        this.sheet = sheet;
        this.marks = marks;
    }

    /** Houses those of the labels that found no place as far as there is room; each is led to its place. */
    void house(Map<Label, Place> named) {
        named.forEach((label, place) -> {
            if (sheet.homeless().contains(label)) {
                house(label, place);
            }
        });
    }

    private void house(Label label, Place place) {
        List<Patch> writing = new ArrayList<>(sheet.placed().stream().map(Label.Placed::patch).toList());
        marks.stream().filter(mark -> !mark.overlaps(Patch.disc(place, 1))).forEach(writing::add);
        for (double off = NEAREST; off <= FARTHEST; off += STEP) {
            for (int i = 0; i < 24; i++) {
                Place way = Place.towards(7 + 15 * i);
                Spot spot = new Spot(place.plus(way.times(off)), 0, place, 0);
                Place end = place.plus(way.times(off - inside(label.caption(), way)));
                Patch line = Patch.line(place, end, CLEAR);
                if (isFree(label.at(spot, CLEAR)) && writing.stream().noneMatch(line::overlaps)) {
                    sheet.house(label, spot);
                    sheet.add(Layer.FORCES, new Element.Line(place.point(), end.point(), Ink.line(Ink.UNKNOWN, 0.7)),
                            Patch.line(place, end, 0.7));
                    return;
                }
            }
        }
    }

    private boolean isFree(Patch patch) {
        return sheet.covered().stream().noneMatch(patch::overlaps);
    }

    /** From the middle of a label to its edge. */
    private static double inside(Caption caption, Place way) {
        return Math.min((caption.width() / 2 + CLEAR) / Math.max(1e-9, Math.abs(way.x())),
                (caption.height() / 2 + CLEAR) / Math.max(1e-9, Math.abs(way.y())));
    }
}
