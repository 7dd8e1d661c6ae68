package kingpost.explain;

import kingpost.derivation.Phrase;
import kingpost.graphic.Cause;
import kingpost.graphic.Side;

/** Forces as graphic statics names them: a member by its name, a load by its size, a support by its joint. */
final class CauseWords {

    private final Notation notation;

    CauseWords(Notation notation) {
        this.notation = notation;
    }

    Phrase of(Cause cause) {
        return cause.accept(new Cause.Visitor<>() {
            @Override
            public Phrase member(Cause.OfMember of) {
                return Phrase.of(of.member().name());
            }

            @Override
            public Phrase load(Cause.OfLoad of) {
                return Phrase.of("the load ").math(notation.loadAmount(of.load()));
            }

            @Override
            public Phrase support(Cause.OfSupport of) {
                return Phrase.of("the reaction at " + of.joint());
            }
        });
    }

    /** "points away: tension" for a member; the way it acts for any other force. */
    String sense(Side side) {
        if (!(side.cause() instanceof Cause.OfMember)) {
            return "acts " + Heading.words(side.vector());
        }
        return side.pulls() ? "away from it: tension" : "towards it: compression";
    }
}
