package kingpost.diagram;

import java.util.List;
import kingpost.svg.Element;
import kingpost.svg.Style;
import kingpost.truss.Direction;
import kingpost.truss.Support;

/** Draws what holds a joint: a pin, a ball, a roller on its ground, a link; not one that points at the reader. */
final class SupportSymbol {

    private static final double GROUND = 15;
    private static final double CLEAR = 40;
    private static final List<Place> DOWN_FIRST =
            List.of(Place.towards(-90), Place.towards(180), Place.towards(0), Place.towards(90));

    private final Sheet sheet;
    private final TrussLayout layout;

    SupportSymbol(Sheet sheet, TrussLayout layout) {
        this.sheet = sheet;
        this.layout = layout;
    }

    void draw(Support support) {
        switch (support.kind()) {
            case PIN -> pin(support.joint());
            case BALL -> ball(support.joint());
            case ROLLER -> roller(support);
            case LINK -> support.reactions().forEach(d -> link(support.joint(), d));
        }
    }

    /** The ground lies where no member is in the way, below if it can. */
    private void pin(String joint) {
        Place ground = DOWN_FIRST.stream().filter(way -> clearance(joint, way) >= CLEAR).findFirst()
                .orElse(DOWN_FIRST.get(0));
        Frame frame = new Frame(layout.of(joint), ground);
        triangle(frame, GROUND, 10);
        ground(frame, GROUND, 15);
    }

    /** A ball in its socket. */
    private void ball(String joint) {
        Place ground = DOWN_FIRST.stream().filter(way -> clearance(joint, way) >= CLEAR).findFirst()
                .orElse(DOWN_FIRST.get(0));
        Frame frame = new Frame(layout.of(joint), ground);
        sheet.add(Layer.SUPPORTS, new Element.Circle(frame.at(7, 0).point(), 6,
                Ink.line(Ink.BLACK, 1.3).filled(Ink.PAPER)), Patch.disc(frame.at(7, 0), 7));
        ground(frame, 13, 13);
    }

    /** The ground lies behind the reaction, or before it where only that side is free. */
    private void roller(Support support) {
        Place normal = layout.wayOf(support.reactions().get(0));
        if (normal.norm() == 0) {
            return;
        }
        Place ground = normal.times(-1);
        if (clearance(support.joint(), ground) < CLEAR && clearance(support.joint(), normal) >= CLEAR) {
            ground = normal;
        }
        Frame frame = new Frame(layout.of(support.joint()), ground);
        triangle(frame, 11, 9);
        for (double side : new double[] {-4.5, 4.5}) {
            sheet.add(Layer.SUPPORTS, new Element.Circle(frame.at(14, side).point(), 2.6,
                    Style.stroke(Ink.BLACK, 1.3).filled(Ink.PAPER)));
        }
        ground(frame, 17.3, 15);
    }

    private void link(String joint, Direction axis) {
        Place way = layout.wayOf(axis);
        if (way.norm() == 0) {
            return;
        }
        Place ground = clearance(joint, way.times(-1)) >= clearance(joint, way) ? way.times(-1) : way;
        Frame frame = new Frame(layout.of(joint), ground);
        sheet.line(Layer.SUPPORTS, frame.at(0, 0), frame.at(24, 0), Ink.BLACK, 3);
        sheet.add(Layer.JOINTS, new Element.Circle(frame.at(24, 0).point(), 3,
                Style.stroke(Ink.BLACK, 1.3).filled(Ink.PAPER)));
        ground(frame, 28, 9);
    }

    private double clearance(String joint, Place way) {
        return layout.waysFrom(joint).stream().mapToDouble(way::degreesTo).min().orElse(180);
    }

    private void triangle(Frame frame, double height, double half) {
        sheet.add(Layer.SUPPORTS,
                new Element.Polygon(List.of(frame.at(0, 0).point(), frame.at(height, half).point(),
                        frame.at(height, -half).point()), Ink.line(Ink.BLACK, 1.3).filled(Ink.PAPER)),
                Patch.of(frame.at(0, 2), frame.at(height, half), frame.at(height, -half), frame.at(0, -2)));
    }

    private void ground(Frame frame, double depth, double half) {
        sheet.add(Layer.SUPPORTS, new Element.Line(frame.at(depth, -half).point(), frame.at(depth, half).point(),
                Ink.line(Ink.BLACK, 1.5)),
                Patch.of(frame.at(depth, half), frame.at(depth + 6, half), frame.at(depth + 6, -half),
                        frame.at(depth, -half)));
        for (double side = -half + 5; side <= half; side += 5) {
            sheet.add(Layer.SUPPORTS, new Element.Line(frame.at(depth, side).point(),
                    frame.at(depth + 5, side - 5).point(), Ink.line(Ink.BLACK, 0.9)));
        }
    }

    /** Places about a joint: so far towards the ground, so far to the side. */
    private record Frame(Place joint, Place ground) {
        Place at(double depth, double side) {
            return joint.plus(ground.times(depth)).plus(ground.left().times(side));
        }
    }
}
