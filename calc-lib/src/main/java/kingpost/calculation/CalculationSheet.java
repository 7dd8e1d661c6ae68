package kingpost.calculation;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.function.Supplier;
import javax.measure.Unit;
import kingpost.calculation.Line.Checked;
import kingpost.calculation.Line.Column;
import kingpost.calculation.Line.Computed;
import kingpost.calculation.Line.Given;
import kingpost.calculation.Line.Tabulated;
import kingpost.derivation.Block;
import kingpost.derivation.Derivation;
import kingpost.derivation.Phrase;
import kingpost.units.CalculationException;
import kingpost.units.EngineeringFormat;
import kingpost.units.Quantity;
import kingpost.units.UnitMismatchException;

/**
 * A documented calculation, line by line: data, formulas, checks and tables. Each line may use the names of lines
 * above it. A name that is used again replaces the earlier value, and the sheet says so at both lines and at every
 * line that still stands on the earlier one.
 *
 * <p>Values are kept unrounded; what is shown has three significant figures unless {@link #figures} says otherwise,
 * and given values all the figures they were given with. For one thread.
 */
public final class CalculationSheet {

    private final String title;
    private final List<Line> lines = new ArrayList<>();
    private final Map<String, Line> current = new LinkedHashMap<>();
    private final Map<String, Quantity> overrides = new LinkedHashMap<>();
    private final Set<String> overridden = new LinkedHashSet<>();
    private final List<Assumption> assumptions = new ArrayList<>();
    private Lettering lettering = new Lettering(3);

    private CalculationSheet(String title) {
        this.title = title;
    }

    /** A sheet without lines. */
    public static CalculationSheet titled(String title) {
        return new CalculationSheet(title);
    }

    /** A sheet without lines that keeps what is set: the figures, and the values for this run. */
    public CalculationSheet next(String nextTitle) {
        CalculationSheet next = titled(nextTitle);
        next.lettering = lettering;
        next.overrides.putAll(overrides);
        next.overridden.addAll(overridden);
        return next;
    }

    /**
     * Shows calculated values with {@code significant} figures.
     *
     * @throws CalculationException when the number is not from 1 to 15
     */
    public CalculationSheet figures(int significant) {
        EngineeringFormat.standard().withFigures(significant);
        lettering = new Lettering(significant);
        return this;
    }

    /**
     * Something that the calculation takes for granted, numbered apart from the lines. The same words are not taken
     * twice.
     *
     * @param reference where it comes from; may be empty
     */
    public Assumption assume(String text, String reference) {
        Assumption made = new Assumption(assumptions.size() + 1, text.strip(), reference.strip());
        for (Assumption other : assumptions) {
            if (other.text().equals(made.text()) && other.reference().equals(made.reference())) {
                return other;
            }
        }
        assumptions.add(made);
        return made;
    }

    /** What the calculation takes for granted, in order. */
    public List<Assumption> assumptions() {
        return List.copyOf(assumptions);
    }

    /** How values are rounded and units converted, in two sentences. */
    public String policy() {
        return "Given values are written as they were given; calculated values are carried on unrounded and shown to "
                + lettering.figures() + " significant figures. Units are converted by exact factors (1 in = 25.4 mm, "
                + "1 lb = 0.45359237 kg, standard gravity 9.80665 m/s\u00b2).";
    }

    /**
     * Lets {@code value} take the place of what the line {@code given(name, ...)} says, for this run; the line shows
     * both.
     */
    public CalculationSheet override(String name, Quantity value) {
        overrides.put(SymbolName.checked(name), present(name, value));
        return this;
    }

    /** Names that were set for this run, but that no line has given yet. */
    public Set<String> unusedOverrides() {
        Set<String> unused = new LinkedHashSet<>(overrides.keySet());
        unused.removeAll(overridden);
        return unused;
    }

    public Given given(String name, Quantity value, String description) {
        return given(name, value, description, "");
    }

    /**
     * A value that someone gives.
     *
     * @throws CalculationException when the name cannot be one, or a value set for this run is of another kind
     */
    public Given given(String name, Quantity value, String description, String reference) {
        SymbolName.checked(name);
        present(name, value);
        Quantity set = overrides.get(name);
        if (set == null) {
            return define(name, new Given(next(), name, value, Optional.empty(), description, reference));
        }
        SettingProblem.require(name, value, set);
        overridden.add(name);
        return define(name, new Given(next(), name, set, Optional.of(value), description, reference));
    }

    public Computed formula(String name, String text, Unit<?> unit, String description) {
        return formula(name, text, unit, description, "");
    }

    /**
     * A value worked out from lines above, answered in {@code unit}.
     *
     * @throws CalculationException when the formula cannot be read or worked out, or its answer is of another kind
     *                              than {@code unit}
     */
    public Computed formula(String name, String text, Unit<?> unit, String description, String reference) {
        SymbolName.checked(name);
        if (unit == null) {
            throw new CalculationException(name + ": the unit of the answer is missing; give one, as in mm2, or leave"
                    + " it out.");
        }
        return compute(name, text, value -> value.to(unit), description, reference);
    }

    public Computed formula(String name, String text, String description) {
        return formula(name, text, description, "");
    }

    /** A value worked out from lines above, in a unit that suits. */
    public Computed formula(String name, String text, String description, String reference) {
        return compute(name, text, lettering::chosen, description, reference);
    }

    private Computed compute(String name, String text, Function<Quantity, Quantity> inUnit, String description,
                             String reference) {
        SymbolName.checked(name);
        Formula formula = at(name, () -> Formula.parse(text));
        Map<String, Operand> operands = at(name, () -> operands(formula.names()));
        Quantity value = at(name + " = " + text.strip(), () -> inUnit.apply(evaluate(formula, operands)));
        return define(name, new Computed(next(), name, text.strip(), formula, operands, value, description, reference));
    }

    public Checked check(String text, String description) {
        return check(text, description, "");
    }

    /**
     * A comparison of two formulas, with its verdict. A check that is not satisfied is a result, not an error.
     *
     * @throws CalculationException when it cannot be read or worked out, or its sides are of different kinds
     */
    public Checked check(String text, String description, String reference) {
        Comparison comparison = FormulaParser.check(text);
        Map<String, Operand> operands = operands(comparison.names());
        Verdict verdict = at("Check " + text.strip(), () -> inOneUnit(comparison, Verdict.of(
                evaluate(comparison.left(), operands), comparison.sign(), evaluate(comparison.right(), operands))));
        return add(new Checked(next(), text.strip(), comparison.left(), comparison.right(), operands, verdict,
                description, reference));
    }

    /**
     * Formulas worked out for each value of a range. The range's symbol and the columns' names stand for the row's
     * values there, and mean nothing afterwards.
     *
     * @throws CalculationException when a formula cannot be read, or cannot be worked out for one of the values
     */
    public Tabulated table(String description, Range range, Column... columns) {
        return table(description, "", range, columns);
    }

    /** The same, with where the formulas come from. */
    public Tabulated table(String description, String reference, Range range, Column... columns) {
        TableMaker maker = new TableMaker(this::operands, current.keySet(), lettering);
        return add(maker.make(next(), range, List.of(columns), description, reference));
    }

    /**
     * The value that {@code name} has now.
     *
     * @throws CalculationException when no line gives it
     */
    public Quantity value(String name) {
        return operand(name).value();
    }

    /** All lines, in order. */
    public List<Line> lines() {
        return List.copyOf(lines);
    }

    /** The line as it is shown on its own, with what is to be said of names used again. */
    public List<Block> blocks(Line line) {
        return SheetWriter.line(line, lettering, new LineHistory(lines));
    }

    /** The line's answers alone, for a key; none for a value that was given. */
    public List<Block> answers(Line line) {
        return SheetWriter.answers(line, lettering, new LineHistory(lines));
    }

    /** The whole sheet: what it takes for granted, its lines, how it rounds. */
    public Derivation derivation() {
        List<Block> blocks = new ArrayList<>();
        if (!assumptions.isEmpty()) {
            blocks.add(Block.Section.of("Assumptions", List.of(new Block.Listing(true,
                    assumptions.stream().map(assumption -> Phrase.of(assumption.sentence())).toList()))));
        }
        List<Block> written = lines.isEmpty() ? List.of(Block.Prose.of("There are no lines yet."))
                : SheetWriter.lines(lines, lettering, new LineHistory(lines));
        if (assumptions.isEmpty()) {
            blocks.addAll(written);
        } else {
            blocks.add(Block.Section.of("Calculation", written));
        }
        blocks.add(Block.Section.of("Units and rounding", List.of(Block.Prose.of(policy()))));
        return new Derivation(title, blocks);
    }

    private static Quantity present(String name, Quantity value) {
        if (value == null) {
            throw new CalculationException(name + ": its value is missing; give a quantity, as in kN(12).");
        }
        return value;
    }

    private int next() {
        return lines.size() + 1;
    }

    private <L extends Line> L define(String name, L line) {
        L kept = add(line);
        current.put(name, kept);
        return kept;
    }

    /** A line that says again exactly what one in force says, as when a cell is run twice, is not written twice. */
    private <L extends Line> L add(L line) {
        for (Line other : lines) {
            boolean inForce = LineHistory.nameOf(other).map(name -> current.get(name) == other).orElse(true);
            if (inForce && LineHistory.sayTheSame(line, other)) {
                @SuppressWarnings("unchecked")
                L same = (L) other;
                return same;
            }
        }
        lines.add(line);
        return line;
    }

    private Map<String, Operand> operands(Set<String> names) {
        Map<String, Operand> operands = new LinkedHashMap<>();
        for (String name : names) {
            if (!name.equals(SymbolName.PI)) {
                operands.put(name, operand(name));
            }
        }
        return operands;
    }

    private Operand operand(String name) {
        Line line = current.get(name);
        if (line == null) {
            throw new UnknownNames(current.keySet()).error(name);
        }
        return line instanceof Given given
                ? new Operand(given.value(), true, given.number())
                : new Operand(((Computed) line).value(), false, line.number());
    }

    /** Both sides in the unit of the one that is written out or has a name, or in one that suits. */
    private Verdict inOneUnit(Comparison comparison, Verdict verdict) {
        Unit<?> unit = comparison.right().parts().isEmpty() ? verdict.right().getUnit()
                : comparison.left().parts().isEmpty() ? verdict.left().getUnit()
                : lettering.chosen(verdict.right()).getUnit();
        return new Verdict(verdict.left().to(unit), verdict.sign(), verdict.right().to(unit), verdict.satisfied(),
                verdict.usage());
    }

    private Quantity evaluate(Formula formula, Map<String, Operand> operands) {
        UnknownNames.refuseAmbiguous(formula, current.keySet());
        return Evaluation.of(formula, operands);
    }

    /** Does it, and says the place first when it fails. */
    static <T> T at(String place, Supplier<T> step) {
        try {
            return step.get();
        } catch (UnitMismatchException e) {
            throw e.at(place);
        } catch (CalculationException e) {
            throw new CalculationException(place + ": " + e.getMessage(), e);
        }
    }
}
