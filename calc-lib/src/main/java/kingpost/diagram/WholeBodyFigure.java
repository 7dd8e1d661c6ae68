package kingpost.diagram;

import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import kingpost.statics.BodyEquation;
import kingpost.statics.Source;
import kingpost.statics.Step;
import kingpost.svg.Element;
import kingpost.svg.Span;
import kingpost.svg.Style;
import kingpost.svg.Svg;
import kingpost.truss.TrussModel;

/** The free body of the whole truss: its supports taken away, their reactions drawn the way they count positive. */
public final class WholeBodyFigure {

    private static final double RING = 6.6;

    private final TrussModel truss;
    private final Step.Reactions step;

    private WholeBodyFigure(TrussModel truss, Step.Reactions step) {
        this.truss = truss;
        this.step = step;
    }

    /** The figure for the step that finds the reactions; the points about which it takes moments are ringed. */
    public static Svg of(TrussModel truss, Step.Reactions step) {
        WholeBodyFigure figure = new WholeBodyFigure(truss, step);
        return Fitting.sketch(truss, figure::draw).toSvg("Free body of the whole truss", figure.words());
    }

    private void draw(TrussSketch sketch) {
        sketch.members(Ink.PALE, 2.6);
        momentPoints().forEach(joint -> ring(sketch, joint));
        crossings().forEach(moment -> crossing(sketch, moment));
        sketch.joints();
        if (!sketch.layout().isDense()) {
            Source.OfReaction.of(truss).forEach(reaction -> reaction(sketch, reaction));
        }
        sketch.loads();
        sketch.names();
        sketch.sheet().settle();
        Views.dimensions(sketch);
        sketch.notes();
    }

    private static void reaction(TrussSketch sketch, Source.OfReaction reaction) {
        List<Span> symbol = reaction.letter().isEmpty() ? Span.indexed("R", reaction.joint())
                : Span.indexed(reaction.joint(), reaction.letter());
        sketch.arrow(sketch.layout().of(reaction.joint()), sketch.layout().wayOf(reaction.direction()), Ink.UNKNOWN,
                sketch.lettering().caption(symbol, Ink.UNKNOWN), reaction.symbol());
    }

    private static void ring(TrussSketch sketch, String joint) {
        if (!sketch.layout().isDense()) {
            sketch.sheet().add(Layer.BACKGROUND, new Element.Circle(sketch.layout().of(joint).point(), RING,
                    Style.stroke(Ink.FAINT, 1.2).filled(Ink.PAPER).dashed(3, 3)));
        }
    }

    /** A point about which moments are taken where lines of reactions cross. */
    private void crossing(TrussSketch sketch, BodyEquation.Kind.Moment moment) {
        Place point = sketch.layout().place(moment.point());
        if (sketch.layout().isDense() || SectionFigure.isFarOut(sketch.layout(), point)) {
            return;
        }
        SectionFigure.markPoint(sketch, point);
        moment.passing().stream().filter(Source.OfReaction.class::isInstance).map(Source.OfReaction.class::cast)
                .forEach(reaction -> SectionFigure.gone(sketch, sketch.layout().of(reaction.joint()), point));
    }

    private List<BodyEquation.Kind.Moment> crossings() {
        return step.equations().stream().filter(e -> e.kind() instanceof BodyEquation.Kind.Moment)
                .map(e -> (BodyEquation.Kind.Moment) e.kind()).filter(moment -> moment.joint().isEmpty()).distinct().toList();
    }

    private List<String> momentPoints() {
        return step.equations().stream().map(BodyEquation::kind).flatMap(WholeBodyFigure::joints).filter(joint -> !joint.isEmpty()).distinct()
                .toList();
    }

    private static Stream<String> joints(BodyEquation.Kind kind) {
        return kind instanceof BodyEquation.Kind.Moment moment ? Stream.of(moment.joint())
                : kind instanceof BodyEquation.Kind.MomentAbout about ? Stream.of(about.through(), about.to())
                : Stream.of();
    }

    private String words() {
        String reactions = Source.OfReaction.of(truss).stream().map(Source.OfReaction::symbol)
                .collect(Collectors.joining(", "));
        return "The truss without its supports; in their place the reactions " + reactions + ". "
                + new TrussWords(truss).loads();
    }
}
