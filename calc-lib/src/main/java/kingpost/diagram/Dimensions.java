package kingpost.diagram;

import java.util.ArrayList;
import java.util.List;
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
        List<Double> ends = List.of(stops.get(0), stops.get(stops.size() - 1));
        if (isEven(stops) && stops.size() > 4) {
            chain(stops, y, "");
            double panel = (ends.get(1) - ends.get(0)) / (stops.size() - 1);
            level(ends.get(0), ends.get(1), y, (stops.size() - 1) + " \u00d7 " + text.length(panel) + " = "
                    + text.length(ends.get(1) - ends.get(0)));
        } else if (stops.size() <= MANY && fits(stops)) {
            chain(stops, y, null);
            if (stops.size() > 2) {
                chain(ends, y + NEXT, null);
            }
        } else {
            chain(ends, y, null);
        }
    }

    /** Where the joints of the lowest line are, when they span the truss; else where all joints are. */
    private List<Double> panels() {
        TrussModel truss = layout.truss();
        List<Double> all = distinct(truss.joints(), j -> layout.vector(j).x());
        double tolerance = 1e-6 * (all.get(all.size() - 1) - all.get(0)) + 1e-12;
        double floor = truss.joints().stream().mapToDouble(j -> layout.vector(j).y()).min().orElse(0);
        List<Joint> low = truss.joints().stream().filter(j -> layout.vector(j).y() <= floor + tolerance).toList();
        List<Double> lowest = distinct(low, j -> layout.vector(j).x());
        boolean spans = lowest.size() > 2 && lowest.get(0) <= all.get(0) + tolerance
                && lowest.get(lowest.size() - 1) >= all.get(all.size() - 1) - tolerance;
        return spans && all.stream().allMatch(x -> isSeen(x, lowest, tolerance)) ? lowest : all;
    }

    /** A stop on the lowest line, or half way between two. */
    private static boolean isSeen(double x, List<Double> stops, double tolerance) {
        for (int i = 0; i < stops.size(); i++) {
            boolean half = i > 0 && Math.abs((stops.get(i) + stops.get(i - 1)) / 2 - x) <= tolerance;
            if (half || Math.abs(stops.get(i) - x) <= tolerance) {
                return true;
            }
        }
        return false;
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

    private boolean fits(List<Double> stops) {
        for (int i = 1; i < stops.size(); i++) {
            double length = stops.get(i) - stops.get(i - 1);
            if (Caption.of(text.length(length), SIZE, Ink.MEMBER).width() + 6 > length * layout.scale()) {
                return false;
            }
        }
        return true;
    }

    /** A dimension line with a tick at each stop, and each length over it unless {@code only} says otherwise. */
    private void chain(List<Double> stops, double y, String only) {
        double scale = layout.scale();
        rule(new Place(stops.get(0) * scale, y), new Place(stops.get(stops.size() - 1) * scale, y));
        for (int i = 0; i < stops.size(); i++) {
            tick(new Place(stops.get(i) * scale, y), new Place(0, 1));
            if (i > 0 && only == null) {
                level(stops.get(i - 1), stops.get(i), y, text.length(stops.get(i) - stops.get(i - 1)));
            }
        }
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
        List<Double> shown = stops.size() <= 4 && isRoomy(stops) ? stops
                : List.of(stops.get(0), stops.get(stops.size() - 1));
        double scale = layout.scale();
        rule(new Place(x, -shown.get(0) * scale), new Place(x, -shown.get(shown.size() - 1) * scale));
        for (int i = 0; i < shown.size(); i++) {
            tick(new Place(x, -shown.get(i) * scale), new Place(1, 0));
            if (i > 0) {
                Caption caption = Caption.of(text.length(shown.get(i) - shown.get(i - 1)), SIZE, Ink.MEMBER);
                double y = -(shown.get(i) + shown.get(i - 1)) / 2 * scale;
                sheet.write(caption, new Place(x + 6 + caption.width() / 2, y), 0);
            }
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
