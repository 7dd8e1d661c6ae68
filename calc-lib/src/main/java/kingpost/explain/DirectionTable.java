package kingpost.explain;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;

import kingpost.derivation.Block;
import kingpost.derivation.Phrase;
import kingpost.derivation.Table;
import kingpost.derivation.Table.Column;
import kingpost.statics.JointForce;
import kingpost.statics.Source;
import kingpost.statics.Step;
import kingpost.statics.Vector;
import kingpost.truss.Load;

/** Where the coefficients of a joint in space come from: each inclined force's reach along the axes, over its length. */
final class DirectionTable {

    private static final double ROUNDING = 1e-12;

    private final Notation notation;

    DirectionTable(Notation notation) {
        this.notation = notation;
    }

    /** One row for each inclined force at the joint; nothing where all lie along the axes. */
    List<Block> of(Step.AtJoint step) {
        List<List<Phrase>> rows = step.forces().stream()
                .filter(force -> !Heading.isUpright(force.along()) && !isByParts(step, force))
                .map(this::row).toList();
        if (rows.isEmpty()) {
            return List.of();
        }
        List<Column> columns = new ArrayList<>(List.of(Column.left("Force")));
        for (String axis : List.of("x", "y", "z")) {
            columns.add(Column.right("reach along " + axis));
        }
        columns.add(Column.right("length"));
        for (String axis : List.of("x", "y", "z")) {
            columns.add(Column.right("cosine " + axis));
        }
        return List.of(new Table(Phrase.of("Away from joint " + step.joint() + ", each cosine being a reach over the length"),
                columns, rows, true));
    }

    /** A load given by its components stands in the equations by these, save along an axis that is none of x, y, z. */
    private static boolean isByParts(Step.AtJoint step, JointForce force) {
        return force.source() instanceof Source.OfLoad of && of.load() instanceof Load.Components
                && step.axes() instanceof Step.Axes.Conventional;
    }

    private List<Phrase> row(JointForce force) {
        Vector along = force.along();
        double length = along.norm();
        Phrase symbol = Phrase.of(notation.symbol(force.source()));
        List<Phrase> row = new ArrayList<>(List.of(force.source() instanceof Source.OfLoad
                ? Phrase.of("load of ").then(symbol) : symbol));
        for (double part : parts(along)) {
            row.add(Phrase.of(Notation.four(part)));
        }
        row.add(Phrase.of(Notation.four(length)));
        for (double part : parts(along)) {
            row.add(Phrase.of(Notation.four(part / length)));
        }
        return row;
    }

    /** A reach that is rounding beside the length, as the cosine of 90 degrees is, counts as none. */
    private static List<Double> parts(Vector along) {
        return Stream.of(along.x(), along.y(), along.z())
                .map(part -> Math.abs(part) <= ROUNDING * along.norm() ? 0 : part).toList();
    }
}
