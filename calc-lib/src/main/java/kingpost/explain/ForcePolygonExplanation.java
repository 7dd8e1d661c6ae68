package kingpost.explain;

import java.util.ArrayList;
import java.util.List;

import kingpost.derivation.Block;
import kingpost.derivation.Block.Prose;
import kingpost.derivation.Derivation;
import kingpost.derivation.Expressions;
import kingpost.derivation.Phrase;
import kingpost.derivation.Table;
import kingpost.derivation.Table.Column;
import kingpost.graphic.ForcePolygon;
import kingpost.graphic.Side;
import kingpost.statics.Checks;

/** The force polygon of a joint: in what order it is drawn, what each line is, and that it closes. */
public final class ForcePolygonExplanation {

    private final ForcePolygon polygon;
    private final Notation notation;
    private final CauseWords causes;

    private ForcePolygonExplanation(ForcePolygon polygon) {
        this.polygon = polygon;
        this.notation = new Notation(polygon.truss());
        this.causes = new CauseWords(notation);
    }

    public static Derivation of(ForcePolygon polygon) {
        return new Derivation(polygon.truss().name() + ": force polygon of joint " + polygon.joint(),
                new ForcePolygonExplanation(polygon).blocks());
    }

    private List<Block> blocks() {
        List<Block> blocks = new ArrayList<>();
        List<Side> drawn = polygon.sides().stream().filter(side -> side.vector().norm() > 0).toList();
        if (drawn.isEmpty()) {
            return List.of(new Prose(Phrase.of("No force acts on joint ").strong(polygon.joint())
                    .text(", so there is nothing to draw.")));
        }
        blocks.add(new Prose(Phrase.of("Go clockwise round joint ").strong(polygon.joint())
                .text(" and draw each force to scale from the tip of the one before: ")
                .then(Series.and(drawn, side -> causes.of(side.cause()))).text(".").sentence(order(drawn))));
        blocks.addAll(Pictures.polygon(polygon));
        blocks.add(table(drawn));
        blocks.add(new Prose(idle().sentence(closing())));
        return blocks;
    }

    private Phrase order(List<Side> drawn) {
        long found = drawn.stream().filter(side -> !isKnown(side)).count();
        boolean last = found > 0 && drawn.subList(drawn.size() - (int) found, drawn.size()).stream()
                .noneMatch(this::isKnown);
        if (!last || found > 2) {
            return Phrase.EMPTY;
        }
        return found == 1 ? Phrase.of("The last was the unknown one: it must lead back to the start, and that gives its size"
                + " and sense.")
                : Phrase.of("The last two were the unknown ones. Their directions are those of the members; drawn through the"
                + " two open ends they meet in one point, which gives their sizes and senses.");
    }

    private boolean isKnown(Side side) {
        return polygon.known().get(polygon.sides().indexOf(side));
    }

    private Table table(List<Side> drawn) {
        List<List<Phrase>> rows = new ArrayList<>();
        for (int i = 0; i < drawn.size(); i++) {
            Side side = drawn.get(i);
            double turn = Math.toDegrees(Math.atan2(side.vector().y(), side.vector().x()));
            double degrees = turn < 0 ? turn + 360 : turn;
            rows.add(List.of(Phrase.of(Integer.toString(i + 1)), Series.capital(causes.of(side.cause())),
                    Phrase.of(Notation.three(notation.inForceUnit(side.vector().norm()))),
                    Phrase.of(Cosine.angle(degrees)), Phrase.of(causes.sense(side))));
        }
        return new Table(Phrase.of("Sides of the polygon; directions counter-clockwise from x"),
                List.of(Column.right("Side"), Column.left("Force"),
                        Column.right("Length (" + notation.forceLabel() + ")"), Column.right("Direction"),
                        Column.left("Read at the joint")), rows, true);
    }

    private Phrase idle() {
        List<Phrase> idle = polygon.sides().stream().filter(side -> side.vector().norm() == 0)
                .map(side -> causes.of(side.cause())).toList();
        return idle.isEmpty() ? Phrase.EMPTY : Series.capital(Series.and(idle))
                .text((idle.size() == 1 ? " carries" : " carry") + " nothing and " + (idle.size() == 1 ? "has" : "have")
                        + " no length.");
    }

    private Phrase closing() {
        double gap = polygon.gap();
        if (gap == 0) {
            return Phrase.of("The last tip falls on the first tail: the polygon closes, and the joint is in equilibrium.");
        }
        double part = gap / polygon.scale();
        return part <= Checks.TOLERANCE
                ? Phrase.of("The last tip falls on the first tail: the closing gap is ").math(Notation.three(part))
                .text(" of the largest force in the truss, which is rounding. The joint is in equilibrium.")
                : Phrase.of("The polygon does not close. Its gap is ").math(notation.answer(gap)).text("; ")
                .strong("do not use these answers").text(".");
    }
}
