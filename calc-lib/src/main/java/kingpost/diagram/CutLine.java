package kingpost.diagram;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import kingpost.svg.Element;
import kingpost.svg.Point;
import kingpost.truss.Member;

/** Where a section crosses the members: along a straight line if one parts the joints well, else from one to the next. */
final class CutLine {

    private static final double STEP = 5;
    private static final double SHORTEST = 16;
    private static final double PART = 0.42;
    private static final double BEYOND = 24;

    private final CutBody body;
    private final TrussLayout layout;
    private final Map<Member, Place> crossings;

    CutLine(CutBody body, TrussLayout layout) {
        this.body = body;
        this.layout = layout;
        this.crossings = crossings();
    }

    /** The place at which a member is cut. */
    Place of(Member member) {
        return crossings.get(member);
    }

    private Map<Member, Place> crossings() {
        Map<Member, Place> straight = straight();
        if (!straight.isEmpty()) {
            return straight;
        }
        Map<Member, Place> each = new LinkedHashMap<>();
        for (Member member : body.cut()) {
            each.put(member, near(member).along(far(member), PART));
        }
        return each;
    }

    /** Crossings of the straight line with the widest gap between the joints kept and the others; empty if none is fit. */
    private Map<Member, Place> straight() {
        Map<Member, Place> best = Map.of();
        double widest = 0;
        for (double degrees = 0; degrees < 360; degrees += STEP) {
            Place way = Place.towards(degrees);
            double last = Double.NEGATIVE_INFINITY;
            double first = Double.POSITIVE_INFINITY;
            for (kingpost.truss.Joint joint : body.model().joints()) {
                double along = layout.of(joint.name()).dot(way);
                last = body.isKept(joint.name()) ? Math.max(last, along) : last;
                first = body.isKept(joint.name()) ? first : Math.min(first, along);
            }
            double gap = first - last;
            Map<Member, Place> crossings = gap > widest + 1e-6 ? across(way, last + PART * gap) : Map.of();
            if (!crossings.isEmpty()) {
                widest = gap;
                best = crossings;
            }
        }
        return best;
    }

    private Map<Member, Place> across(Place way, double at) {
        Map<Member, Place> crossings = new LinkedHashMap<>();
        for (Member member : body.cut()) {
            double from = near(member).dot(way);
            Place crossing = near(member).along(far(member), (at - from) / (far(member).dot(way) - from));
            if (crossing.distance(near(member)) < SHORTEST) {
                return Map.of();
            }
            crossings.put(member, crossing);
        }
        return crossings;
    }

    private Place near(Member member) {
        return layout.of(body.keptEnd(member));
    }

    private Place far(Member member) {
        return layout.of(member.otherEnd(body.keptEnd(member)));
    }

    /** Draws the line a little beyond the outermost members. */
    void draw(Sheet sheet) {
        List<Place> places = new ArrayList<>(crossings.values());
        if (places.isEmpty()) {
            return;
        }
        Place way = direction(places);
        places.sort(Comparator.comparingDouble(p -> p.dot(way)));
        Place first = places.get(0);
        Place last = places.get(places.size() - 1);
        Place before = places.size() > 1 ? first.minus(places.get(1)).unit() : way.times(-1);
        Place after = places.size() > 1 ? last.minus(places.get(places.size() - 2)).unit() : way;
        places.add(0, first.plus(before.times(BEYOND)));
        places.add(last.plus(after.times(BEYOND)));
        List<Point> points = places.stream().map(Place::point).toList();
        List<Patch> patches = new ArrayList<>();
        for (int i = 1; i < places.size(); i++) {
            patches.add(Patch.line(places.get(i - 1), places.get(i), 2));
        }
        sheet.add(Layer.SUPPORTS, new Element.Polyline(points, Ink.line(Ink.BLACK, 1.3).dashed(12, 4, 2, 4)),
                patches.toArray(Patch[]::new));
    }

    /** Along which the crossings lie; across the member where there is only one. */
    private Place direction(List<Place> places) {
        Place longest = Place.ORIGIN;
        for (Place a : places) {
            for (Place b : places) {
                longest = b.minus(a).norm() > longest.norm() + 1e-6 ? b.minus(a) : longest;
            }
        }
        if (longest.norm() > 1) {
            return longest.unit();
        }
        Member only = body.cut().get(0);
        return far(only).minus(near(only)).unit().left();
    }
}
