package kingpost.explain;

import java.util.ArrayList;
import java.util.List;

import kingpost.derivation.Block;
import kingpost.derivation.Block.Prose;
import kingpost.derivation.Block.Section;
import kingpost.derivation.Derivation;
import kingpost.derivation.Expression;
import kingpost.derivation.Phrase;
import kingpost.derivation.Table;
import kingpost.derivation.Table.Column;
import kingpost.statics.SecondLook;
import kingpost.statics.SecondLook.FoundAgain;
import kingpost.statics.SecondLook.WholeSum;
import kingpost.statics.Solution;
import kingpost.statics.Source;
import kingpost.truss.Load;
import kingpost.units.Quantity;
import kingpost.units.StructuralUnits;
import kingpost.units.UnitLabel;

/** The page of a second pair of eyes: what was looked at, what is left over, and the verdict, which stands first. */
public final class SecondLookExplanation {

    private final Notation notation;
    private final Solution solution;
    private final SecondLook look;

    private SecondLookExplanation(Solution solution, SecondLook look) {
        this.notation = new Notation(solution.truss());
        this.solution = solution;
        this.look = look;
    }

    public static Derivation of(Solution solution, SecondLook look) {
        return new SecondLookExplanation(solution, look).derivation();
    }

    private Derivation derivation() {
        List<Block> blocks = new ArrayList<>();
        blocks.add(new Prose(verdict()));
        if (!look.disagreements().isEmpty()) {
            blocks.add(new Block.Listing(false, look.disagreements().stream().map(each -> Phrase.of(each + ".")).toList()));
        }
        blocks.add(Prose.of("This page knows the truss and the answers, and nothing of the way in which they were found."
                + " Directions and lengths are taken from the coordinates anew, the answers are put into the balance of the"
                + " whole and of each joint, and every force is found once more from all joint equations at once, by"
                + " orthogonal elimination. Tension is positive; a reaction acts on the truss."));
        blocks.add(Section.of("Loads", List.of(loads())));
        blocks.add(Section.of("The whole truss", List.of(whole())));
        blocks.add(Section.of("Each joint", List.of(joints())));
        if (!look.forces().isEmpty()) {
            blocks.add(Section.of("Each force, found again", List.of(forces())));
        }
        return new Derivation(solution.truss().name() + ": a second look", blocks);
    }

    private Phrase verdict() {
        SecondLook.Worst worst = look.worstBalance();
        Phrase size = worst.part() == 0 ? Phrase.of("Every balance closes to the last figure.")
                : Phrase.of("The worst remainder is at " + worst.where() + ": ").math(Notation.three(worst.part()))
                        .text(" of the largest force, ").math(notation.answer(look.scale())).text(".");
        if (look.agrees()) {
            return Phrase.EMPTY.strong("The answers hold.").sentence(size).sentence(worst.part() == 0 ? ""
                    : "That is rounding.");
        }
        Phrase verdict = Phrase.EMPTY.strong("Do not use these answers.").sentence(size);
        if (!look.unbalanced().isEmpty()) {
            verdict = verdict.sentence(Phrase.of("Out of balance: ").then(Series.names(look.unbalanced(), 8)).text("."));
        }
        List<FoundAgain> other = look.forces().stream()
                .filter(each -> Math.abs(each.difference()) > SecondLook.AGAIN * look.scale()).limit(8).toList();
        return other.isEmpty() ? verdict : verdict.sentence(Phrase.of("Found otherwise: ")
                .then(Series.and(other, each -> Phrase.of(notation.symbol(each.source())))).text("."));
    }

    private Block loads() {
        if (solution.truss().loads().isEmpty()) {
            return Prose.of("No load acts.");
        }
        List<List<Phrase>> rows = new ArrayList<>();
        for (Load load : solution.truss().loads()) {
            rows.add(List.of(Phrase.of(load.joint()), Phrase.of(notation.loadAmount(load)),
                    Phrase.of(Heading.words(Heading.vector(load.direction()))), force(newtons(load.fx())),
                    force(newtons(load.fy()))));
        }
        return new Table(Phrase.of("Loads as they were given, and their components in " + notation.forceLabel()),
                List.of(Column.left("Joint"), Column.right("Load"), Column.left("Acts"), Column.right("x"),
                        Column.right("y")), rows, true);
    }

    private static double newtons(Quantity force) {
        return force.in(StructuralUnits.N);
    }

    private Table whole() {
        List<List<Phrase>> rows = look.whole().stream().map(sum -> List.of(Phrase.of(named(sum)),
                amount(sum, sum.loads()), amount(sum, sum.reactions()), amount(sum, sum.remainder()))).toList();
        return new Table(Phrase.of("Loads and reactions together must come to nothing"),
                List.of(Column.left("Sum"), Column.right("Loads"), Column.right("Reactions"), Column.right("Left over")),
                rows, true);
    }

    private String named(WholeSum sum) {
        String unit = sum.isMoment() ? notation.forceLabel() + "\u00b7" + notation.lengthLabel() : notation.forceLabel();
        return Series.capital(sum.what()) + " (" + unit + ")";
    }

    private Phrase amount(WholeSum sum, double value) {
        if (!sum.isMoment()) {
            return force(value);
        }
        double lengths = Quantity.of(1, StructuralUnits.m).in(solution.truss().lengthUnit());
        return Phrase.of(Notation.three(notation.inForceUnit(value) * lengths));
    }

    private Table joints() {
        List<Column> columns = new ArrayList<>(List.of(Column.left("Joint"), Column.right("Along x"),
                Column.right("Along y")));
        if (look.joints().get(0).remainders().size() > 2) {
            columns.add(Column.right("Along z"));
        }
        List<List<Phrase>> rows = new ArrayList<>();
        for (SecondLook.JointBalance joint : look.joints()) {
            List<Phrase> row = new ArrayList<>(List.of(Phrase.of(joint.joint())));
            joint.remainders().forEach(remainder -> row.add(force(remainder)));
            rows.add(row);
        }
        return new Table(Phrase.of("What members, reactions and loads leave over at each joint, in "
                + notation.forceLabel()), columns, rows, true);
    }

    private Table forces() {
        List<List<Phrase>> rows = new ArrayList<>();
        for (FoundAgain each : look.forces()) {
            Expression symbol = notation.symbol(each.source());
            boolean member = each.source() instanceof Source.OfMember;
            rows.add(List.of(Phrase.of(symbol), force(each.answered()),
                    Phrase.of(member ? SenseWords.noun(each.answered())
                            : Heading.words((Source.OfReaction) each.source(), each.answered())),
                    six(each.answered()), six(each.again()), force(each.difference())));
        }
        return new Table(Phrase.of("Answers beside the forces found again, in "
                + UnitLabel.of(solution.truss().forceUnit())),
                List.of(Column.left("Force"), Column.right("Answer"), Column.left("Sense"), Column.right("To six figures"),
                        Column.right("Found again"), Column.right("Difference")), rows, true);
    }

    private Phrase six(double newtons) {
        double clean = Math.abs(newtons) <= SecondLook.TOLERANCE * look.scale() ? 0 : newtons;
        return Phrase.of(Notation.six(notation.inForceUnit(clean)));
    }

    private Phrase force(double newtons) {
        return Phrase.of(Notation.three(notation.inForceUnit(newtons)));
    }
}
