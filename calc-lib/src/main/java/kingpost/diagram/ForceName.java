package kingpost.diagram;

import java.util.List;
import kingpost.statics.Source;
import kingpost.svg.Span;

/** Symbols with real subscripts: F and the member; joint and axis, or R and joint, for a reaction; P for a load. */
final class ForceName implements Source.Visitor<List<Span>> {

    private static final ForceName NAME = new ForceName();

    private ForceName() {
    }

    static List<Span> of(Source source) {
        return source.accept(NAME);
    }

    @Override
    public List<Span> member(Source.OfMember source) {
        return Span.indexed("F", source.member().name());
    }

    @Override
    public List<Span> reaction(Source.OfReaction source) {
        return source.letter().isEmpty() ? Span.indexed("R", source.joint())
                : Span.indexed(source.joint(), source.letter());
    }

    @Override
    public List<Span> load(Source.OfLoad source) {
        return Span.indexed("P", source.load().joint());
    }
}
