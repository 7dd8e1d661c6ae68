package kingpost.form;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Consumer;
import java.util.function.Function;
import kingpost.truss.TrussBuilder;
import kingpost.truss.TrussModel;
import kingpost.units.CalculationException;
import kingpost.units.EngineeringFormat;
import kingpost.units.Quantity;
import kingpost.units.StructuralUnits;

/**
 * A trade form of truss. The names and the arrangement of the members are common practice, no source; how the joints
 * are labelled is this package's own rule, see there.
 */
public enum Form {

    /** Parallel chords, posts, diagonals falling towards midspan. Odd count: the middle one falls to the right. */
    PRATT("Pratt truss", PanelCounts.from(3), Girders::pratt),
    /** Parallel chords, posts, diagonals rising towards midspan. Odd count: the middle one rises to the right. */
    HOWE("Howe truss", PanelCounts.from(3), Girders::howe),
    /** Triangles in a row without posts; the upper joint {@code Ui} stands over the middle of panel i. */
    WARREN("Warren truss", PanelCounts.from(2), Girders::warren),
    /** Diagonals that fall and rise in turn, with a post at every inner panel point. */
    WARREN_WITH_VERTICALS("Warren truss with verticals", PanelCounts.evenFrom(4), Girders::warrenWithVerticals),
    /**
     * A Pratt truss with a broken upper chord: its joints lie on a parabola that stands at half the rise over the
     * bearings. Odd count: the middle panel is level.
     */
    PARKER("Parker truss", PanelCounts.from(4), Girders::parker),
    /** Posts with a joint {@code Mi} at half height, from which two diagonals run to the next post towards midspan. */
    K("K truss", PanelCounts.evenFrom(4), Girders::kTruss),
    /**
     * A Pratt truss of main panels of two panels each: at the middle {@code Mi} of every diagonal and end post hangs a
     * hanger to {@code Li}, and a sub-strut runs to the foot of the main post. Odd number of main panels: the middle
     * diagonal falls to the right.
     */
    BALTIMORE("Baltimore truss", PanelCounts.evenFrom(6), Girders::baltimore),
    /** Upper joints on a parabola from bearing to bearing, posts, and diagonals that fall towards midspan. */
    BOWSTRING("Bowstring truss", PanelCounts.from(4), Girders::bowstring),
    /** A post under the ridge; with four panels also two struts from its foot to the middle of the rafters. */
    KING_POST("King-post truss", PanelCounts.only(2, 4), Roofs::kingPost),
    /**
     * Two posts at the thirds of the span under a straining beam, and one brace {@code U1-L2} between them. Without
     * that brace, as the form is often built, the middle panel is a mechanism that stands under symmetrical loads only.
     */
    QUEEN_POST("Queen-post truss", PanelCounts.only(3), Roofs::queenPost),
    /** Two straight rafters, posts, and diagonals that rise towards midspan: long ones, in tension under roof loads. */
    PRATT_ROOF("Pratt roof truss", PanelCounts.evenFrom(4), Roofs::pratt),
    /** Two straight rafters, posts, and diagonals that fall towards midspan: short ones, in compression. */
    HOWE_ROOF("Howe roof truss", PanelCounts.evenFrom(4), Roofs::howe),
    /**
     * Struts square to the rafters, each half a trussed rafter of its own, joined at the ridge and by a tie: four
     * panels of the rafters (a W between them), or eight (compound, where joint by joint stops).
     */
    FINK("Fink truss", PanelCounts.only(4, 8), Roofs::fink),
    /**
     * Lower chords that rise to a third of the rise at midspan. With four panels they cross there and run on to the
     * middle of the opposite rafter; with more they end there, and posts and diagonals fill the frame.
     */
    SCISSORS("Scissors truss", PanelCounts.evenFrom(4), Roofs::scissors);

    private static final int MOST_PANELS = 50_000;

    private final String title;
    private final PanelCounts counts;
    private final Consumer<SettingOut> drawing;

    Form(String title, PanelCounts counts, Consumer<SettingOut> drawing) {
        this.title = title;
        this.counts = counts;
        this.drawing = drawing;
    }

    /** What the trade calls it: "Pratt truss". */
    public String title() {
        return title;
    }

    /** Whether the form can have so many panels. */
    public boolean allows(int panels) {
        return panels <= MOST_PANELS && counts.allowed().test(panels);
    }

    /** The numbers of panels that it can have, as a phrase: "an even number from 4". */
    public String panelRule() {
        return counts.words();
    }

    /**
     * Joints and members of this form, on a pin at the left and a roller at the right unless other supports are
     * written; units, loads and a name of one's own may follow.
     *
     * @param span   from bearing to bearing, in the unit that {@code units} will give
     * @param rise   from the line of the bearings to the highest joint, in the same unit
     * @param panels how many panels the lower chord has (in a Fink, king-post or scissors truss: the rafters together)
     * @param finish makes the result of {@code build()}
     * @throws CalculationException when span or rise is not a number above zero, or the form cannot have so many panels
     */
    public <T> TrussBuilder<T> of(double span, double rise, int panels, Function<TrussModel, T> finish) {
        List<String> faults = new ArrayList<>();
        checkLength("span", span, plain(span), faults);
        checkLength("rise", rise, plain(rise), faults);
        SettingOut drawn = setOut(span, rise, panels, faults);
        TrussBuilder<T> builder = new TrussBuilder<>(title, finish);
        drawn.joints().forEach((name, place) -> builder.joint(name, place.x(), place.y()));
        return finished(builder, drawn);
    }

    /**
     * The same, with lengths that bring their unit; joints are placed in the unit of the span.
     *
     * @throws CalculationException when span or rise is not a length above zero, or the form cannot have so many panels
     */
    public <T> TrussBuilder<T> of(Quantity span, Quantity rise, int panels, Function<TrussModel, T> finish) {
        List<String> faults = new ArrayList<>();
        checkLength("span", span, faults);
        checkLength("rise", rise, faults);
        boolean lengths = faults.isEmpty();
        SettingOut drawn = setOut(lengths ? span.getValue() : 1, lengths ? rise.in(span.getUnit()) : 0.25, panels,
                faults);
        TrussBuilder<T> builder = new TrussBuilder<>(title, finish);
        drawn.joints().forEach((name, place) -> builder.joint(name, Quantity.of(place.x(), span.getUnit()),
                Quantity.of(place.y(), span.getUnit())));
        return finished(builder, drawn);
    }

    private SettingOut setOut(double span, double rise, int panels, List<String> faults) {
        if (panels > MOST_PANELS) {
            faults.add(title + ": " + panels + " panels are more than can be set out; give at most " + MOST_PANELS
                    + ".");
        } else if (!allows(panels)) {
            faults.add(title + ": it cannot have " + panels + (panels == 1 ? " panel" : " panels") + "; give "
                    + counts.words() + ".");
        }
        if (this == FINK && faults.isEmpty() && 2 * rise >= span) {
            faults.add(title + ": the rise is half the span or more, where struts square to the rafters do not meet"
                    + " the tie; give a rise below half the span.");
        }
        if (!faults.isEmpty()) {
            throw new CalculationException(String.join("\n", faults));
        }
        SettingOut drawn = new SettingOut(span, rise, panels);
        drawing.accept(drawn);
        return drawn;
    }

    private <T> TrussBuilder<T> finished(TrussBuilder<T> builder, SettingOut drawn) {
        drawn.members().forEach(ends -> builder.member(ends.from(), ends.to()));
        String right = drawn.joints().keySet().stream().filter(j -> j.startsWith("L")).reduce((a, b) -> b)
                .orElseThrow();
        return builder.restingOn("L0", right);
    }

    private void checkLength(String what, Quantity length, List<String> faults) {
        if (length == null) {
            faults.add(title + ": the " + what + " is missing; give a length.");
        } else if (!length.isCompatible(StructuralUnits.m)) {
            faults.add(title + ": the " + what + " is " + length + ", which is not a length; give a length, in m for"
                    + " instance.");
        } else {
            checkLength(what, length.getValue(), length.toString(), faults);
        }
    }

    private void checkLength(String what, double value, String shown, List<String> faults) {
        if (!Double.isFinite(value) || value <= 0) {
            faults.add(title + ": the " + what + " is " + shown + "; give a length above zero.");
        }
    }

    private static String plain(double value) {
        return Double.isNaN(value) ? "not a number" : Double.isInfinite(value) ? "infinite"
                : EngineeringFormat.standard().format(Quantity.of(value));
    }
}
