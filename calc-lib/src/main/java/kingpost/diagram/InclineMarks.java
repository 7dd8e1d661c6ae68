package kingpost.diagram;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import kingpost.svg.Element;
import kingpost.svg.Point;
import kingpost.units.EngineeringFormat;

/** Beside inclined arrows: a slope triangle where its sides are whole numbers, else the angle from the first axis. */
final class InclineMarks {

    private static final EngineeringFormat DEGREES = EngineeringFormat.standard().keepingUnits().withFigures(4);
    private static final double SIZE = 11;
    private static final double STRAIGHT = 1e-7;

    private final Sheet sheet;
    private final double axis;
    private final List<Ray> rays = new ArrayList<>();

    /** @param axis degrees from the right to the first axis */
    InclineMarks(Sheet sheet, double axis) {
        this.sheet = sheet;
        this.axis = axis;
    }

    /** Remembers an arrow; marks are drawn when all are known. */
    void add(BodyForce force, Place near, Place far) {
        rays.add(new Ray(force, near, far));
    }

    /** Triangles on arrows that have one, arcs for the rest, the narrowest angle outermost. */
    void draw() {
        List<Ray> angled = new ArrayList<>();
        for (Ray ray : rays) {
            if (isInclined(ray)) {
                Optional<Incline> incline = axis == 0 ? Incline.of(ray.force.slope()) : Optional.empty();
                incline.ifPresentOrElse(i -> triangle(ray, i), () -> angled.add(ray));
            }
        }
        angled.sort(Comparator.comparingDouble(ray -> Math.abs(turn(ray))));
        for (int i = 0; i < angled.size(); i++) {
            arc(angled.get(i), angled.subList(0, i));
        }
    }

    private boolean isInclined(Ray ray) {
        double turn = Math.abs(turn(ray));
        return turn > STRAIGHT && turn < 90 - STRAIGHT;
    }

    /** Degrees from the nearer end of the first axis to the arrow's side, counter-clockwise; -90 to 90. */
    private double turn(Ray ray) {
        return Math.IEEEremainder(ray.side().degrees() - reference(ray), 360);
    }

    private double reference(Ray ray) {
        return ray.side().dot(Place.towards(axis)) >= -STRAIGHT ? axis : axis + 180;
    }

    /** A right triangle on the shaft, where one of four places is free, its sides numbered. */
    private void triangle(Ray ray, Incline incline) {
        Place way = ray.side();
        double length = 26 / Math.max(0.55, Math.min(Math.abs(way.x()), Math.abs(way.y())) * 1.6);
        Triangle best = null;
        double least = Double.MAX_VALUE;
        for (double part : new double[] {0.62, 0.5, 0.74}) {
            Place middle = ray.near.along(ray.far, part);
            Place from = middle.minus(way.times(length / 2));
            Place to = middle.plus(way.times(length / 2));
            for (Place corner : List.of(new Place(to.x(), from.y()), new Place(from.x(), to.y()))) {
                Triangle triangle = new Triangle(from, to, corner);
                double cost = cost(triangle) + Math.abs(part - 0.62);
                if (cost < least) {
                    least = cost;
                    best = triangle;
                }
            }
        }
        best.draw(sheet, incline);
    }

    private double cost(Triangle triangle) {
        Place middle = triangle.from.middle(triangle.to);
        Place off = triangle.corner.minus(middle).unit().times(3);
        Patch room = Patch.of(triangle.from.plus(off), triangle.to.plus(off),
                triangle.corner.plus(off.times(3)));
        return sheet.covered().stream().filter(room::overlaps).count();
    }

    private void arc(Ray ray, List<Ray> narrower) {
        double reference = reference(ray);
        double turn = turn(ray);
        long beside = narrower.stream().filter(r -> reference(r) == reference && turn(r) * turn > 0).count();
        double radius = Math.max(20, 46 - 13 * beside);
        referenceLine(Place.towards(reference), radius + 9);
        List<Point> points = new ArrayList<>();
        List<Patch> patches = new ArrayList<>();
        Place before = null;
        for (int i = 0; i <= 12; i++) {
            Place here = Place.towards(reference + turn * i / 12).times(radius);
            points.add(here.point());
            if (before != null) {
                patches.add(Patch.line(before, here, 1));
            }
            before = here;
        }
        sheet.add(Layer.GUIDES, new Element.Polyline(points, Ink.line(Ink.MEMBER, 1)), patches.toArray(Patch[]::new));
        Caption caption = Caption.of(DEGREES.number(Math.abs(turn)) + "\u00b0", SIZE, Ink.MEMBER);
        List<Spot> spots = inWedge(reference, turn, radius, caption);
        spots.addAll(besideShaft(ray, radius, caption));
        sheet.label(new Label(caption, spots, "angle", 0));
    }

    /** A short line along the axis, unless an arrow lies there already. */
    private void referenceLine(Place way, double length) {
        boolean drawn = rays.stream().anyMatch(r -> r.near.norm() < 12 && r.side().degreesTo(way) < 1);
        if (!drawn) {
            sheet.add(Layer.GUIDES, new Element.Line(way.times(7).point(), way.times(length).point(),
                    Ink.line(Ink.FAINT, 1).dashed(4, 3)), Patch.line(way.times(7), way.times(length), 1));
        }
    }

    private static List<Spot> inWedge(double reference, double turn, double radius, Caption caption) {
        List<Spot> spots = new ArrayList<>();
        for (double part : new double[] {0.5, 0.35, 0.65, 0.2, 0.8}) {
            Place way = Place.towards(reference + turn * part);
            for (double gap : new double[] {3, 6, 10, 15, 22}) {
                spots.add(new Spot(Spots.beside(way.times(radius), way, gap, caption), 0, way.times(radius + 2),
                        gap / 15 + Math.abs(part - 0.5)));
            }
        }
        return spots;
    }

    /** Where the arc leaves no room: beside the arrow whose angle it is. */
    private static List<Spot> besideShaft(Ray ray, double radius, Caption caption) {
        Place side = ray.side();
        List<Spot> spots = new ArrayList<>();
        for (double away = radius + 6; away < ray.far.norm() - 4; away += 6) {
            for (Place off : List.of(side.left(), side.left().times(-1))) {
                Place foot = side.times(away);
                spots.add(new Spot(Spots.beside(foot, off, 6, caption), 0, foot.plus(off.times(5)), 2 + away / 50));
            }
        }
        return spots;
    }

    /** An arrow in its place; {@code side} is the way from the joint along it. */
    private record Ray(BodyForce force, Place near, Place far) {
        Place side() {
            return far.minus(near).unit();
        }
    }

    private record Triangle(Place from, Place to, Place corner) {

        void draw(Sheet sheet, Incline incline) {
            sheet.line(Layer.GUIDES, from, corner, Ink.MEMBER, 0.9);
            sheet.line(Layer.GUIDES, corner, to, Ink.MEMBER, 0.9);
            Place level = corner.y() == from.y() ? from : to;
            Place upright = level == from ? to : from;
            number(sheet, incline.run(), level.middle(corner), new Place(0, Math.signum(corner.y() - upright.y())));
            number(sheet, incline.rise(), upright.middle(corner), new Place(Math.signum(corner.x() - level.x()), 0));
        }

        private static void number(Sheet sheet, long number, Place at, Place outward) {
            Caption caption = Caption.of(Long.toString(number), SIZE, Ink.MEMBER);
            List<Spot> spots = new ArrayList<>();
            for (double gap : new double[] {2.2, 4, 7}) {
                spots.add(new Spot(Spots.beside(at, outward, gap, caption), 0, at.plus(outward), gap / 15));
            }
            sheet.label(new Label(caption, spots, "slope", 0));
        }
    }
}
