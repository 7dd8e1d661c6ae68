package kingpost.calculation;

import java.util.List;
import java.util.Optional;
import java.util.Map;
import java.util.function.Function;
import kingpost.calculation.Formula.Amount;
import kingpost.calculation.Formula.Call;
import kingpost.calculation.Formula.Negative;
import kingpost.calculation.Formula.Power;
import kingpost.calculation.Formula.Product;
import kingpost.calculation.Formula.Quotient;
import kingpost.calculation.Formula.Sum;
import kingpost.calculation.Formula.Symbol;
import kingpost.units.CalculationException;
import kingpost.units.Quantity;
import kingpost.units.StructuralUnits;

/**
 * Works a formula out, units and all.
 *
 * @param symbols the value of each name
 */
record Evaluation(Function<String, Quantity> symbols) implements Formula.Visitor<Quantity> {

    private static final int MOST_PARTS = 6;
    private static final int LARGEST_POWER = 12;

    /** The value of {@code formula} with these values for its names. */
    static Quantity of(Formula formula, Map<String, Operand> operands) {
        return formula.accept(new Evaluation(name -> name.equals(SymbolName.PI)
                ? Quantity.of(Math.PI) : operands.get(name).value()));
    }

    @Override
    public Quantity amount(Amount amount) {
        return amount.value();
    }

    @Override
    public Quantity symbol(Symbol symbol) {
        return symbols.apply(symbol.name());
    }

    @Override
    public Quantity negative(Negative negative) {
        return negative.value().accept(this).negate();
    }

    @Override
    public Quantity sum(Sum sum) {
        Quantity left = sum.left().accept(this);
        Quantity right = sum.right().accept(this);
        return sum.minus() ? left.subtract(right) : left.add(right);
    }

    @Override
    public Quantity product(Product product) {
        return product.left().accept(this).multiply(product.right().accept(this));
    }

    @Override
    public Quantity quotient(Quotient quotient) {
        return quotient.above().accept(this).divide(quotient.below().accept(this));
    }

    @Override
    public Quantity power(Power power) {
        Quantity base = power.base().accept(this);
        Quantity exponent = power.exponent().accept(this);
        if (!exponent.isCompatible(StructuralUnits.one)) {
            throw new CalculationException("Cannot raise " + base + " to the power " + exponent + ": the exponent is "
                    + MathFunction.kind(exponent) + ", not a plain number; check the units.");
        }
        double number = exponent.in(StructuralUnits.one);
        return base.isCompatible(StructuralUnits.one) ? plainPower(base, number) : power(base, number);
    }

    @Override
    public Quantity call(Call call) {
        List<Quantity> arguments = call.arguments().stream().map(argument -> argument.accept(this)).toList();
        return call.function().apply(arguments);
    }

    private static Quantity plainPower(Quantity base, double exponent) {
        double number = base.in(StructuralUnits.one);
        if (number < 0 && exponent != Math.rint(exponent) || number == 0 && exponent < 0) {
            throw new CalculationException("Cannot raise " + base + " to the power " + Quantity.of(exponent)
                    + ": there is no such number; check the signs.");
        }
        return Quantity.of(Math.pow(number, exponent));
    }

    /** A unit can be raised to whole powers, and to parts of one where it is itself such a power: (b*h^3)^(1/4). */
    private static Quantity power(Quantity base, double exponent) {
        for (int parts = 1; parts <= MOST_PARTS && Math.abs(exponent) <= LARGEST_POWER; parts++) {
            double whole = Math.rint(exponent * parts);
            if (Math.abs(exponent * parts - whole) < 1e-12) {
                Optional<Quantity> root = parts == 1 ? Optional.of(base)
                        : parts == 2 ? Optional.of(base.sqrt()) : base.root(parts);
                if (root.isPresent()) {
                    return root.get().pow((int) whole);
                }
            }
        }
        throw new CalculationException("Cannot raise " + base + " to the power " + Quantity.of(exponent)
                + (base.getValue() < 0 ? ": it is negative; check the signs."
                : ": its unit has no such power; divide it by one of its unit first, as in (x / 1 MPa)^(2/3)."));
    }
}
