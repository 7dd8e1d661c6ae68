package kingpost.diagram;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/** Spots for a label inside a polygon, best where it is widest. */
final class RoomIn {

    private static final int STEPS = 18;
    private static final int MOST = 40;

    private RoomIn() {
    }

    private record Candidate(Place place, double room) {
    }

    /** At least one spot for a polygon that encloses some area. */
    static List<Spot> polygon(List<Place> corners) {
        return polygon(corners, 0);
    }

    /** Spots no nearer to the outline than {@code least} px; perhaps none. */
    static List<Spot> polygon(List<Place> corners, double least) {
        double left = corners.stream().mapToDouble(Place::x).min().orElseThrow();
        double right = corners.stream().mapToDouble(Place::x).max().orElseThrow();
        double top = corners.stream().mapToDouble(Place::y).min().orElseThrow();
        double bottom = corners.stream().mapToDouble(Place::y).max().orElseThrow();
        List<Candidate> candidates = new ArrayList<>();
        for (int i = 1; i < STEPS; i++) {
            for (int k = 1; k < STEPS; k++) {
                Place place = new Place(left + (right - left) * i / STEPS, top + (bottom - top) * k / STEPS);
                if (holds(corners, place)) {
                    candidates.add(new Candidate(place, room(corners, place)));
                }
            }
        }
        candidates.sort(Comparator.comparingDouble(Candidate::room).reversed());
        double best = candidates.isEmpty() ? 1 : candidates.get(0).room;
        return candidates.stream().filter(c -> c.room >= least).limit(MOST)
                .map(c -> new Spot(c.place, 0, c.place, 2 * (best - c.room) / best)).toList();
    }

    /** Whether a ray to the right meets the outline an odd number of times. */
    private static boolean holds(List<Place> corners, Place place) {
        boolean inside = false;
        for (int i = 0; i < corners.size(); i++) {
            Place a = corners.get(i);
            Place b = corners.get((i + 1) % corners.size());
            if (a.y() > place.y() != b.y() > place.y()
                    && place.x() < a.x() + (b.x() - a.x()) * (place.y() - a.y()) / (b.y() - a.y())) {
                inside = !inside;
            }
        }
        return inside;
    }

    private static double room(List<Place> corners, Place place) {
        double room = Double.MAX_VALUE;
        for (int i = 0; i < corners.size(); i++) {
            Place a = corners.get(i);
            Place way = corners.get((i + 1) % corners.size()).minus(a);
            double part = way.dot(way) == 0 ? 0 : place.minus(a).dot(way) / way.dot(way);
            room = Math.min(room, place.distance(a.plus(way.times(Math.max(0, Math.min(1, part))))));
        }
        return room;
    }
}
