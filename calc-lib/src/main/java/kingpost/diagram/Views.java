package kingpost.diagram;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import kingpost.svg.Box;
import kingpost.svg.Element;
import kingpost.svg.Moved;
import kingpost.svg.Svg;
import kingpost.truss.Member;
import kingpost.truss.TrussModel;

/** Several views of one thing in one picture, in rows from left to right, each with its caption under it. */
final class Views {

    /** A member of which nothing is told. */
    static final MemberStyle PLAIN = MemberStyle.UNKNOWN;

    private static final double GAP = 26;
    private static final double MARGIN = 14;
    private static final double CAPTION = 24;
    private static final double ROOM = Fitting.WIDEST - 2 * MARGIN;
    private static final List<Lettering> SMALL = List.of(new Lettering(12, true, true, 150, 150),
            new Lettering(11, true, true, 180, 200));

    private final List<Element> elements = new ArrayList<>();
    private double left;
    private double top;
    private double bottom;
    private double widest;

    /**
     * The pictorial view of a space truss, and beside it, as far as there is room, and under it front, side and plan
     * with names and lengths.
     */
    static Views of(TrussModel truss, Sheet pictorial, Function<Member, MemberStyle> style) {
        Views views = new Views();
        views.add(pictorial, "");
        double column = views.left;
        double free = 0;
        List<Panel> under = new ArrayList<>();
        for (View view : List.of(View.FRONT, View.SIDE, View.PLAN)) {
            Panel panel = new Panel(projection(truss, view, style), view.caption());
            boolean beside = column + panel.width() <= ROOM && free + panel.height() <= pictorial.bounds().height() + GAP;
            if (beside) {
                views.put(panel, column, free);
                free += panel.height() + GAP;
            } else {
                under.add(panel);
            }
        }
        views.newRow();
        under.forEach(views::flow);
        return views;
    }

    /** A sheet and what stands under it. */
    private record Panel(Sheet sheet, String caption) {
        private double width() {
            return Math.max(sheet.bounds().width(), caption.isEmpty() ? 0 : Caption.of(caption, 12, Ink.MEMBER).width());
        }

        private double height() {
            return sheet.bounds().height() + (caption.isEmpty() ? 0 : CAPTION);
        }
    }

    private static Sheet projection(TrussModel truss, View view, Function<Member, MemberStyle> style) {
        Sheet best = null;
        for (Lettering lettering : SMALL) {
            Sheet sheet = new Sheet();
            draw(new TrussSketch(sheet, TrussLayout.filling(truss, view, lettering.width(), lettering.height()),
                    lettering), style);
            best = best == null || sheet.homeless().size() < best.homeless().size() ? sheet : best;
        }
        return best;
    }

    private static void draw(TrussSketch sketch, Function<Member, MemberStyle> style) {
        for (Member member : sketch.truss().members()) {
            MemberStyle told = style.apply(member);
            if (told == PLAIN) {
                sketch.sheet().line(Layer.MEMBERS, sketch.layout().from(member), sketch.layout().to(member), Ink.MEMBER, 2);
            } else {
                sketch.member(member, told);
            }
        }
        sketch.joints();
        sketch.names();
        sketch.sheet().settle();
        dimensions(sketch);
        new AxesMark(sketch.sheet()).draw(sketch.layout().view());
    }

    /** Lengths beside a truss; a pictorial view has none, because it draws them foreshortened. */
    static void dimensions(TrussSketch sketch) {
        if (sketch.layout().view() != View.PICTORIAL) {
            new Dimensions(sketch.sheet(), sketch.layout()).draw();
        }
    }

    /** Adds a sheet to the right of what is in the row. */
    Views add(Sheet sheet, String caption) {
        Panel panel = new Panel(sheet, caption);
        put(panel, left, top);
        left += panel.width() + GAP;
        return this;
    }

    private void flow(Panel panel) {
        if (left > 0 && left + panel.width() > ROOM) {
            newRow();
        }
        add(panel.sheet(), panel.caption());
    }

    private void put(Panel panel, double x, double y) {
        Box box = panel.sheet().bounds();
        Moved moved = new Moved(x - box.left(), y - box.top());
        panel.sheet().elements().forEach(element -> elements.add(element.accept(moved)));
        if (!panel.caption().isEmpty()) {
            elements.add(Caption.of(panel.caption(), 12, Ink.MEMBER).from(new Place(x, y + box.height() + CAPTION * 0.6)));
        }
        widest = Math.max(widest, x + panel.width());
        bottom = Math.max(bottom, y + panel.height());
    }

    Views newRow() {
        left = 0;
        top = bottom + GAP;
        return this;
    }

    Svg toSvg(String title, String description) {
        return Svg.onPaper(new Box(0, 0, widest, bottom).grown(MARGIN), title, description, elements);
    }
}
