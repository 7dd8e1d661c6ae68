package kingpost.explain;

import static kingpost.derivation.Expressions.equal;
import static kingpost.derivation.Expressions.number;
import static kingpost.derivation.Expressions.plus;
import static kingpost.derivation.Expressions.product;
import static kingpost.derivation.Expressions.sum;
import static kingpost.derivation.Expressions.symbol;

import java.util.ArrayList;
import java.util.List;

import kingpost.derivation.Block;
import kingpost.derivation.Block.Equations;
import kingpost.derivation.Block.Prose;
import kingpost.derivation.Derivation;
import kingpost.derivation.EquationLine;
import kingpost.derivation.Expression;
import kingpost.derivation.Expression.Relator;
import kingpost.derivation.Expression.Times;
import kingpost.derivation.Phrase;
import kingpost.statics.Determinacy;
import kingpost.statics.Determinacy.Count;
import kingpost.statics.Determinacy.Determinate;
import kingpost.statics.Determinacy.Indeterminate;
import kingpost.statics.Determinacy.Mechanism;
import kingpost.truss.TrussModel;

/** Whether equilibrium alone can give the forces: the count, and what the count does not see. */
public final class DeterminacyExplanation {

    private static final int FEW = 8;

    private DeterminacyExplanation() {
    }

    public static Derivation of(TrussModel truss, Determinacy determinacy) {
        List<Block> blocks = new ArrayList<>(blocks(determinacy));
        if (determinacy instanceof Mechanism mechanism) {
            blocks.addAll(Pictures.mechanism(truss, mechanism));
        }
        return new Derivation(truss.name() + ": can statics alone solve it?", blocks);
    }

    static List<Block> blocks(Determinacy determinacy) {
        Count count = determinacy.count();
        List<Block> blocks = new ArrayList<>();
        blocks.add(counted(count));
        blocks.add(comparison(count));
        blocks.addAll(determinacy.accept(new Verdict()));
        return blocks;
    }

    private static Block counted(Count count) {
        String each = count.dimension() == 2 ? "two" : "three";
        return new Prose(Phrase.of("Each member brings one unknown force and each blocked direction at a support one"
                + " unknown reaction; each joint brings " + each + " equations of equilibrium. Here there are ")
                .math(equal(symbol("m"), number(count.members()))).text(" members, ")
                .math(equal(symbol("r"), number(count.reactions()))).text(" reactions and ")
                .math(equal(symbol("j"), number(count.joints()))).text(" joints."));
    }

    private static Block comparison(Count count) {
        Expression unknowns = sum(List.of(plus(number(count.members())), plus(number(count.reactions()))));
        Expression equations = product(Times.CROSS, number(count.dimension()), number(count.joints()));
        return new Equations(List.of(
                EquationLine.of(sum(List.of(plus(symbol("m")), plus(symbol("r")))), Relator.EQUAL,
                        equal(unknowns, number(count.unknowns()))).remarked("unknowns"),
                EquationLine.of(product(number(count.dimension()), symbol("j")), Relator.EQUAL,
                        equal(equations, number(count.equations()))).remarked("equations")));
    }

    /** That the geometry is nearly a mechanism, with the figure that shows it. */
    static Phrase warning(Determinate determinacy) {
        return Phrase.of("").strong("It is close to a mechanism").text(": the condition of its joint equations is ")
                .math(Notation.three(determinacy.condition()))
                .text(", far more than a truss of its size needs. A small error of a length or a load may change the"
                + " forces by up to so many times itself; look for members or supports that are nearly in line.");
    }

    private static final class Verdict implements Determinacy.Visitor<List<Block>> {

        @Override
        public List<Block> determinate(Determinate determinacy) {
            Phrase said = Phrase.of("There are exactly as many equations as unknowns. The count alone does not"
                    + " settle it, because members or supports in the wrong places could still leave something loose;"
                    + " here the equations are independent (their rank is ")
                    .math(number(determinacy.count().rank()))
                    .text("), so the truss is ").strong("stable and statically determinate")
                    .text(": equilibrium gives every force, and only one set of forces fits.");
            return List.of(new Prose(determinacy.isNearlyAMechanism() ? said.sentence(warning(determinacy)) : said));
        }

        @Override
        public List<Block> indeterminate(Indeterminate determinacy) {
            int degree = determinacy.degree();
            Phrase said = Phrase.of("The truss is stable, but there are ").text(Series.count(degree, "unknown"))
                    .text(" more than equilibrium can give: it is ").strong("statically indeterminate to degree " + degree)
                    .text(". How the load is shared then depends on how stiff the members are.");
            if (determinacy.removable().isEmpty()) {
                said = said.sentence("No member is spare; the surplus lies in the supports.");
            } else {
                said = said.sentence(Phrase.of("Without any one of ")
                        .then(Series.oneOf(determinacy.removable(), FEW)).text(" it would still stand."));
            }
            if (!determinacy.removableReactions().isEmpty()) {
                said = said.sentence(Phrase.of("Of the reactions, it could do without ")
                        .then(Series.oneOf(determinacy.removableReactions(), FEW)).text("."));
            }
            return List.of(new Prose(said));
        }

        @Override
        public List<Block> mechanism(Mechanism determinacy) {
            List<String> moving = determinacy.motion().keySet().stream().sorted().toList();
            Phrase what = Phrase.of("The truss is ").strong("a mechanism").text(": ")
                    .text(moving.size() == 1 ? "joint " : "joints ").then(Series.names(moving, FEW))
                    .text(" can move although no member changes its length.");
            return List.of(new Prose(what.sentence(cause(determinacy))));
        }

        private static String cause(Mechanism mechanism) {
            int missing = mechanism.count().equations() - mechanism.count().unknowns();
            return switch (mechanism.cause()) {
                case TOO_FEW -> missing == 1 ? "To hold it, one more member or reaction is needed."
                        : "To hold it, " + Series.number(missing) + " more members or reactions are needed.";
                case REACTIONS_DO_NOT_HOLD -> mechanism.count().dimension() == 3 ? "There are enough reactions, but together"
                        + " they leave the truss free to move or to turn as a whole. Turn or move a support."
                        : "There are enough reactions, but they are parallel or their lines meet in"
                        + " one point, and so they do not hold the truss as a whole. Turn or move a support.";
                case MEMBERS_MISPLACED -> "There are enough members, but one part has more than it needs and another too"
                        + " few. Take a member from where it is spare and brace what moves.";
            };
        }
    }
}
