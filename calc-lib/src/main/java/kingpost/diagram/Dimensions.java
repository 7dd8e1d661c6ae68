package kingpost.diagram;

import java.util.ArrayList;
import java.util.List;
import java.util.NavigableSet;
import java.util.TreeSet;
import java.util.function.ToDoubleFunction;
import kingpost.svg.Box;
import kingpost.svg.Element;
import kingpost.truss.Joint;
import kingpost.truss.TrussModel;

/** Panel lengths below a truss and heights beside it, outside everything drawn before. */
final class Dimensions {

    private static final double SIZE = 11;
    private static final double AWAY = 16;
    private static final double NEXT = 20;
    private static final double CLOSEST = 9;
    private static final int MANY = 14;

    private final Sheet sheet;
    private final TrussLayout layout;
    private final ForceText text;

    Dimensions(Sheet sheet, TrussLayout layout) {
        this.sheet = sheet;
        this.layout = layout;
        this.text = new ForceText(layout.truss());
    }

    void draw() {
        Box before = sheet.bounds();
        below(before.bottom() + AWAY);
        beside(before.right() + AWAY);
    }

    private void below(double y) {
        List<Double> stops = panels();
        if (stops.size() < 2) {
            return;
        }
        List<Double> ends = ends(stops);
        if (isEven(stops) && stops.size() > 4) {
            ticks(isOpen(stops) ? stops : ends, y);
            String even = even(stops);
            level(ends.get(0), ends.get(1), y + 20, even);
        } else if (stops.size() <= MANY && fits(stops)) {
            chain(stops, y);
            if (stops.size() > 2) {
                chain(ends, y + NEXT);
            }
        } else {
            ticks(ends, y);
            level(ends.get(0), ends.get(1), fits(ends) ? y : y + 20, text.length(ends.get(1) - ends.get(0)));
        }
    }

    private static List<Double> ends(List<Double> stops) {
        return List.of(stops.get(0), stops.get(stops.size() - 1));
    }

    /** "6 x 3 m = 18 m", or the whole alone where the part is not a short number. */
    private String even(List<Double> stops) {
        double whole = stops.get(stops.size() - 1) - stops.get(0);
        double part = whole / (stops.size() - 1);
        boolean isGiven = Math.abs(part * 1000 - Math.rint(part * 1000)) < 1e-6 * part;
        return (isGiven ? (stops.size() - 1) + " \u00d7 " + text.length(part) + " = " : "") + text.length(whole);
    }

    /**
     * Where the joints of the lowest line are, when they span the truss and every other joint lies over one of them or
     * half way between two; else where all joints are.
     */
    private List<Double> panels() {
        TrussModel truss = layout.truss();
        List<Double> all = distinct(truss.joints(), j -> layout.vector(j).x());
        double tolerance = 1e-6 * (all.get(all.size() - 1) - all.get(0)) + 1e-12;
        double floor = truss.joints().stream().mapToDouble(j -> layout.vector(j).y()).min().orElse(0);
        List<Joint> low = truss.joints().stream().filter(j -> layout.vector(j).y() <= floor + tolerance).toList();
        List<Double> lowest = distinct(low, j -> layout.vector(j).x());
        boolean spans = lowest.size() > 2 && lowest.get(0) <= all.get(0) + tolerance
                && lowest.get(lowest.size() - 1) >= all.get(all.size() - 1) - tolerance;
        NavigableSet<Double> seen = withMiddles(lowest);
        return spans && all.stream().noneMatch(x -> seen.subSet(x - tolerance, true, x + tolerance, true).isEmpty())
                ? lowest : all;
    }

    private static NavigableSet<Double> withMiddles(List<Double> stops) {
        NavigableSet<Double> marks = new TreeSet<>(stops);
        for (int i = 1; i < stops.size(); i++) {
            marks.add((stops.get(i) + stops.get(i - 1)) / 2);
        }
        return marks;
    }

    private static List<Double> distinct(List<Joint> joints, ToDoubleFunction<Joint> coordinate) {
        TreeSet<Double> sorted = new TreeSet<>();
        joints.forEach(j -> sorted.add(coordinate.applyAsDouble(j)));
        List<Double> distinct = new ArrayList<>();
        double slack = 1e-6 * (sorted.last() - sorted.first());
        for (double value : sorted) {
            if (distinct.isEmpty() || value - distinct.get(distinct.size() - 1) > slack) {
                distinct.add(value);
            }
        }
        return distinct;
    }

    private static boolean isEven(List<Double> stops) {
        double panel = (stops.get(stops.size() - 1) - stops.get(0)) / (stops.size() - 1);
        for (int i = 1; i < stops.size(); i++) {
            if (Math.abs(stops.get(i) - stops.get(i - 1) - panel) > 1e-6 * panel) {
                return false;
            }
        }
        return true;
    }

    /** Whether the ticks stand far enough apart to be counted. */
    private boolean isOpen(List<Double> stops) {
        return (stops.get(1) - stops.get(0)) * layout.scale() >= CLOSEST;
    }

    private boolean fits(List<Double> stops) {
        for (int i = 1; i < stops.size(); i++) {
            double length = stops.get(i) - stops.get(i - 1);
            if (Caption.of(text.length(length), SIZE, Ink.MEMBER).width() + 6 > length * layout.scale()) {
                return false;
            }
        }
        return true;
    }

    /** A dimension line with each length over it. */
    private void chain(List<Double> stops, double y) {
        ticks(stops, y);
        for (int i = 1; i < stops.size(); i++) {
            level(stops.get(i - 1), stops.get(i), y, text.length(stops.get(i) - stops.get(i - 1)));
        }
    }

    private void ticks(List<Double> stops, double y) {
        double scale = layout.scale();
        rule(new Place(stops.get(0) * scale, y), new Place(stops.get(stops.size() - 1) * scale, y));
        stops.forEach(x -> tick(new Place(x * scale, y), new Place(0, 1)));
    }

    private void level(double from, double to, double y, String length) {
        Caption caption = Caption.of(length, SIZE, Ink.MEMBER);
        sheet.write(caption, new Place((from + to) / 2 * layout.scale(), y - 3 - caption.height() / 2), 0);
    }

    private void beside(double x) {
        List<Double> stops = distinct(layout.truss().joints(), j -> layout.vector(j).y());
        if (stops.size() < 2) {
            return;
        }
        boolean roomy = stops.size() <= MANY && isRoomy(stops);
        if (roomy && isEven(stops) && stops.size() > 2) {
            upright(stops, List.of(even(stops)), x, 90);
        } else if (roomy && stops.size() <= 4) {
            upright(stops, lengths(stops), x, 0);
            if (stops.size() > 2) {
                double next = sheet.bounds().right() + AWAY;
                upright(ends(stops), lengths(ends(stops)), next, 0);
            }
        } else {
            upright(ends(stops), lengths(ends(stops)), x, 0);
        }
    }

    private List<String> lengths(List<Double> stops) {
        List<String> lengths = new ArrayList<>();
        for (int i = 1; i < stops.size(); i++) {
            lengths.add(text.length(stops.get(i) - stops.get(i - 1)));
        }
        return lengths;
    }

    /** An upright dimension line; a single text stands for the whole of it. */
    private void upright(List<Double> stops, List<String> texts, double x, double degrees) {
        double scale = layout.scale();
        rule(new Place(x, -stops.get(0) * scale), new Place(x, -stops.get(stops.size() - 1) * scale));
        stops.forEach(y -> tick(new Place(x, -y * scale), new Place(1, 0)));
        List<Double> bounds = texts.size() == 1 ? ends(stops) : stops;
        for (int i = 0; i < texts.size(); i++) {
            Caption caption = Caption.of(texts.get(i), SIZE, Ink.MEMBER);
            double reach = degrees == 0 ? caption.width() / 2 : caption.height() / 2 + 2;
            double y = -(bounds.get(i) + bounds.get(i + 1)) / 2 * scale;
            sheet.write(caption, new Place(x + 6 + reach, y), degrees);
        }
    }

    private boolean isRoomy(List<Double> stops) {
        for (int i = 1; i < stops.size(); i++) {
            if ((stops.get(i) - stops.get(i - 1)) * layout.scale() < SIZE + 4) {
                return false;
            }
        }
        return true;
    }

    private void rule(Place from, Place to) {
        sheet.add(Layer.GUIDES, new Element.Line(from.point(), to.point(), Ink.line(Ink.MEMBER, 0.9)),
                Patch.line(from, to, 1));
    }

    /** A short stroke across the line, and a slanting one through it, as drafting has it. */
    private void tick(Place at, Place across) {
        Place half = across.times(5);
        Place slant = new Place(3, -3);
        sheet.add(Layer.GUIDES, new Element.Line(at.minus(half).point(), at.plus(half).point(),
                Ink.line(Ink.MEMBER, 0.9)), Patch.line(at.minus(half), at.plus(half), 1));
        sheet.add(Layer.GUIDES, new Element.Line(at.minus(slant).point(), at.plus(slant).point(),
                Ink.line(Ink.MEMBER, 1.6)));
    }
}
