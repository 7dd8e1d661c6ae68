package kingpost.diagram;

import java.util.ArrayList;
import java.util.List;
import kingpost.statics.Step;
import kingpost.svg.Box;
import kingpost.svg.Element;
import kingpost.units.EngineeringFormat;

/** The axes of the equations, small, in a corner that is free. */
final class AxesMark {

    private static final double LENGTH = 28;
    private static final double SIZE = 12;
    private static final double ROOM = 62;
    private static final double TURNED_ROOM = 92;

    private final Sheet sheet;

    AxesMark(Sheet sheet) {
        this.sheet = sheet;
    }

    /** Drawn after everything else on the sheet has its place. */
    void draw(Step.Axes axes) {
        if (axes instanceof Step.Axes.Turned turned) {
            turned(corner(TURNED_ROOM), turned.degrees());
        } else {
            Place origin = corner(ROOM).plus(new Place(-ROOM / 2 + 14, ROOM / 2 - 14));
            axis(origin, Place.towards(0), "x");
            axis(origin, Place.towards(90), "y");
        }
        sheet.settle();
    }

    /** The axes that a view of a space truss shows. */
    void draw(View view) {
        Place origin = corner(ROOM).plus(view == View.PICTORIAL ? new Place(2, 6)
                : new Place(-ROOM / 2 + 14, view == View.PLAN ? -ROOM / 2 + 14 : ROOM / 2 - 14));
        view.axes().forEach(axis -> axis(origin, view.foreshortened(axis.direction()), axis.name()));
        sheet.settle();
    }

    private void turned(Place origin, double degrees) {
        axis(origin, Place.towards(degrees), "x\u2032");
        axis(origin, Place.towards(degrees + 90), "y\u2032");
        double start = Math.abs(degrees) <= 90 ? 0 : 180;
        double turn = Math.IEEEremainder(degrees - start, 360);
        Place level = Place.towards(start);
        sheet.add(Layer.GUIDES, new Element.Line(origin.point(), origin.plus(level.times(LENGTH + 6)).point(),
                Ink.line(Ink.FAINT, 1).dashed(4, 3)), Patch.line(origin, origin.plus(level.times(LENGTH + 6)), 1));
        String text = EngineeringFormat.standard().keepingUnits().withFigures(4).number(Math.abs(turn)) + "\u00b0";
        Caption caption = Caption.of(text, 11, Ink.MEMBER);
        List<Spot> spots = new ArrayList<>();
        for (double gap : new double[] {3, 6, 10}) {
            for (double way : new double[] {turn > 0 ? -90 : 90, turn > 0 ? 90 : -90}) {
                Place foot = origin.plus(level.times(LENGTH * 0.6));
                Place off = Place.towards(way);
                spots.add(new Spot(Spots.beside(foot, off, gap, caption), 0, foot.plus(off.times(2)), gap));
            }
            Place end = origin.plus(level.times(LENGTH + 7));
            spots.add(new Spot(Spots.beside(end, level, gap, caption), 0, end.plus(level.times(2)), gap + 1));
        }
        sheet.label(new Label(caption, spots, "turn of the axes", 0));
    }

    private void axis(Place origin, Place way, String name) {
        Place tip = origin.plus(way.times(LENGTH));
        sheet.arrow(origin, tip, Ink.MEMBER, 1.1);
        Caption caption = Caption.of(name, SIZE, Ink.MEMBER);
        sheet.label(new Label(caption, Spots.atArrow(origin, tip, caption), name, 0));
    }

    /** The middle of a free square in a corner of the sheet, or beside the sheet where no corner is free. */
    private Place corner(double room) {
        Box box = sheet.bounds();
        double half = room / 2;
        List<Place> corners = List.of(new Place(box.left() + half, box.bottom() - half),
                new Place(box.right() - half, box.bottom() - half), new Place(box.left() + half, box.top() + half),
                new Place(box.right() - half, box.top() + half));
        return corners.stream().filter(c -> isFree(c, room)).findFirst()
                .orElse(new Place(box.left() - half - 6, box.bottom() - half));
    }

    private boolean isFree(Place centre, double room) {
        Patch square = Patch.box(centre, room + 6, room + 6, 0);
        return sheet.covered().stream().noneMatch(square::overlaps);
    }
}
