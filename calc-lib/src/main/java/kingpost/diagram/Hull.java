package kingpost.diagram;

import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.List;

/** The convex line round a set of places, as a string pulled tight about them. */
final class Hull {

    private final List<Place> corners;

    private Hull(List<Place> corners) {
        this.corners = corners;
    }

    /** Andrew's monotone chain. Source: de Berg and others, Computational Geometry, 3rd edition, section 1.1. */
    static Hull of(Collection<Place> places) {
        List<Place> sorted = places.stream().distinct()
                .sorted(Comparator.comparingDouble(Place::x).thenComparingDouble(Place::y)).toList();
        List<Place> corners = chain(sorted);
        List<Place> back = new ArrayList<>(sorted);
        java.util.Collections.reverse(back);
        corners.addAll(chain(back));
        return new Hull(corners);
    }

    private static List<Place> chain(List<Place> places) {
        List<Place> chain = new ArrayList<>();
        for (Place place : places) {
            while (chain.size() > 1 && turn(chain.get(chain.size() - 2), chain.get(chain.size() - 1), place) <= 0) {
                chain.remove(chain.size() - 1);
            }
            chain.add(place);
        }
        if (!chain.isEmpty()) {
            chain.remove(chain.size() - 1);
        }
        return chain;
    }

    private static double turn(Place a, Place b, Place c) {
        return b.minus(a).cross(c.minus(a));
    }

    /** Whether {@code place} lies inside, its edge not counted. */
    boolean holds(Place place) {
        if (corners.size() < 3) {
            return false;
        }
        for (int i = 0; i < corners.size(); i++) {
            if (turn(corners.get(i), corners.get((i + 1) % corners.size()), place) <= 1e-9) {
                return false;
            }
        }
        return true;
    }
}
