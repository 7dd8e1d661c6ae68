package kingpost.diagram;

import java.util.ArrayList;
import java.util.List;
import java.util.TreeSet;
import kingpost.statics.BodyEquation;
import kingpost.statics.BodyEquation.Kind.Moment;
import kingpost.statics.Vector;
import kingpost.svg.Element;
import kingpost.svg.Style;

/**
 * The lever arms of moment equations, outside everything drawn before: for each point a line below the body with the
 * level distances from it, and one beside the body with the upright ones, each told from the point, which is the
 * small circle.
 */
final class ArmLines {

    private static final double SIZE = 11;
    private static final double ROOM = 4;
    private static final double NONE = 1e-9;

    private final Sheet sheet;
    private final TrussLayout layout;
    private final CutBody body;
    private final ForceText text;

    ArmLines(Sheet sheet, TrussLayout layout, CutBody body) {
        this.sheet = sheet;
        this.layout = layout;
        this.body = body;
        this.text = new ForceText(layout.truss());
    }

    void draw() {
        List<Arms> all = body.momentEquations().stream().map(this::arms)
                .filter(a -> !SectionFigure.isFarOut(layout, layout.place(a.point))).toList();
        all.stream().filter(a -> !a.level.isEmpty()).forEach(this::below);
        all.stream().filter(a -> !a.upright.isEmpty()).forEach(this::beside);
    }

    /** Places of forces across and up, in the numbers of the truss's length unit, as far as they have an arm. */
    private record Arms(String name, Vector point, TreeSet<Double> level, TreeSet<Double> upright) {
    }

    private Arms arms(BodyEquation equation) {
        Moment moment = (Moment) equation.kind();
        Arms arms = new Arms(moment.joint().isEmpty() ? "O" : moment.joint(), moment.point(), new TreeSet<>(),
                new TreeSet<>());
        for (BodyEquation.Term term : equation.terms()) {
            Vector along = body.force(term.source()).force().along().unit();
            Vector at = layout.vector(layout.truss().joint(term.at()).orElseThrow());
            if (Math.abs(along.y()) > NONE && Math.abs(at.x() - moment.point().x()) > NONE) {
                add(arms.level, at.x());
            }
            if (Math.abs(along.x()) > NONE && Math.abs(at.y() - moment.point().y()) > NONE) {
                add(arms.upright, at.y());
            }
        }
        return arms;
    }

    private void add(TreeSet<Double> stops, double value) {
        double slack = 2 / layout.scale();
        if (stops.subSet(value - slack, value + slack).isEmpty()) {
            stops.add(value);
        }
    }

    private void below(Arms arms) {
        double scale = layout.scale();
        double origin = arms.point.x() * scale;
        List<Caption> captions = captions(arms.level, arms.point.x());
        int rows = rows(arms.level, captions, origin);
        double y = sheet.bounds().bottom() + 18 + 13 * rows;
        double left = Math.min(origin, arms.level.first() * scale);
        double right = Math.max(origin, arms.level.last() * scale);
        rule(new Place(left, y), new Place(right, y));
        circle(new Place(origin, y));
        List<Double> free = new ArrayList<>();
        int i = 0;
        for (double x : arms.level) {
            Caption caption = captions.get(i++);
            double start = x * scale - caption.width() / 2 - ROOM / 2;
            int row = row(free, start, start + caption.width() + ROOM);
            tick(new Place(x * scale, y), new Place(0, 1));
            sheet.write(caption, new Place(x * scale, y - 6 - caption.height() / 2 - 13 * row), 0);
        }
        Caption about = about(arms);
        sheet.write(about, new Place(left - 12 - about.width() / 2, y), 0);
    }

    private int rows(TreeSet<Double> stops, List<Caption> captions, double origin) {
        List<Double> free = new ArrayList<>();
        int i = 0;
        for (double x : stops) {
            double half = captions.get(i++).width() / 2 + ROOM / 2;
            row(free, x * layout.scale() - half, x * layout.scale() + half);
        }
        return Math.max(1, free.size());
    }

    /** The first row in which there is room from {@code start} on; taken up to {@code end}. */
    private static int row(List<Double> free, double start, double end) {
        for (int row = 0; row < free.size(); row++) {
            if (free.get(row) <= start) {
                free.set(row, end);
                return row;
            }
        }
        free.add(end);
        return free.size() - 1;
    }

    private void beside(Arms arms) {
        double scale = layout.scale();
        List<Caption> captions = captions(arms.upright, arms.point.y());
        Caption about = about(arms);
        double x = sheet.bounds().right() + 18;
        double top = -Math.max(arms.point.y(), arms.upright.last()) * scale;
        double bottom = -Math.min(arms.point.y(), arms.upright.first()) * scale;
        rule(new Place(x, top), new Place(x, bottom));
        circle(new Place(x, -arms.point.y() * scale));
        double reach = about.width() / 2;
        double last = Double.MAX_VALUE;
        double shift = 0;
        int i = 0;
        for (double y : arms.upright) {
            Caption caption = captions.get(i++);
            shift = last + y * scale < SIZE + 3 ? shift + caption.width() + ROOM : 0;
            last = -y * scale;
            tick(new Place(x, -y * scale), new Place(1, 0));
            sheet.write(caption, new Place(x + 9 + shift + caption.width() / 2, -y * scale), 0);
            reach = Math.max(reach, 9 + shift + caption.width());
        }
        sheet.write(about, new Place(x + about.width() / 2 - 4, top - 16), 0);
    }

    private List<Caption> captions(TreeSet<Double> stops, double from) {
        return stops.stream().map(s -> Caption.of(text.length(Math.abs(s - from)), SIZE, Ink.MEMBER)).toList();
    }

    private static Caption about(Arms arms) {
        return Caption.of("about " + TrussSketch.shortened(arms.name), SIZE, Ink.MEMBER).inBold();
    }

    private void rule(Place from, Place to) {
        sheet.add(Layer.GUIDES, new Element.Line(from.point(), to.point(), Ink.line(Ink.MEMBER, 0.9)),
                Patch.line(from, to, 1));
    }

    private void circle(Place at) {
        sheet.add(Layer.JOINTS, new Element.Circle(at.point(), 3, Style.stroke(Ink.MEMBER, 1.2).filled(Ink.PAPER)),
                Patch.disc(at, 3.5));
    }

    private void tick(Place at, Place across) {
        Place half = across.times(4);
        sheet.add(Layer.GUIDES, new Element.Line(at.minus(half).point(), at.plus(half).point(),
                Ink.line(Ink.MEMBER, 1.2)), Patch.line(at.minus(half), at.plus(half), 1));
    }
}
