package kingpost.explain;

import java.util.ArrayList;
import java.util.List;

import kingpost.derivation.Block;
import kingpost.derivation.Block.Listing;
import kingpost.derivation.Block.Prose;
import kingpost.derivation.Block.Section;
import kingpost.derivation.Derivation;
import kingpost.derivation.Figure;
import kingpost.derivation.Phrase;
import kingpost.derivation.Table;
import kingpost.derivation.Table.Column;
import kingpost.diagram.FreeBodyFigure;
import kingpost.svg.Svg;
import kingpost.truss.Joint;
import kingpost.truss.TrussModel;

/**
 * A problem to hand out: figure, data, free bodies to complete and a table to fill in. It is made from the truss alone,
 * before anything is solved, so that no answer can be in it: joints stand in the order in which they were written
 * down, not in the order in which they are best worked.
 */
public final class Handout {

    private final TrussModel truss;

    private Handout(TrussModel truss) {
        this.truss = truss;
    }

    public static Derivation of(TrussModel truss) {
        return new Handout(truss).derivation();
    }

    /** Figure, data and question alone. */
    public static Derivation problem(TrussModel truss) {
        return new Derivation(truss.name() + ": problem", new Handout(truss).problem());
    }

    private Derivation derivation() {
        return Derivation.of(truss.name() + ": problem", Section.of("Problem", problem()),
                Section.of("Free bodies", bodies()), Section.of("Answers", List.of(answers())));
    }

    private List<Block> problem() {
        Notation notation = new Notation(truss);
        List<Block> blocks = new ArrayList<>(Pictures.truss(truss));
        blocks.add(new Listing(false, new ProblemText(truss).data()));
        blocks.add(Prose.of("Find the force in each member by the method of joints, to three significant figures, and say"
                + " whether it is tension or compression. Lengths are in " + notation.lengthLabel() + ", forces in "
                + notation.forceLabel() + "."));
        return blocks;
    }

    private List<Block> bodies() {
        List<Block> blocks = new ArrayList<>();
        blocks.add(Prose.of("On each joint that you use, draw every force that acts there, then write its two equations"
                + " beside it. Number the joints in the order in which you take them; you may not need all of them."));
        for (Joint joint : truss.joints()) {
            Svg svg = FreeBodyFigure.blank(truss, joint.name());
            blocks.add(new Figure(svg, Phrase.of("Joint " + joint.name() + "; taken as number ____"), svg.description()));
        }
        return blocks;
    }

    private Table answers() {
        String unit = new Notation(truss).forceLabel();
        List<Column> columns = List.of(Column.left("Member"), Column.left("Force (" + unit + ")"),
                Column.left("Tension or compression"));
        return new Table(Phrase.EMPTY, columns, truss.members().stream()
                .map(member -> List.of(Phrase.of(member.name()), Phrase.EMPTY, Phrase.EMPTY)).toList(), true);
    }
}
