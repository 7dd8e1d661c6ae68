package kingpost.diagram;

import java.util.List;
import java.util.function.Consumer;
import kingpost.truss.TrussModel;

/** Draws a figure of a truss as large as its labels need and as small as a page wants it. */
final class Fitting {

    /** No figure is wider, px. */
    static final double WIDEST = 760;
    /** More room left than this, px, is worth another try. */
    private static final double SPARE = 60;

    private Fitting() {
    }

    /** The sheet with the most comfortable lettering that leaves no label without a place. */
    static Sheet sketch(TrussModel truss, Consumer<TrussSketch> drawing) {
        return sketch(truss, truss.isSpace() ? Lettering.IN_SPACE : Lettering.ALL, drawing);
    }

    /** The same from letterings of the figure's own, the most comfortable first. */
    static Sheet sketch(TrussModel truss, List<Lettering> letterings, Consumer<TrussSketch> drawing) {
        Sheet best = null;
        for (Lettering lettering : letterings) {
            Sheet sheet = fitted(truss, lettering, drawing);
            if (best == null || sheet.homeless().size() < best.homeless().size()) {
                best = sheet;
            }
            if (best.homeless().isEmpty()) {
                break;
            }
        }
        return best;
    }

    /** Drawn smaller until what stands round the truss fits in as well. */
    private static Sheet fitted(TrussModel truss, Lettering lettering, Consumer<TrussSketch> drawing) {
        double width = lettering.width();
        Sheet sheet = drawn(truss, lettering, width, drawing);
        for (int i = 0; i < 4 && sheet.width() > WIDEST; i++) {
            width = Math.max(80, width - (sheet.width() - WIDEST) - 2);
            sheet = drawn(truss, lettering, width, drawing);
        }
        return width < lettering.width() && sheet.width() < WIDEST - SPARE
                ? widened(truss, lettering, width, sheet, drawing) : sheet;
    }

    /** Drawn larger again where it shrank too far, because what lies outside the truss shrank with it. */
    private static Sheet widened(TrussModel truss, Lettering lettering, double width, Sheet small,
                                 Consumer<TrussSketch> drawing) {
        Sheet best = small;
        double low = width;
        double high = lettering.width();
        for (int i = 0; i < 5; i++) {
            double middle = (low + high) / 2;
            Sheet sheet = drawn(truss, lettering, middle, drawing);
            if (sheet.width() <= WIDEST) {
                best = sheet;
                low = middle;
            } else {
                high = middle;
            }
        }
        return best;
    }

    private static Sheet drawn(TrussModel truss, Lettering lettering, double width, Consumer<TrussSketch> drawing) {
        Sheet sheet = new Sheet();
        TrussLayout layout = TrussLayout.filling(truss, width, lettering.height());
        drawing.accept(new TrussSketch(sheet, layout, lettering));
        return sheet;
    }
}
