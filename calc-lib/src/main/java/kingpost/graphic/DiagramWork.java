package kingpost.graphic;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import kingpost.graphic.ForceDiagram.Line;
import kingpost.graphic.ForceDiagram.NotDrawn;
import kingpost.graphic.ForceDiagram.Space;
import kingpost.graphic.ForceDiagram.Step;
import kingpost.graphic.ForceDiagram.Why;
import kingpost.statics.Source;
import kingpost.statics.Vector;
import kingpost.truss.Member;

/** Draws the diagram: loads and reactions end to end, then space after space where two parallels meet. */
final class DiagramWork {

    /** Sine of the angle below which two members are parallel. */
    private static final double PARALLEL = 1e-9;

    private final PlaneTruss truss;
    private final Embedding embedding;
    private final Spaces spaces;
    private final Vector[] points;
    private final boolean[] drawn;
    private final List<Step> steps = new ArrayList<>();

    private DiagramWork(PlaneTruss truss, Embedding embedding) {
        this.truss = truss;
        this.embedding = embedding;
        this.spaces = new Spaces(truss, embedding);
        this.points = new Vector[spaces.count()];
        this.drawn = new boolean[truss.members()];
    }

    static ForceDiagram of(PlaneTruss truss) {
        Embedding embedding = new Embedding(truss);
        Optional<Why> why = hindrance(truss, embedding);
        return why.isPresent() ? new NotDrawn(truss.truss(), why.get()) : new DiagramWork(truss, embedding).draw();
    }

    private static Optional<Why> hindrance(PlaneTruss truss, Embedding embedding) {
        Optional<int[]> crossing = embedding.crossing();
        if (crossing.isPresent()) {
            return Optional.of(new Why.Crossing(truss.member(crossing.get()[0]), truss.member(crossing.get()[1])));
        }
        if (embedding.outer().size() > 1) {
            return Optional.of(new Why.InPieces(jointOf(truss, embedding, 0), jointOf(truss, embedding, 1)));
        }
        boolean loaded = false;
        Set<Integer> outline = new LinkedHashSet<>();
        embedding.boundary(embedding.outer().get(0)).forEach(half -> outline.add(embedding.origin(half)));
        for (int j = 0; j < truss.joints(); j++) {
            loaded |= !truss.causes(j).isEmpty();
            if (!truss.causes(j).isEmpty() && !outline.contains(j)) {
                return Optional.of(new Why.InnerForce(truss.causes(j).get(0), truss.name(j)));
            }
        }
        return loaded ? Optional.empty() : Optional.of(new Why.NoForces());
    }

    private static String jointOf(PlaneTruss truss, Embedding embedding, int piece) {
        return truss.name(embedding.origin(embedding.boundary(embedding.outer().get(piece)).get(0)));
    }

    private ForceDiagram draw() {
        double gap = outside();
        Set<Integer> order = order();
        while (Arrays.stream(points).anyMatch(p -> p == null)) {
            boolean moved = false;
            for (int joint : order) {
                if (atJoint(joint)) {
                    moved = true;
                    break;
                }
            }
            if (!moved) {
                layOff();
            }
        }
        List<Space> all = new ArrayList<>();
        for (int i = 0; i < points.length; i++) {
            all.add(new Space(spaces.name(i), spaces.joints(i), points[i]));
        }
        return new ForceDiagram.Drawn(truss.truss(), all, outsideLines(), memberLines(), steps, gap, truss.scale());
    }

    private double outside() {
        Vector at = new Vector(0, 0, 0);
        points[0] = at;
        for (int i = 1; i < spaces.lettered(); i++) {
            at = at.plus(spaces.outside().get(i).side().vector());
            points[i] = at;
        }
        return at.plus(spaces.outside().get(0).side().vector()).norm();
    }

    /** Joints as the solution took them, then the others. */
    private Set<Integer> order() {
        Set<Integer> order = new LinkedHashSet<>();
        for (kingpost.statics.Step step : truss.solution().steps()) {
            if (step instanceof kingpost.statics.Step.AtJoint at) {
                order.add(truss.number(at.joint()));
            }
        }
        for (int j = 0; j < truss.joints(); j++) {
            order.add(j);
        }
        return order;
    }

    /** Finds the point of the one space of a joint that has none yet, if there is just one. */
    private boolean atJoint(int joint) {
        int corner = -1;
        int[] out = embedding.out(joint);
        for (int k = 0; k < out.length; k++) {
            if (points[spaces.after(out[k])] == null) {
                if (corner >= 0) {
                    return false;
                }
                corner = k;
            }
        }
        if (corner < 0) {
            return false;
        }
        int one = out[corner];
        int other = embedding.clockwise(one);
        Vector way = embedding.way(one);
        Vector otherWay = embedding.way(other);
        double sine = way.cross(otherWay).z();
        if (Math.abs(sine) <= PARALLEL) {
            return false;
        }
        Vector start = points[spaces.before(one)];
        Vector reach = points[spaces.after(other)].minus(start);
        int found = spaces.after(one);
        points[found] = start.plus(way.times(reach.cross(otherWay).z() / sine));
        drawn[one / 2] = true;
        drawn[other / 2] = true;
        steps.add(new Step.AtJoint(truss.name(joint), found, truss.member(one / 2), truss.member(other / 2), closing()));
        return true;
    }

    private List<Member> closing() {
        List<Member> closing = new ArrayList<>();
        for (int m = 0; m < drawn.length; m++) {
            if (!drawn[m] && points[spaces.before(2 * m)] != null && points[spaces.after(2 * m)] != null) {
                drawn[m] = true;
                closing.add(truss.member(m));
            }
        }
        return closing;
    }

    /** Members that a section gave come first. */
    private void layOff() {
        List<Integer> members = new ArrayList<>();
        for (kingpost.statics.Step step : truss.solution().steps()) {
            if (!(step instanceof kingpost.statics.Step.AtJoint)) {
                step.answers().stream().map(kingpost.statics.Step.Answer::unknown)
                        .filter(Source.OfMember.class::isInstance)
                        .forEach(u -> members.add(truss.truss().members().indexOf(((Source.OfMember) u).member())));
            }
        }
        for (int m = 0; m < truss.members(); m++) {
            members.add(m);
        }
        for (int m : members) {
            Vector before = points[spaces.before(2 * m)];
            Vector after = points[spaces.after(2 * m)];
            if (before == null ^ after == null) {
                Vector force = embedding.way(2 * m).times(truss.force(m));
                int found = before == null ? spaces.before(2 * m) : spaces.after(2 * m);
                int from = before == null ? spaces.after(2 * m) : spaces.before(2 * m);
                points[found] = before == null ? after.minus(force) : before.plus(force);
                drawn[m] = true;
                steps.add(new Step.LaidOff(truss.member(m), from, found, closing()));
                return;
            }
        }
        throw new IllegalStateException("a space that no member joins to the others");
    }

    private List<Line> outsideLines() {
        List<Line> lines = new ArrayList<>();
        for (int i = 0; i < spaces.lettered(); i++) {
            Spaces.Crossed force = spaces.outside().get(i);
            int from = Math.floorMod(i - 1, spaces.lettered());
            Vector vector = points[i].minus(points[from]);
            double size = force.side().vector().norm();
            lines.add(new Line(force.side(), truss.name(force.joint()), from, i, vector, vector.norm(), size,
                    vector.minus(force.side().vector()).norm()));
        }
        return lines;
    }

    private List<Line> memberLines() {
        List<Line> lines = new ArrayList<>();
        for (int m = 0; m < truss.members(); m++) {
            int from = spaces.before(2 * m);
            int to = spaces.after(2 * m);
            Vector vector = points[to].minus(points[from]);
            Vector way = embedding.way(2 * m);
            Side side = new Side(new Cause.OfMember(truss.member(m)), way, way.times(truss.force(m)));
            lines.add(new Line(side, truss.member(m).from(), from, to, vector, vector.dot(way), truss.force(m),
                    vector.minus(side.vector()).norm()));
        }
        return lines;
    }
}
