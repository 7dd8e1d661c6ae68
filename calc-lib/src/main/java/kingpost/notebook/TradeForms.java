package kingpost.notebook;

import kingpost.form.Form;
import kingpost.truss.TrussBuilder;
import kingpost.units.Quantity;

/**
 * The trade's ready-made forms, each by span, rise and panels, as words of {@link Truss}.
 *
 * <pre>{@code
 * var bridge = Truss.pratt(24, 4, 6).units(m, kN)
 *         .named("Creek bridge")
 *         .loads("L1 L2 L3 L4 L5", 40, DOWN)
 *         .build();
 * }</pre>
 *
 * <p>The left bearing is at (0, 0). Joints are {@code L0, L1 ...} along the lower chord from left to right,
 * {@code U1, U2 ...} along the upper one, {@code M1, M2 ...} between them; members {@code L0-L1}, {@code U1-L1}. The
 * whole rule is told in {@link kingpost.form}. A pin at the left bearing and a roller at the right one hold the truss,
 * unless supports are written. Bare numbers are in the units given by {@code units}.
 *
 * <p>Each method throws {@link kingpost.units.CalculationException} when the span or the rise is not a length above
 * zero, or the form cannot have so many panels.
 */
public abstract class TradeForms {

    TradeForms() {
    }

    /** A Pratt truss: parallel chords, posts, diagonals that fall towards midspan. Three panels or more. */
    public static TrussBuilder<Truss> pratt(double span, double rise, int panels) {
        return Form.PRATT.of(span, rise, panels, Truss::of);
    }

    /** A Pratt truss: parallel chords, posts, diagonals that fall towards midspan. Three panels or more. */
    public static TrussBuilder<Truss> pratt(Quantity span, Quantity rise, int panels) {
        return Form.PRATT.of(span, rise, panels, Truss::of);
    }

    /** A Howe truss: parallel chords, posts, diagonals that rise towards midspan. Three panels or more. */
    public static TrussBuilder<Truss> howe(double span, double rise, int panels) {
        return Form.HOWE.of(span, rise, panels, Truss::of);
    }

    /** A Howe truss: parallel chords, posts, diagonals that rise towards midspan. Three panels or more. */
    public static TrussBuilder<Truss> howe(Quantity span, Quantity rise, int panels) {
        return Form.HOWE.of(span, rise, panels, Truss::of);
    }

    /** A Warren truss without verticals: triangles in a row. Two panels or more. */
    public static TrussBuilder<Truss> warren(double span, double rise, int panels) {
        return Form.WARREN.of(span, rise, panels, Truss::of);
    }

    /** A Warren truss without verticals: triangles in a row. Two panels or more. */
    public static TrussBuilder<Truss> warren(Quantity span, Quantity rise, int panels) {
        return Form.WARREN.of(span, rise, panels, Truss::of);
    }

    /** A Warren truss with a post at every inner panel point. An even number of panels from four. */
    public static TrussBuilder<Truss> warrenWithVerticals(double span, double rise, int panels) {
        return Form.WARREN_WITH_VERTICALS.of(span, rise, panels, Truss::of);
    }

    /** A Warren truss with a post at every inner panel point. An even number of panels from four. */
    public static TrussBuilder<Truss> warrenWithVerticals(Quantity span, Quantity rise, int panels) {
        return Form.WARREN_WITH_VERTICALS.of(span, rise, panels, Truss::of);
    }

    /** A Parker truss: a Pratt truss whose upper chord is broken at every joint. Four panels or more. */
    public static TrussBuilder<Truss> parker(double span, double rise, int panels) {
        return Form.PARKER.of(span, rise, panels, Truss::of);
    }

    /** A Parker truss: a Pratt truss whose upper chord is broken at every joint. Four panels or more. */
    public static TrussBuilder<Truss> parker(Quantity span, Quantity rise, int panels) {
        return Form.PARKER.of(span, rise, panels, Truss::of);
    }

    /** A K truss: posts with a joint at half height. An even number of panels from four. */
    public static TrussBuilder<Truss> kTruss(double span, double rise, int panels) {
        return Form.K.of(span, rise, panels, Truss::of);
    }

    /** A K truss: posts with a joint at half height. An even number of panels from four. */
    public static TrussBuilder<Truss> kTruss(Quantity span, Quantity rise, int panels) {
        return Form.K.of(span, rise, panels, Truss::of);
    }

    /** A Baltimore truss: a Pratt truss whose panels are subdivided. An even number of panels from six. */
    public static TrussBuilder<Truss> baltimore(double span, double rise, int panels) {
        return Form.BALTIMORE.of(span, rise, panels, Truss::of);
    }

    /** A Baltimore truss: a Pratt truss whose panels are subdivided. An even number of panels from six. */
    public static TrussBuilder<Truss> baltimore(Quantity span, Quantity rise, int panels) {
        return Form.BALTIMORE.of(span, rise, panels, Truss::of);
    }

    /** A bowstring truss: the upper chord a parabola from bearing to bearing. Four panels or more. */
    public static TrussBuilder<Truss> bowstring(double span, double rise, int panels) {
        return Form.BOWSTRING.of(span, rise, panels, Truss::of);
    }

    /** A bowstring truss: the upper chord a parabola from bearing to bearing. Four panels or more. */
    public static TrussBuilder<Truss> bowstring(Quantity span, Quantity rise, int panels) {
        return Form.BOWSTRING.of(span, rise, panels, Truss::of);
    }

    /** A Pratt roof truss: rafters, posts, diagonals that rise towards midspan. An even number of panels from four. */
    public static TrussBuilder<Truss> prattRoof(double span, double rise, int panels) {
        return Form.PRATT_ROOF.of(span, rise, panels, Truss::of);
    }

    /** A Pratt roof truss: rafters, posts, diagonals that rise towards midspan. An even number of panels from four. */
    public static TrussBuilder<Truss> prattRoof(Quantity span, Quantity rise, int panels) {
        return Form.PRATT_ROOF.of(span, rise, panels, Truss::of);
    }

    /** A Howe roof truss: rafters, posts, diagonals that fall towards midspan. An even number of panels from four. */
    public static TrussBuilder<Truss> howeRoof(double span, double rise, int panels) {
        return Form.HOWE_ROOF.of(span, rise, panels, Truss::of);
    }

    /** A Howe roof truss: rafters, posts, diagonals that fall towards midspan. An even number of panels from four. */
    public static TrussBuilder<Truss> howeRoof(Quantity span, Quantity rise, int panels) {
        return Form.HOWE_ROOF.of(span, rise, panels, Truss::of);
    }

    /** A king-post truss: two rafters, a tie, a post under the ridge. */
    public static TrussBuilder<Truss> kingPost(double span, double rise) {
        return kingPost(span, rise, 2);
    }

    /** A king-post truss: two rafters, a tie, a post under the ridge. */
    public static TrussBuilder<Truss> kingPost(Quantity span, Quantity rise) {
        return kingPost(span, rise, 2);
    }

    /** A king-post truss: two panels for the plain form, four for the one with a strut under each rafter. */
    public static TrussBuilder<Truss> kingPost(double span, double rise, int panels) {
        return Form.KING_POST.of(span, rise, panels, Truss::of);
    }

    /** A king-post truss: two panels for the plain form, four for the one with a strut under each rafter. */
    public static TrussBuilder<Truss> kingPost(Quantity span, Quantity rise, int panels) {
        return Form.KING_POST.of(span, rise, panels, Truss::of);
    }

    /**
     * A queen-post truss with a brace {@code U1-L2} across its middle panel. Without the brace that panel is a
     * mechanism, which stands under symmetrical loads only.
     */
    public static TrussBuilder<Truss> queenPost(double span, double rise) {
        return Form.QUEEN_POST.of(span, rise, 3, Truss::of);
    }

    /**
     * A queen-post truss with a brace {@code U1-L2} across its middle panel. Without the brace that panel is a
     * mechanism, which stands under symmetrical loads only.
     */
    public static TrussBuilder<Truss> queenPost(Quantity span, Quantity rise) {
        return Form.QUEEN_POST.of(span, rise, 3, Truss::of);
    }

    /** A Fink truss: struts square to the rafters. Four panels of the rafters, or eight (a compound truss). */
    public static TrussBuilder<Truss> fink(double span, double rise, int panels) {
        return Form.FINK.of(span, rise, panels, Truss::of);
    }

    /** A Fink truss: struts square to the rafters. Four panels of the rafters, or eight (a compound truss). */
    public static TrussBuilder<Truss> fink(Quantity span, Quantity rise, int panels) {
        return Form.FINK.of(span, rise, panels, Truss::of);
    }

    /** A scissors truss: lower chords that rise to a third of the rise. An even number of panels from four. */
    public static TrussBuilder<Truss> scissors(double span, double rise, int panels) {
        return Form.SCISSORS.of(span, rise, panels, Truss::of);
    }

    /** A scissors truss: lower chords that rise to a third of the rise. An even number of panels from four. */
    public static TrussBuilder<Truss> scissors(Quantity span, Quantity rise, int panels) {
        return Form.SCISSORS.of(span, rise, panels, Truss::of);
    }
}
