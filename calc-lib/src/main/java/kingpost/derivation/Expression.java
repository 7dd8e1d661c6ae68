package kingpost.derivation;

import java.util.List;
import java.util.Objects;
import java.util.Optional;

/**
 * A piece of mathematics, as it is written on the page. It is not evaluated and not simplified.
 *
 * <p>Parentheses stand in the tree: {@link Expressions} puts them where a reader needs them, so that a renderer
 * for a two-dimensional format never decides about them.
 */
public sealed interface Expression {

    <R> R accept(Visitor<R> visitor);

    /** One method for each kind of expression. */
    interface Visitor<R> {
        R symbol(Symbol symbol);

        R numeral(Numeral numeral);

        R amount(Amount amount);

        R sum(Sum sum);

        R product(Product product);

        R fraction(Fraction fraction);

        R root(Root root);

        R power(Power power);

        R function(Function function);

        R call(Call call);

        R relation(Relation relation);

        R sigma(Sigma sigma);

        R parenthesised(Parenthesised parenthesised);

        R sense(Sense sense);

        R words(Words words);
    }

    /**
     * A quantity's name, such as F with subscript BD, or x with one prime.
     *
     * @param name      literal characters, never a command: {@code "θ"}, not {@code "theta"}; see {@link Expressions#greek}
     * @param subscript upright text, may be empty
     * @param primes    number of primes after the name, 0 to 3
     */
    record Symbol(String name, String subscript, int primes) implements Expression {
        public Symbol {
            name = PlainText.line(name);
            subscript = PlainText.line(subscript);
            if (name.isBlank() || primes < 0 || primes > 3) {
                throw new IllegalArgumentException("Symbol \"" + name + "\" with " + primes
                        + " primes: the name must not be blank and the primes are 0 to 3; correct them");
            }
        }

        @Override
        public <R> R accept(Visitor<R> visitor) {
            return visitor.symbol(this);
        }
    }

    /**
     * A bare number.
     *
     * @param digits decimal digits with an optional {@code -} before, point within and {@code e} exponent after:
     *               {@code -12.5}, {@code 0.600}, {@code 1.2e-6}; trailing zeros are kept
     */
    record Numeral(String digits) implements Expression {
        private static final String FORM = "-?\\d+(\\.\\d+)?(e-?\\d+)?";

        public Numeral {
            if (!digits.matches(FORM)) {
                throw new IllegalArgumentException("Number \"" + digits
                        + "\": not decimal digits; write it as in -12.5 or 1.2e-6");
            }
        }

        public boolean isNegative() {
            return digits.startsWith("-");
        }

        /** The digits before an exponent, without the sign. */
        public String mantissa() {
            String unsigned = isNegative() ? digits.substring(1) : digits;
            int e = unsigned.indexOf('e');
            return e < 0 ? unsigned : unsigned.substring(0, e);
        }

        /** The power of ten, as digits with an optional {@code -}, if one is written. */
        public Optional<String> exponent() {
            int e = digits.indexOf('e');
            return e < 0 ? Optional.empty() : Optional.of(digits.substring(e + 1));
        }

        @Override
        public <R> R accept(Visitor<R> visitor) {
            return visitor.numeral(this);
        }
    }

    /**
     * A number with its unit.
     *
     * @param unit the unit's symbol in plain text: {@code kN}, {@code kN·m}, {@code lbf/ft²}, {@code °}
     */
    record Amount(Numeral number, String unit) implements Expression {
        public Amount {
            Objects.requireNonNull(number, "number");
            unit = PlainText.line(unit);
        }

        @Override
        public <R> R accept(Visitor<R> visitor) {
            return visitor.amount(this);
        }
    }

    /**
     * Terms added and subtracted; a single term with {@code minus} is a negative.
     *
     * @param terms     at least one
     * @param signFirst whether the first term shows its sign even when that is a plus, because the sum goes on from a
     *                  line above
     */
    record Sum(List<Term> terms, boolean signFirst) implements Expression {
        public Sum(List<Term> terms) {
            this(terms, false);
        }

        public Sum {
            terms = List.copyOf(terms);
            if (terms.isEmpty()) {
                throw new IllegalArgumentException("Sum: it has no terms; give at least one");
            }
        }

        @Override
        public <R> R accept(Visitor<R> visitor) {
            return visitor.sum(this);
        }
    }

    /** A term of a sum with the sign before it. */
    record Term(boolean minus, Expression value) {
        public Term {
            Objects.requireNonNull(value, "value");
        }
    }

    /** Factors side by side, or with a sign between them. At least one factor. */
    record Product(List<Expression> factors, Times times) implements Expression {
        public Product {
            factors = List.copyOf(factors);
            Objects.requireNonNull(times, "times");
            if (factors.isEmpty()) {
                throw new IllegalArgumentException("Product: it has no factors; give at least one");
            }
        }

        @Override
        public <R> R accept(Visitor<R> visitor) {
            return visitor.product(this);
        }
    }

    /** What stands between the factors of a product. */
    enum Times { NOTHING, DOT, CROSS }

    record Fraction(Expression numerator, Expression denominator) implements Expression {
        public Fraction {
            Objects.requireNonNull(numerator, "numerator");
            Objects.requireNonNull(denominator, "denominator");
        }

        @Override
        public <R> R accept(Visitor<R> visitor) {
            return visitor.fraction(this);
        }
    }

    /** A square root. */
    record Root(Expression radicand) implements Expression {
        public Root {
            Objects.requireNonNull(radicand, "radicand");
        }

        @Override
        public <R> R accept(Visitor<R> visitor) {
            return visitor.root(this);
        }
    }

    record Power(Expression base, Expression exponent) implements Expression {
        public Power {
            Objects.requireNonNull(base, "base");
            Objects.requireNonNull(exponent, "exponent");
        }

        @Override
        public <R> R accept(Visitor<R> visitor) {
            return visitor.power(this);
        }
    }

    /** A named function of one argument. */
    record Function(Name name, Expression argument) implements Expression {
        public Function {
            Objects.requireNonNull(name, "name");
            Objects.requireNonNull(argument, "argument");
        }

        /** The functions of slopes and angles. */
        public enum Name { SIN, COS, TAN, ATAN }

        @Override
        public <R> R accept(Visitor<R> visitor) {
            return visitor.function(this);
        }
    }

    /**
     * A function by its own name with its arguments in parentheses: min(a, b), ln(x).
     *
     * @param name upright letters, never a command
     */
    record Call(String name, List<Expression> arguments) implements Expression {
        public Call {
            name = PlainText.line(name);
            arguments = List.copyOf(arguments);
            if (name.isBlank() || arguments.isEmpty()) {
                throw new IllegalArgumentException("Function \"" + name + "\" of " + arguments.size()
                        + " arguments: give it a name and at least one argument");
            }
        }

        @Override
        public <R> R accept(Visitor<R> visitor) {
            return visitor.call(this);
        }
    }

    /**
     * Sides with a relation between each and the next: {@code sides} is one longer than {@code relators}.
     */
    record Relation(List<Expression> sides, List<Relator> relators) implements Expression {
        public Relation {
            sides = List.copyOf(sides);
            relators = List.copyOf(relators);
            if (relators.isEmpty() || sides.size() != relators.size() + 1 || relators.contains(Relator.GOES_ON)) {
                throw new IllegalArgumentException("Relation: " + sides.size() + " sides and " + relators.size()
                        + " relations; give one relation between each side and the next");
            }
        }

        @Override
        public <R> R accept(Visitor<R> visitor) {
            return visitor.relation(this);
        }
    }

    /** How two sides compare. */
    enum Relator {
        EQUAL, ABOUT, LESS, GREATER, AT_MOST, AT_LEAST, NOT_EQUAL,
        /** Not yet: the left side of an {@link EquationLine} goes on in the next line. */
        GOES_ON
    }

    /** The sum of all of a kind: ΣF with subscript x. */
    record Sigma(Expression summand) implements Expression {
        public Sigma {
            Objects.requireNonNull(summand, "summand");
        }

        @Override
        public <R> R accept(Visitor<R> visitor) {
            return visitor.sigma(this);
        }
    }

    record Parenthesised(Expression inner) implements Expression {
        public Parenthesised {
            Objects.requireNonNull(inner, "inner");
        }

        @Override
        public <R> R accept(Visitor<R> visitor) {
            return visitor.parenthesised(this);
        }
    }

    /** The sense that counts as positive in an equation: an arrow with a plus sign. */
    enum Sense implements Expression {
        RIGHT, UP, COUNTERCLOCKWISE, UP_RIGHT, UP_LEFT, DOWN_RIGHT, DOWN_LEFT, LEFT, DOWN;

        @Override
        public <R> R accept(Visitor<R> visitor) {
            return visitor.sense(this);
        }
    }

    /** Upright words within mathematics. */
    record Words(String text) implements Expression {
        public Words {
            text = PlainText.line(text);
        }

        @Override
        public <R> R accept(Visitor<R> visitor) {
            return visitor.words(this);
        }
    }
}
