package kingpost.diagram;

import java.util.ArrayList;
import java.util.List;
import kingpost.moving.InfluenceLine;
import kingpost.moving.InfluenceLine.Ordinate;
import kingpost.moving.UniformEffect;
import kingpost.svg.Element;
import kingpost.svg.Outline;
import kingpost.svg.Style;

/** An influence line drawn to scale about its base, under the truss whose line it is. */
final class InfluenceCurve {

    private static final double HEIGHT = 74;
    private static final double SIGN = 16;
    private static final String ABOVE = InfluenceFigure.ABOVE;
    private static final String BELOW = InfluenceFigure.BELOW;

    private final InfluenceLine line;
    private final TrussSketch sketch;
    private final double base;
    private final double scale;

    /** @param top of the room for it, px */
    InfluenceCurve(InfluenceLine line, TrussSketch sketch, double top) {
        this.line = line;
        this.sketch = sketch;
        double high = Math.max(0, line.highest().value());
        double low = Math.min(0, line.lowest().value());
        this.scale = high - low == 0 ? 0 : 2 * HEIGHT / (high - low) * (high == 0 || low == 0 ? 0.6 : 1);
        this.base = top + high * scale;
    }

    Place at(double x, double value) {
        return new Place(x * sketch.layout().scale(), base - value * scale);
    }

    void draw() {
        for (int i = 1; i < line.ordinates().size(); i++) {
            Ordinate a = line.ordinates().get(i - 1);
            Ordinate b = line.ordinates().get(i);
            if (a.value() * b.value() < 0) {
                double zero = a.x() + (b.x() - a.x()) * a.value() / (a.value() - b.value());
                fill(a.x(), a.value(), zero, 0);
                fill(zero, 0, b.x(), b.value());
            } else {
                fill(a.x(), a.value(), b.x(), b.value());
            }
            sketch.sheet().line(Layer.FORCES, at(a.x(), a.value()), at(b.x(), b.value()), Ink.BLACK, 1.8);
        }
        sketch.sheet().line(Layer.GUIDES, at(line.start(), 0), at(line.end(), 0), Ink.MEMBER, 1.2);
        for (Ordinate end : List.of(line.ordinates().get(0), line.ordinates().get(line.ordinates().size() - 1))) {
            if (end.value() != 0) {
                sketch.sheet().line(Layer.FORCES, at(end.x(), 0), at(end.x(), end.value()), Ink.BLACK, 1.8);
            }
        }
    }

    private void fill(double fromX, double from, double toX, double to) {
        sketch.sheet().add(Layer.BACKGROUND, new Element.Path(Outline.from(at(fromX, 0).point())
                .lineTo(at(fromX, from).point()).lineTo(at(toX, to).point()).lineTo(at(toX, 0).point()).close(),
                Style.fill(from + to > 0 ? ABOVE : BELOW)));
    }

    /** Faint lines from the joints on the way down to the line. */
    void guides(double from) {
        for (Ordinate o : line.ordinates()) {
            Place top = new Place(o.x() * sketch.layout().scale(), from);
            Place end = at(o.x(), Math.max(0, o.value()));
            sketch.sheet().add(Layer.BACKGROUND, new Element.Line(top.point(), end.point(),
                    Ink.line(Ink.FAINT, 0.9).dashed(2, 4)), Patch.line(top, end, 0.9));
        }
    }

    /** An upright from the base to the line with its value at the end. */
    void ordinate(double x, double value) {
        Place tip = at(x, value);
        Place foot = at(x, 0);
        if (value == 0) {
            label(foot, "0", new Place(0, 1), 1);
            return;
        }
        sketch.sheet().line(Layer.GUIDES, foot, tip, Ink.MEMBER, 1);
        label(tip, InfluenceFigure.number(value), new Place(0, value > 0 ? -1 : 1), 0);
    }

    private void label(Place tip, String value, Place way, int rank) {
        Caption caption = sketch.lettering().caption(value, Ink.BLACK);
        List<Spot> spots = new ArrayList<>();
        for (double gap : new double[] {5, 9, 14, 20, 27}) {
            for (double turn : new double[] {0, 35, -35, 60, -60, 90, -90}) {
                Place side = Place.towards(way.degrees() + turn);
                spots.add(new Spot(Spots.beside(tip, side, gap, caption), 0, tip.plus(side.times(gap - 1)),
                        gap / 12 + Math.abs(turn) / 90));
            }
        }
        sketch.sheet().label(new Label(caption, spots, "ordinate", rank));
    }

    /** A plus or a minus in each stretch of one sign. */
    void signs() {
        List<Place> stretch = new ArrayList<>();
        for (UniformEffect.Part part : UniformEffect.parts(line)) {
            stretch.clear();
            stretch.add(at(part.from(), 0));
            for (Ordinate o : line.ordinates()) {
                if (o.x() >= part.from() && o.x() <= part.to() && o.value() * part.area() >= 0) {
                    stretch.add(at(o.x(), o.value()));
                }
            }
            stretch.add(at(part.to(), 0));
            Caption caption = Caption.of(part.area() > 0 ? "+" : "\u2212", SIGN, Ink.BLACK).inBold();
            List<Spot> spots = RoomIn.polygon(List.copyOf(stretch), SIGN / 2);
            if (!spots.isEmpty()) {
                sketch.sheet().label(new Label(caption, spots, "sign", 2));
            }
        }
    }
}
