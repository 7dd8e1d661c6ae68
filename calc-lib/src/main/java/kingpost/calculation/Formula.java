package kingpost.calculation;

import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import kingpost.units.Quantity;

/** A formula taken apart: what is calculated from what. */
public sealed interface Formula {

    <R> R accept(Visitor<R> visitor);

    /**
     * Reads a formula by the grammar of this package.
     *
     * @throws kingpost.units.CalculationException when the text cannot be read
     */
    static Formula parse(String text) {
        return FormulaParser.formula(text);
    }

    /** What it is directly made of, in reading order. */
    List<Formula> parts();

    /** It and everything in it, in reading order. */
    default Stream<Formula> all() {
        return Stream.concat(Stream.of(this), parts().stream().flatMap(Formula::all));
    }

    /** The names of the symbols in it, in reading order. */
    default Set<String> names() {
        return all().filter(Symbol.class::isInstance).map(part -> ((Symbol) part).name())
                .collect(Collectors.toCollection(LinkedHashSet::new));
    }

    /** One method for each kind of formula. */
    interface Visitor<R> {
        R amount(Amount amount);

        R symbol(Symbol symbol);

        R negative(Negative negative);

        R sum(Sum sum);

        R product(Product product);

        R quotient(Quotient quotient);

        R power(Power power);

        R call(Call call);
    }

    /**
     * A number with its unit, written out.
     *
     * @param bareUnit the unit's name as it stood behind the number without brackets; empty when there was none
     */
    record Amount(Quantity value, String bareUnit) implements Formula {
        @Override
        public List<Formula> parts() {
            return List.of();
        }

        @Override
        public <R> R accept(Visitor<R> visitor) {
            return visitor.amount(this);
        }
    }

    /** The value of a line above, by its name. */
    record Symbol(String name) implements Formula {
        @Override
        public List<Formula> parts() {
            return List.of();
        }

        @Override
        public <R> R accept(Visitor<R> visitor) {
            return visitor.symbol(this);
        }
    }

    record Negative(Formula value) implements Formula {
        @Override
        public List<Formula> parts() {
            return List.of(value);
        }

        @Override
        public <R> R accept(Visitor<R> visitor) {
            return visitor.negative(this);
        }
    }

    /** {@code left + right}, or {@code left - right} when {@code minus} is set. */
    record Sum(Formula left, Formula right, boolean minus) implements Formula {
        @Override
        public List<Formula> parts() {
            return List.of(left, right);
        }

        @Override
        public <R> R accept(Visitor<R> visitor) {
            return visitor.sum(this);
        }
    }

    record Product(Formula left, Formula right) implements Formula {
        @Override
        public List<Formula> parts() {
            return List.of(left, right);
        }

        @Override
        public <R> R accept(Visitor<R> visitor) {
            return visitor.product(this);
        }
    }

    record Quotient(Formula above, Formula below) implements Formula {
        @Override
        public List<Formula> parts() {
            return List.of(above, below);
        }

        @Override
        public <R> R accept(Visitor<R> visitor) {
            return visitor.quotient(this);
        }
    }

    record Power(Formula base, Formula exponent) implements Formula {
        @Override
        public List<Formula> parts() {
            return List.of(base, exponent);
        }

        @Override
        public <R> R accept(Visitor<R> visitor) {
            return visitor.power(this);
        }
    }

    record Call(MathFunction function, List<Formula> arguments) implements Formula {
        public Call {
            arguments = List.copyOf(arguments);
        }

        @Override
        public List<Formula> parts() {
            return arguments;
        }

        @Override
        public <R> R accept(Visitor<R> visitor) {
            return visitor.call(this);
        }
    }
}
