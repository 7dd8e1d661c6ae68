package kingpost.diagram;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import kingpost.statics.Envelope;
import kingpost.statics.Envelope.Extreme;
import kingpost.statics.Envelope.Range;
import kingpost.svg.Svg;
import kingpost.truss.Member;
import kingpost.truss.TrussModel;

/** A truss with each member's largest tension and largest compression over its load combinations. */
public final class EnvelopeFigure {

    private final Envelope envelope;
    private final ForceText text;

    private EnvelopeFigure(Envelope envelope) {
        this.envelope = envelope;
        this.text = new ForceText(envelope.truss());
    }

    /** The figure of {@code envelope}. */
    public static Svg of(Envelope envelope) {
        EnvelopeFigure figure = new EnvelopeFigure(envelope);
        TrussModel truss = envelope.truss();
        return Fitting.sketch(truss, figure::draw).toSvg(truss.name() + ": largest tension and compression",
                figure.words());
    }

    private void draw(TrussSketch sketch) {
        envelope.members().forEach(range -> sketch.member(range.of(), style(range)));
        sketch.supports();
        sketch.joints();
        sketch.names();
        envelope.members().forEach(range -> label(sketch, range));
        sketch.sheet().settle();
        sketch.legend(Stream.of(MemberStyle.TENSION, MemberStyle.COMPRESSION, MemberStyle.REVERSAL, MemberStyle.ZERO)
                .filter(style -> envelope.members().stream().anyMatch(r -> style(r) == style)).toList());
        sketch.notes();
    }

    private static MemberStyle style(Range<Member> range) {
        if (range.highest().isPresent() && range.lowest().isPresent()) {
            return MemberStyle.REVERSAL;
        }
        return range.highest().isPresent() ? MemberStyle.TENSION
                : range.lowest().isPresent() ? MemberStyle.COMPRESSION : MemberStyle.ZERO;
    }

    private void label(TrussSketch sketch, Range<Member> range) {
        if (sketch.layout().isDense()) {
            return;
        }
        List<String> said = new ArrayList<>();
        range.highest().ifPresent(e -> said.add(size(sketch, e) + " T"));
        range.lowest().ifPresent(e -> said.add(size(sketch, e) + " C"));
        MemberStyle style = style(range);
        Caption caption = sketch.lettering().caption(said.isEmpty() ? "0" : String.join(", ", said), style.colour());
        TrussLayout layout = sketch.layout();
        sketch.sheet().label(new Label(caption, Spots.along(layout.from(range.of()), layout.to(range.of()), caption,
                style.width() / 2 + 3.5, sketch.lettering().isBare()), range.of().name(), 1));
    }

    private String size(TrussSketch sketch, Extreme extreme) {
        String value = text.ofNewtons(extreme.force());
        return sketch.lettering().isBare() ? text.bare(value) : value;
    }

    private String words() {
        List<String> said = envelope.members().stream().map(range -> range.of().name()
                + largest(" up to ", range.highest(), " in tension")
                + largest(range.highest().isPresent() ? " and " : " up to ", range.lowest(), " in compression")
                + (range.highest().isEmpty() && range.lowest().isEmpty() ? " carries nothing" : "")).toList();
        return "Over " + TrussWords.listed(envelope.columns()) + ": " + TrussWords.listed(said) + ".";
    }

    private String largest(String lead, Optional<Extreme> extreme, String sense) {
        return extreme.map(e -> lead + text.ofNewtons(e.force()) + sense).orElse("");
    }
}
