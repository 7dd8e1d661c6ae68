package kingpost.diagram;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import kingpost.moving.Effect;
import kingpost.moving.InfluenceLine;
import kingpost.moving.InfluenceLine.Ordinate;
import kingpost.moving.TrainEffect.Placement;
import kingpost.moving.TrainEffect.WheelPlace;
import kingpost.moving.UniformEffect;
import kingpost.statics.Source;
import kingpost.svg.Element;
import kingpost.svg.Style;
import kingpost.svg.Svg;
import kingpost.truss.Member;
import kingpost.truss.TrussModel;
import kingpost.units.EngineeringFormat;

/**
 * An influence line beneath its truss: what moves on a way below the truss, and under it the ordinates, upwards where
 * they are positive. The member, reaction or panel asked for is marked on the truss.
 */
public final class InfluenceFigure {

    private static final List<Lettering> LETTERINGS = List.of(new Lettering(13, false, false, 520, 190),
            new Lettering(12, false, false, 600, 220), new Lettering(11, true, true, 650, 240));
    private static final double BAND = 13;
    private static final double WAY = 52;
    private static final double WHEEL = 5;
    private static final double DROP = 30;
    static final String ABOVE = "#dbe6f2";
    static final String BELOW = "#f3dccf";

    private final InfluenceLine line;
    private final ForceText text;

    private InfluenceFigure(InfluenceLine line) {
        this.line = line;
        this.text = new ForceText(line.truss());
    }

    /** The line alone, with the ordinate at each joint of the loaded chord. */
    public static Svg of(InfluenceLine line) {
        InfluenceFigure figure = new InfluenceFigure(line);
        return figure.fitted((sketch, way, curve) -> {
            figure.unit(sketch, way);
            line.ordinates().forEach(o -> curve.ordinate(o.x(), o.value()));
        }, "influence line", figure.words());
    }

    /** The line with a train standing where it does most. */
    public static Svg of(InfluenceLine line, Placement placement) {
        InfluenceFigure figure = new InfluenceFigure(line);
        String wheels = placement.wheels().stream().filter(WheelPlace::on)
                .map(w -> figure.text.given(w.load()) + " over ordinate " + number(w.ordinate()))
                .collect(Collectors.joining(", "));
        return figure.fitted((sketch, way, curve) -> figure.train(sketch, way, curve, placement),
                "a wheel train where it does most", figure.words() + " The train travels to the "
                + (placement.rightward() ? "right" : "left") + " and stands with wheel " + placement.wheel()
                + " at " + placement.joint() + ": " + wheels + ".");
    }

    /** The line with a uniform load on every stretch of one sign: above zero in the upper row, below in the lower. */
    public static Svg of(UniformEffect effect) {
        InfluenceFigure figure = new InfluenceFigure(effect.line());
        return figure.fitted((sketch, way, curve) -> figure.uniform(sketch, way, curve, effect), "a uniform load",
                figure.words() + " A uniform load stands on the stretches where the line is above zero, and on those where"
                + " it is below.");
    }

    private interface Load {
        void draw(TrussSketch sketch, double way, InfluenceCurve curve);
    }

    private Svg fitted(Load load, String what, String words) {
        return Fitting.sketch(line.truss(), LETTERINGS, sketch -> draw(sketch, load))
                .toSvg(line.truss().name() + ": " + what, words);
    }

    private void draw(TrussSketch sketch, Load load) {
        mark(sketch);
        sketch.members(Ink.MEMBER, 2.6);
        sketch.supports();
        sketch.joints();
        if (!sketch.layout().isDense()) {
            sketch.names();
        }
        sketch.sheet().settle();
        double way = sketch.sheet().bounds().bottom() + WAY;
        InfluenceCurve curve = new InfluenceCurve(line, sketch, way + WAY + 10);
        curve.draw();
        curve.guides(way + 8);
        load.draw(sketch, way, curve);
        curve.signs();
        sketch.sheet().settle();
        new Dimensions(sketch.sheet(), sketch.layout()).draw();
        sketch.notes();
    }

    /** A band under the member or the panel; the reaction as an arrow. */
    private void mark(TrussSketch sketch) {
        line.effect().accept(new Effect.Visitor<Void>() {
            @Override
            public Void member(Effect.OfMember effect) {
                Member member = effect.member();
                band(sketch, sketch.layout().from(member), sketch.layout().to(member));
                return null;
            }

            @Override
            public Void reaction(Effect.OfReaction effect) {
                Source.OfReaction reaction = effect.reaction();
                Place joint = sketch.layout().of(reaction.joint());
                Place way = TrussLayout.way(reaction.direction());
                sketch.sheet().arrow(joint.minus(way.times(62)), joint.minus(way.times(28)), Ink.REACTION, 2);
                Caption caption = sketch.lettering().caption(ForceName.of(reaction), Ink.REACTION);
                sketch.sheet().label(new Label(caption, Spots.atArrow(joint.minus(way.times(28)),
                        joint.minus(way.times(62)), caption), reaction.name(), 0));
                return null;
            }

            @Override
            public Void shear(Effect.OfShear effect) {
                Place from = sketch.layout().of(effect.left());
                Place to = sketch.layout().of(effect.right());
                double x = from.middle(to).x();
                Place top = new Place(x, sketch.layout().top() - 14);
                Place bottom = new Place(x, sketch.layout().bottom() + 14);
                band(sketch, from, to);
                sketch.sheet().add(Layer.GUIDES, new Element.Line(top.point(), bottom.point(),
                        Ink.line(Ink.UNKNOWN, 1.6).dashed(10, 3, 2, 3)), Patch.line(top, bottom, 1.6));
                return null;
            }
        });
    }

    private static void band(TrussSketch sketch, Place from, Place to) {
        sketch.sheet().add(Layer.BACKGROUND, new Element.Line(from.point(), to.point(), Ink.line(Ink.MARKED, BAND)),
                Patch.line(from, to, BAND));
    }

    /** The way on which loads move, ticked at the joints that take them. */
    private void way(TrussSketch sketch, double y) {
        double scale = sketch.layout().scale();
        sketch.sheet().line(Layer.GUIDES, new Place(line.start() * scale, y), new Place(line.end() * scale, y), Ink.MEMBER,
                1.6);
        for (Ordinate ordinate : line.ordinates()) {
            Place at = new Place(ordinate.x() * scale, y);
            sketch.sheet().line(Layer.GUIDES, at, at.plus(new Place(0, 5)), Ink.MEMBER, 1.2);
        }
    }

    private void unit(TrussSketch sketch, double y) {
        way(sketch, y);
        double first = line.ordinates().get(0).x();
        double x = (first + 0.6 * (line.ordinates().get(1).x() - first)) * sketch.layout().scale();
        Place tip = new Place(x, y - 2);
        sketch.sheet().arrow(tip.minus(new Place(0, DROP)), tip, Ink.BLACK, 2);
        sketch.sheet().arrow(new Place(x + 9, y - DROP / 2), new Place(x + 34, y - DROP / 2), Ink.MEMBER, 1.1);
        Caption caption = sketch.lettering().caption("1", Ink.BLACK).inBold();
        sketch.sheet().label(new Label(caption, Spots.atArrow(tip, tip.minus(new Place(0, DROP)), caption), "unit load", 0));
    }

    private void train(TrussSketch sketch, double y, InfluenceCurve curve, Placement placement) {
        way(sketch, y);
        double scale = sketch.layout().scale();
        double reach = 0.12 * (line.end() - line.start());
        double left = Double.MAX_VALUE;
        double right = -Double.MAX_VALUE;
        for (WheelPlace wheel : placement.wheels()) {
            if (wheel.x() < line.start() - reach || wheel.x() > line.end() + reach) {
                continue;
            }
            String colour = wheel.on() ? Ink.BLACK : Ink.FAINT;
            Place centre = new Place(wheel.x() * scale, y - WHEEL - 1);
            left = Math.min(left, centre.x());
            right = Math.max(right, centre.x());
            sketch.sheet().add(Layer.JOINTS, new Element.Circle(centre.point(), WHEEL,
                    Style.stroke(colour, 1.5).filled(Ink.PAPER)), Patch.disc(centre, WHEEL));
            Place tip = centre.minus(new Place(0, WHEEL + 1));
            Place tail = tip.minus(new Place(0, DROP * 0.8));
            sketch.sheet().arrow(tail, tip, colour, 1.8);
            String size = text.given(wheel.load());
            Caption caption = sketch.lettering().caption(sketch.lettering().isBare() ? text.bare(size) : size, colour);
            sketch.sheet().label(new Label(caption, Spots.atArrow(tip, tail, caption), "wheel " + wheel.number(), 0));
            if (wheel.on()) {
                curve.ordinate(wheel.x(), wheel.ordinate());
            }
        }
        double ahead = placement.rightward() ? right + 14 : left - 14;
        double on = placement.rightward() ? 26 : -26;
        sketch.sheet().arrow(new Place(ahead, y - WHEEL - 1), new Place(ahead + on, y - WHEEL - 1), Ink.MEMBER, 1.1);
    }

    private void uniform(TrussSketch sketch, double y, InfluenceCurve curve, UniformEffect effect) {
        way(sketch, y);
        double scale = sketch.layout().scale();
        for (UniformEffect.Part part : effect.parts()) {
            double low = part.area() > 0 ? y - 20 : y - 2;
            double from = part.from() * scale;
            double to = part.to() * scale;
            sketch.sheet().add(Layer.GUIDES, new Element.Polygon(List.of(new Place(from, low - 12).point(),
                    new Place(to, low - 12).point(), new Place(to, low).point(), new Place(from, low).point()),
                    Ink.line(Ink.BLACK, 1.2).filled(part.area() > 0 ? ABOVE : BELOW)),
                    Patch.edges(from, low - 12, to, low));
            for (double x = from + 6; x < to - 3; x += 9) {
                sketch.sheet().line(Layer.MEMBERS, new Place(x, low - 12), new Place(x, low), Ink.MEMBER, 0.8);
            }
        }
        String size = EngineeringFormat.given().format(effect.intensity());
        Caption caption = sketch.lettering().caption(size, Ink.BLACK);
        List<Spot> spots = new ArrayList<>();
        for (double part : new double[] {0, 0.2, 0.4, 0.6, 0.8}) {
            double x = (line.start() + part * (line.end() - line.start())) * scale + caption.width() / 2 + 2;
            for (double up : new double[] {42, 30, 48}) {
                spots.add(new Spot(new Place(x, y - up), 0, new Place(x, y - up), part + (up == 42 ? 0 : 0.1)));
            }
        }
        sketch.sheet().label(new Label(caption, spots, "load", 0));
        line.ordinates().forEach(o -> curve.ordinate(o.x(), o.value()));
    }

    private String words() {
        String effect = line.effect().accept(new Effect.Visitor<>() {
            @Override
            public String member(Effect.OfMember of) {
                return "the force in member " + of.member().name();
            }

            @Override
            public String reaction(Effect.OfReaction of) {
                return "the reaction " + of.reaction().name();
            }

            @Override
            public String shear(Effect.OfShear of) {
                return "the shear in panel " + of.left() + " " + of.right();
            }
        });
        return "The truss, and beneath it the influence line of " + effect + " for a unit load on the joints "
                + TrussWords.listed(line.ordinates().stream().map(o -> o.joint() + " " + number(o.value())).toList()) + ".";
    }

    static String number(double ordinate) {
        return EngineeringFormat.standard().keepingUnits().number(ordinate);
    }
}
