package kingpost.svg;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import kingpost.svg.Element.Rect;

/**
 * A picture: its elements, what part of the plane it shows, and what it says to those who cannot see it.
 *
 * @param view        the part of the plane shown, in user units; also the picture's size in pixels
 * @param title       what the picture is, in a few words
 * @param description what there is to see in it
 * @param elements    in drawing order
 * @param idPrefix    start of the ids in the picture; without one the writer makes it from the picture's content
 */
public record Svg(Box view, String title, String description, List<Element> elements, Optional<String> idPrefix) {

    public Svg {
        elements = List.copyOf(elements);
        if (!(view.width() > 0 && view.height() > 0)) {
            throw new IllegalArgumentException("a picture of " + view.width() + " by " + view.height());
        }
        idPrefix.ifPresent(Svg::checkId);
    }

    /** A picture on a white sheet with rounded corners that fills the view. */
    public static Svg onPaper(Box view, String title, String description, List<? extends Element> elements) {
        Rect paper = new Rect(view, 8, Style.fill("#ffffff"));
        List<Element> all = new ArrayList<>(elements.size() + 1);
        all.add(paper);
        all.addAll(elements);
        return new Svg(view, title, description, all, Optional.empty());
    }

    /**
     * The same picture with ids that start with {@code prefix}, unique in the page it goes to.
     */
    public Svg withIdPrefix(String prefix) {
        return new Svg(view, title, description, elements, Optional.of(prefix));
    }

    /** The picture as SVG text; see {@link SvgWriter}. */
    public String toText() {
        return SvgWriter.write(this);
    }

    private static void checkId(String prefix) {
        if (!prefix.matches("[A-Za-z][A-Za-z0-9_-]*")) {
            throw new IllegalArgumentException("not an id: " + prefix);
        }
    }
}
