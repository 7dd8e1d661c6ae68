package kingpost.explain;

import java.util.ArrayList;
import java.util.List;

import kingpost.derivation.Block;
import kingpost.derivation.Block.Equations;
import kingpost.derivation.Block.Prose;
import kingpost.derivation.Block.Section;
import kingpost.derivation.Derivation;
import kingpost.derivation.EquationLine;
import kingpost.derivation.Expression;
import kingpost.derivation.Expression.Relator;
import kingpost.derivation.Expression.Symbol;
import kingpost.derivation.Expressions;
import kingpost.derivation.Phrase;
import kingpost.derivation.Table;
import kingpost.derivation.Table.Column;
import kingpost.statics.Checks;
import kingpost.statics.Solution;
import kingpost.statics.Step;
import kingpost.statics.SubstitutedMember;

/** A complex truss by exchanging a member: the exchange, the two simple solutions, and what they add up to. */
public final class SubstituteExplanation {

    private static final Symbol PULL = Expressions.symbol("x");

    private final SubstitutedMember exchange;
    private final Notation notation;

    private SubstituteExplanation(SubstitutedMember exchange) {
        this.exchange = exchange;
        this.notation = new Notation(exchange.truss());
    }

    public static Derivation of(SubstitutedMember exchange) {
        SubstituteExplanation e = new SubstituteExplanation(exchange);
        return Derivation.of(exchange.truss().name() + ": by a substituted member",
                Section.of("The exchange", e.exchange()), Section.of("Under the loads", e.worked(exchange.loaded(),
                        "The changed truss under the loads. Its forces are called F\u2032.")),
                Section.of("Under the pull", e.worked(exchange.pulled(), "The changed truss again, with nothing on it but a"
                        + " pull of 1 " + e.notation.forceLabel() + " between the ends of " + exchange.removed().name()
                        + ", as that member would exert it in tension. The forces for each unit of the pull are called f.")),
                Section.of("Both together", e.together()));
    }

    private List<Block> exchange() {
        String out = exchange.removed().name();
        String in = exchange.substitute().name();
        List<Block> blocks = new ArrayList<>(Pictures.truss(exchange.truss()));
        blocks.add(Prose.of("Joint by joint does not get through this truss. Take " + out + " out and put " + in
                + " in: the count of members stays the same, and the changed truss can be worked joint by joint. The force"
                + " that " + out + " would exert on its two joints is brought back as an outside pull x on both, along its"
                + " line. Whatever x is, the changed truss bears it; for one value of x the substitute " + in
                + " carries nothing. With that pull it may as well not be there: what is left is the given truss, with x the"
                + " force in " + out + "."));
        return blocks;
    }

    private List<Block> worked(Solution solution, String lead) {
        List<Block> blocks = new ArrayList<>();
        blocks.add(Prose.of(lead));
        Notation changed = new Notation(solution.truss());
        blocks.addAll(new InspectionExplanation(changed).blocks(solution.inspection()));
        solution.steps().stream().limit(1).filter(Step.Reactions.class::isInstance).map(Step.Reactions.class::cast)
                .forEach(reactions -> blocks.add(Section.of("Reactions",
                        new ReactionsExplanation(changed).blocks(reactions))));
        blocks.addAll(new JointExplanation(changed, solution).sections());
        blocks.addAll(Pictures.results(solution));
        return blocks;
    }

    private List<Block> together() {
        String in = exchange.substitute().name();
        List<Block> blocks = new ArrayList<>();
        blocks.add(Prose.of("The substitute " + in + " must carry nothing:"));
        Symbol loads = Expressions.symbol("F\u2032", in);
        Symbol unit = Expressions.symbol("f", in);
        double underLoads = exchange.substituteUnderLoads();
        double perUnit = exchange.substitutePerUnit();
        Expression share = Expressions.product(Notation.four(Math.abs(perUnit)), PULL);
        blocks.add(new Equations(List.of(
                EquationLine.of(Expressions.sum(List.of(Expressions.plus(loads), Expressions.plus(Expressions.product(PULL,
                        unit)))), Relator.EQUAL, Expressions.number(0)),
                EquationLine.of(Expressions.sum(List.of(Expressions.plus(notation.answer(underLoads)), perUnit < 0
                        ? Expressions.minus(share) : Expressions.plus(share))), Relator.EQUAL, Expressions.number(0)),
                EquationLine.of(PULL, Relator.EQUAL, notation.answer(exchange.pull())))));
        blocks.add(new Prose(Phrase.of("So ").math(Expressions.equal(Notation.force(exchange.removed()),
                notation.answer(exchange.pull()))).text(". Every other force is what the loads bring and x times what a unit of"
                + " the pull brings:")));
        blocks.add(table());
        blocks.add(new Prose(check()));
        return blocks;
    }

    private Table table() {
        String unit = " (" + notation.forceLabel() + ")";
        List<Column> columns = List.of(Column.left("Member"), Column.right("F\u2032" + unit), Column.right("f"),
                Column.right("F = F\u2032 + x f" + unit), Column.left("Sense"));
        return new Table(Phrase.of("Forces in the given truss"), columns, exchange.rows().stream().map(row -> List.of(
                Phrase.of(row.member().name()), Phrase.of(Notation.three(notation.inForceUnit(row.underLoads()))),
                Phrase.of(Notation.four(row.perUnit())), Phrase.of(Notation.three(notation.inForceUnit(row.force()))),
                Phrase.of(SenseWords.noun(row.force())))).toList(), true);
    }

    private Phrase check() {
        Phrase size = Phrase.of("All joint equations of the given truss, solved at once as a second method, differ from these"
                + " by no more than ").math(Notation.three(exchange.worst())).text(" of the largest force");
        return exchange.worst() <= Checks.TOLERANCE ? size.text(", which is rounding.")
                : size.text(", which is more than rounding. ").strong("Do not use these answers")
                        .text(": the truss is close to a mechanism.");
    }
}
