package kingpost.diagram;

import kingpost.svg.Svg;
import kingpost.truss.TrussModel;

/** A truss as it was given: joints, members, supports, loads and its main lengths; in space in several views. */
public final class TrussFigure {

    private TrussFigure() {
    }

    /** The figure of {@code truss}. */
    public static Svg of(TrussModel truss) {
        if (truss.isSpace()) {
            return Views.of(truss, Fitting.sketch(truss, TrussFigure::draw), member -> Views.PLAIN).toSvg(truss.name(),
                    new TrussWords(truss).description());
        }
        return Fitting.sketch(truss, TrussFigure::draw).toSvg(truss.name(), new TrussWords(truss).description());
    }

    private static void draw(TrussSketch sketch) {
        sketch.members(Ink.MEMBER, 2.6);
        sketch.supports();
        sketch.joints();
        sketch.loads();
        sketch.names();
        sketch.sheet().settle();
        Views.dimensions(sketch);
        sketch.notes();
    }
}
