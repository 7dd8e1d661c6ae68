package kingpost.notebook;

import java.util.Optional;
import java.util.Set;
import javax.measure.Unit;
import kingpost.calculation.Assumption;
import kingpost.calculation.CalculationSheet;
import kingpost.calculation.Line;
import kingpost.calculation.Line.Column;
import kingpost.calculation.Range;
import kingpost.calculation.SettingProblem;
import kingpost.calculation.Verdict;
import kingpost.units.CalculationException;
import kingpost.units.Quantity;

/**
 * Calculation lines in a cell: each is shown at once, symbol = formula = numbers with units = answer, and is a
 * quantity that later lines, and Java, can use.
 *
 * <pre>{@code
 * given("N", kN(257), "largest chord force");
 * given("f_all", MPa(165), "allowable stress");
 * formula("A_req", "N / f_all", mm2, "required area");
 * check("A_req <= 1800 mm2", "flat bar as drawn");
 * }</pre>
 *
 * <p>The lines of a session make one sheet, {@link #sheet()}. The grammar of formulas is in
 * {@link kingpost.calculation}.
 */
public final class SheetWords {

    /** The sheet of the session: the notebook's state, as its variables are. */
    private static CalculationSheet sheet = CalculationSheet.titled("Calculation");

    private SheetWords() {
    }

    /** Starts a sheet without lines, with a title of its own. */
    public static synchronized void newSheet(String title) {
        sheet = sheet.next(title);
    }

    /** The whole sheet so far, as one document. */
    public static synchronized SheetView sheet() {
        return SheetView.of(sheet);
    }

    /** Shows calculated values with this many significant figures from now on; three unless set. */
    public static synchronized void figures(int significant) {
        sheet.figures(significant);
    }

    /** A value that someone gives: {@code given("N", kN(257), "largest chord force")}. */
    public static Quantity given(String name, Quantity value, String description) {
        return given(name, value, description, "");
    }

    /** A value that someone gives, and where it comes from: a clause, a drawing. */
    public static synchronized Quantity given(String name, Quantity value, String description, String reference) {
        return shown(sheet.given(name, value, description, reference)).value();
    }

    /** A value worked out from names above it, answered in {@code unit}. */
    public static Quantity formula(String name, String text, Unit<?> unit, String description) {
        return formula(name, text, unit, description, "");
    }

    /** A value worked out from names above it, and where the formula comes from. */
    public static synchronized Quantity formula(String name, String text, Unit<?> unit, String description,
                                                String reference) {
        return shown(sheet.formula(name, text, unit, description, reference)).value();
    }

    /** A value worked out from names above it, in a unit that suits. */
    public static synchronized Quantity formula(String name, String text, String description) {
        return shown(sheet.formula(name, text, description)).value();
    }

    /** A comparison with its verdict: {@code check("sigma <= f_all", "tie")}. */
    public static Verdict check(String text, String description) {
        return check(text, description, "");
    }

    /** A comparison with its verdict, and where its limit comes from. */
    public static synchronized Verdict check(String text, String description, String reference) {
        return shown(sheet.check(text, description, reference)).verdict();
    }

    /** Formulas over a range: {@code table("Stress", over("A", mm2(1000), mm2(2000), mm2(250)), column("sigma", "N/A", MPa))}. */
    public static Line.Tabulated table(String description, Range range, Column... columns) {
        return table(description, "", range, columns);
    }

    /** Formulas over a range, and where they come from. */
    public static synchronized Line.Tabulated table(String description, String reference, Range range, Column... columns) {
        return shown(sheet.table(description, reference, range, columns));
    }

    /** Something that the calculation takes for granted; it gets the next number. */
    public static Assumption assume(String text) {
        return assume(text, "");
    }

    /** Something that the calculation takes for granted, and where that comes from. */
    public static synchronized Assumption assume(String text, String reference) {
        if (text == null || text.isBlank()) {
            throw new CalculationException("Assumption: it says nothing; write a sentence, as in assume(\"Joints are pins.\").");
        }
        Assumption made = sheet.assume(text, reference == null ? "" : reference);
        CellDisplay.sink().display(SheetView.assumption(sheet, made), Optional.empty());
        CellDisplay.shown(made);
        return made;
    }

    /** The head of a calculation, such as {@code titleBlock("Boat shed").sheet("S-12").revision("B")}. */
    public static TitleBlock titleBlock(String project) {
        return TitleBlock.of(project);
    }

    /** The values that a name takes in a table, from the first by steps as far as the last. */
    public static Range over(String name, Quantity first, Quantity last, Quantity step) {
        return Range.of(name, first, last, step);
    }

    /** The values that a name takes in a table, one by one. */
    public static Range overEach(String name, Quantity... values) {
        return Range.of(name, values);
    }

    /** A column of a table, answered in {@code unit}. */
    public static Column column(String name, String text, Unit<?> unit) {
        return Column.of(name, text, unit);
    }

    /** A column of a table, in a unit that suits. */
    public static Column column(String name, String text) {
        return Column.of(name, text);
    }

    /**
     * Lets {@code text}, such as {@code "12kN"}, take the place of what the notebook gives {@code name} in a line, for
     * this run.
     *
     * @throws SettingProblem when the text is no quantity
     */
    public static synchronized void setForThisRun(String name, String text) {
        sheet.override(name, ForThisRun.quantity(name, text));
    }

    /** The value for this run of a variable that the notebook gives {@code inNotebook}. */
    public static Quantity setForThisRun(String name, Quantity inNotebook, String text) {
        return ForThisRun.quantity(name, inNotebook, text);
    }

    /** The value for this run of a variable that is a number. */
    public static double setForThisRun(String name, double inNotebook, String text) {
        return ForThisRun.number(name, inNotebook, text);
    }

    /** The value for this run of a variable that is a whole number. */
    public static int setForThisRun(String name, int inNotebook, String text) {
        return ForThisRun.whole(name, inNotebook, text);
    }

    /** The value for this run of a variable that is true or false. */
    public static boolean setForThisRun(String name, boolean inNotebook, String text) {
        return ForThisRun.truth(name, inNotebook, text);
    }

    /** The value for this run of a variable that is a text. */
    public static String setForThisRun(String name, String inNotebook, String text) {
        return ForThisRun.words(name, inNotebook, text);
    }

    /** Names set for this run that no line has given. */
    public static synchronized Set<String> unusedSettings() {
        return sheet.unusedOverrides();
    }

    private static <L extends Line> L shown(L line) {
        CellDisplay.sink().display(SheetView.line(sheet, line), Optional.empty());
        CellDisplay.shown(line.accept(new WhatACellGets()));
        return line;
    }

    /** What a line's word returns. */
    private static final class WhatACellGets implements Line.Visitor<Object> {
        @Override
        public Object given(Line.Given given) {
            return given.value();
        }

        @Override
        public Object computed(Line.Computed computed) {
            return computed.value();
        }

        @Override
        public Object checked(Line.Checked checked) {
            return checked.verdict();
        }

        @Override
        public Object tabulated(Line.Tabulated tabulated) {
            return tabulated;
        }
    }
}
