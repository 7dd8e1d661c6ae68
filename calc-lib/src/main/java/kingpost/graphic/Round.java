package kingpost.graphic;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.function.IntPredicate;
import kingpost.statics.Vector;

/** The forces of a joint in clockwise order: its members, and between them the loads and reactions in its corners. */
final class Round {

    /** An arrow nearer to a member than this is better drawn on the other side of its joint. */
    private static final double CLOSE = Math.toRadians(20);

    private final PlaneTruss truss;
    private final Embedding embedding;
    private final int joint;
    private final List<List<Seated>> corners = new ArrayList<>();

    private record Seated(int corner, double after, Side side) {
    }

    /** @param allowed corners in which loads and reactions may lie; at least one */
    Round(PlaneTruss truss, Embedding embedding, int joint, IntPredicate allowed) {
        this.truss = truss;
        this.embedding = embedding;
        this.joint = joint;
        for (int k = 0; k < embedding.out(joint).length; k++) {
            corners.add(new ArrayList<>());
        }
        for (int i = 0; i < truss.causes(joint).size(); i++) {
            Seated seated = seat(truss.causes(joint).get(i), truss.forces(joint).get(i), allowed);
            corners.get(seated.corner).add(seated);
        }
        corners.forEach(corner -> corner.sort(Comparator.comparingDouble(Seated::after)));
    }

    /** Loads and reactions in a corner, clockwise. */
    List<Side> corner(int corner) {
        return corners.get(corner).stream().map(Seated::side).toList();
    }

    /** Every force of the joint, clockwise. */
    List<Side> all() {
        List<Side> all = new ArrayList<>();
        for (int k = 0; k < corners.size(); k++) {
            int half = embedding.out(joint)[k];
            Vector way = embedding.way(half);
            all.add(new Side(new Cause.OfMember(truss.member(half / 2)), way, way.times(truss.force(half / 2))));
            all.addAll(corner(k));
        }
        return all;
    }

    private Seated seat(Cause cause, Vector force, IntPredicate allowed) {
        Vector tip = force.unit();
        Vector tail = tip.times(-1);
        double tailRoom = room(tail, allowed);
        Vector place = tailRoom >= CLOSE || tailRoom >= room(tip, allowed) ? tail : tip;
        for (int k = 0; k < corners.size(); k++) {
            double after = embedding.after(joint, k, place);
            if (allowed.test(k) && after > 0 && after < embedding.width(joint, k)) {
                return new Seated(k, after, new Side(cause, place, force));
            }
        }
        return middle(cause, force, allowed);
    }

    /** Angle between a way and the nearest member, if it lies in a corner that is allowed; else 0. */
    private double room(Vector way, IntPredicate allowed) {
        double room = 0;
        for (int k = 0; k < corners.size(); k++) {
            double after = embedding.after(joint, k, way);
            if (allowed.test(k)) {
                room = Math.max(room, Math.min(after, embedding.width(joint, k) - after));
            }
        }
        return room;
    }

    /** Where both its sides are taken by members: half way across the widest corner. */
    private Seated middle(Cause cause, Vector force, IntPredicate allowed) {
        int widest = -1;
        for (int k = 0; k < corners.size(); k++) {
            if (allowed.test(k) && (widest < 0 || embedding.width(joint, k) > embedding.width(joint, widest))) {
                widest = k;
            }
        }
        Vector start = embedding.way(embedding.out(joint)[widest]);
        double turn = embedding.width(joint, widest) / 2;
        Vector place = new Vector(start.x() * Math.cos(turn) + start.y() * Math.sin(turn),
                start.y() * Math.cos(turn) - start.x() * Math.sin(turn), 0);
        return new Seated(widest, turn, new Side(cause, place, force));
    }
}
