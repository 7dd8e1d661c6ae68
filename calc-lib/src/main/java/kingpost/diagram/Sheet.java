package kingpost.diagram;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import kingpost.svg.Arrow;
import kingpost.svg.Box;
import kingpost.svg.Element;
import kingpost.svg.Style;
import kingpost.svg.Svg;

/**
 * The paper while a figure is drawn on it: what is drawn, layer by layer, what that covers, and the labels that wait
 * for a place. As large in the end as what is on it.
 */
final class Sheet {

    private static final double MARGIN = 14;
    private static final double HEAD = 9;

    private final Map<Layer, List<Element>> layers = new EnumMap<>(Layer.class);
    private final List<Patch> covered = new ArrayList<>();
    private final List<Label> waiting = new ArrayList<>();
    private final List<Label.Placed> placed = new ArrayList<>();
    private final List<Label> homeless = new ArrayList<>();
    private Box bounds;

    /** Puts {@code element} on the sheet; {@code patches} are what it covers, where no label may stand. */
    void add(Layer layer, Element element, Patch... patches) {
        layers.computeIfAbsent(layer, l -> new ArrayList<>()).add(element);
        for (Patch patch : patches) {
            covered.add(patch);
            reach(patch);
        }
    }

    void line(Layer layer, Place from, Place to, String colour, double width) {
        add(layer, new Element.Line(from.point(), to.point(), Ink.line(colour, width)), Patch.line(from, to, width));
    }

    void arrow(Place tail, Place tip, String colour, double width) {
        arrow(tail, tip, colour, width, Style.none());
    }

    void arrow(Place tail, Place tip, String colour, double width, Style shaft) {
        Place neck = tip.along(tail, HEAD / tip.distance(tail));
        Place half = tip.minus(tail).unit().left().times(HEAD * 0.4);
        add(Layer.FORCES, Arrow.of(tail.point(), tip.point(), HEAD, colour, width, shaft),
                Patch.line(tail, neck, width), Patch.of(tip, neck.plus(half), neck.minus(half)));
    }

    /** Makes sure the sheet reaches to {@code patch}, without keeping labels off it. */
    void reach(Patch patch) {
        Box box = Box.around(new Place(patch.left(), patch.top()).point(),
                new Place(patch.right(), patch.bottom()).point());
        bounds = bounds == null ? box : bounds.union(box);
    }

    /** Asks for a place; it is found when all labels are {@linkplain #settle settled}. */
    void label(Label label) {
        waiting.add(label);
    }

    /** Writes at a place already known to be free. */
    void write(Caption caption, Place centre, double degrees) {
        Label label = new Label(caption, List.of(new Spot(centre, degrees, centre, 0)), "", 0);
        write(new Label.Placed(label, label.spots().get(0)));
    }

    /** Writes level, from {@code left} on, at a place already known to be free. */
    void writeFrom(Caption caption, Place left) {
        Place centre = left.plus(new Place(caption.width() / 2, 0));
        add(Layer.WRITING, caption.from(left), Patch.box(centre, caption.width(), caption.height(), 0));
    }

    /** Finds places for the labels that wait, and writes them. */
    void settle() {
        List<Optional<Label.Placed>> places = new LabelPlacer(covered).place(waiting);
        for (int i = 0; i < waiting.size(); i++) {
            Label label = waiting.get(i);
            places.get(i).ifPresentOrElse(this::write, () -> homeless.add(label));
        }
        waiting.clear();
    }

    /** Writes a label that found no place at a spot known to be free. */
    void house(Label label, Spot spot) {
        homeless.remove(label);
        write(new Label.Placed(label, spot));
    }

    private void write(Label.Placed label) {
        placed.add(label);
        add(Layer.WRITING, label.label().caption().at(label.spot().centre(), label.spot().degrees()), label.patch());
    }

    /** Labels for which there was no room, in the order asked. */
    List<Label> homeless() {
        return List.copyOf(homeless);
    }

    /** Labels in their places. */
    List<Label.Placed> placed() {
        return List.copyOf(placed);
    }

    /** What is covered so far, labels that are settled included. */
    List<Patch> covered() {
        return List.copyOf(covered);
    }

    /** The box round everything so far. */
    Box bounds() {
        return bounds;
    }

    /** Width of the finished figure, px. */
    double width() {
        return bounds.width() + 2 * MARGIN;
    }

    /** Everything on it, in drawing order. */
    List<Element> elements() {
        List<Element> all = new ArrayList<>();
        layers.values().forEach(all::addAll);
        return all;
    }

    Svg toSvg(String title, String description) {
        return Svg.onPaper(bounds.grown(MARGIN), title, description, elements());
    }
}
