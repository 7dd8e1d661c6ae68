package kingpost.explain;

import java.util.ArrayList;
import java.util.List;

import kingpost.derivation.EquationLine;
import kingpost.derivation.Expression;
import kingpost.derivation.Expression.Relator;
import kingpost.derivation.Expressions;

/**
 * A part of an equation: a coefficient times a force, perhaps times an arm.
 *
 * @param negative whether it is subtracted
 * @param cosine   share of the force that counts
 * @param force    its symbol, or its amount where it is a load
 * @param value    what is put in for the symbol: its amount when it is known, else the symbol itself
 * @param arm      lever arm in a moment, without its sign; a plain 1 in a sum of forces
 */
record Share(boolean negative, Cosine cosine, Expression force, Expression value, Expression arm) {

    /** Characters of an equation on one line, so that a printed page has room for it. */
    private static final int WIDTH = 54;
    private static final Expression NO_ARM = Expressions.number(1);

    static Share ofSum(boolean negative, Cosine cosine, Expression force, Expression value) {
        return new Share(negative, cosine, force, value, NO_ARM);
    }

    /**
     * The shares summed up to nothing: with symbols and then, where that says more, with numbers.
     *
     * @param check whether nothing is unknown in it, so that the numbers show that it holds
     */
    static List<EquationLine> lines(List<Share> shares, Expression lead, boolean check) {
        List<EquationLine> lines = new ArrayList<>(line(shares.stream().map(Share::symbolic).toList()));
        lines.set(0, lines.get(0).ledBy(lead));
        if (shares.stream().anyMatch(Share::hasNumbersToPutIn)) {
            List<EquationLine> numbers = line(shares.stream().map(Share::numeric).toList());
            boolean oneLineEach = lines.size() + numbers.size() == 2;
            lines.add(oneLineEach ? numbers.get(0) : numbers.get(0).ledBy(Expressions.words("in numbers")));
            lines.addAll(numbers.subList(1, numbers.size()));
        }
        if (check) {
            int last = lines.size() - 1;
            lines.set(last, lines.get(last).remarked("holds"));
        }
        return lines;
    }

    private static List<EquationLine> line(List<Expression.Term> terms) {
        return EquationLine.sum(terms, Relator.EQUAL, Expressions.number(0), WIDTH);
    }

    /** With the force's symbol and the slope's fraction or angle. */
    Expression.Term symbolic() {
        Expression product = cosine.isWhole() ? force
                : cosine.isTrigonometric() ? Expressions.product(force, cosine.symbolic())
                : Expressions.product(cosine.symbolic(), force);
        return term(product);
    }

    /** With numbers for everything that is known. */
    Expression.Term numeric() {
        return term(cosine.isWhole() ? value : Expressions.product(cosine.numeric(), value));
    }

    /** Whether putting in numbers changes anything. */
    boolean hasNumbersToPutIn() {
        return cosine.isTrigonometric() || !force.equals(value);
    }

    private Expression.Term term(Expression product) {
        Expression whole = arm.equals(NO_ARM) ? product : withArm(product);
        return negative ? Expressions.minus(whole) : Expressions.plus(whole);
    }

    private Expression withArm(Expression product) {
        if (product instanceof Expression.Product several) {
            Expression[] factors = several.factors().toArray(new Expression[several.factors().size() + 1]);
            factors[factors.length - 1] = arm;
            return Expressions.product(factors);
        }
        boolean amount = product instanceof Expression.Amount;
        return Expressions.product(amount ? Expressions.parenthesised(product) : product, arm);
    }
}
