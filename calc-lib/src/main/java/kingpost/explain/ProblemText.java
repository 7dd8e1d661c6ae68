package kingpost.explain;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

import kingpost.derivation.Phrase;
import kingpost.statics.Vector;
import kingpost.truss.Direction;
import kingpost.truss.Load;
import kingpost.truss.Support;
import kingpost.truss.TrussModel;

/** A problem as a book states it: how the truss is held, what it carries, what is asked. Knows no answers. */
final class ProblemText {

    private final TrussModel truss;
    private final Notation notation;

    ProblemText(TrussModel truss) {
        this.truss = truss;
        this.notation = new Notation(truss);
    }

    /** One item for each support and each load. */
    List<Phrase> data() {
        List<Phrase> data = new ArrayList<>();
        truss.supports().forEach(support -> data.add(support(support)));
        truss.loads().forEach(load -> data.add(load(load)));
        return data;
    }

    private static Phrase support(Support support) {
        Phrase held = Phrase.of("Joint ").strong(support.joint()).text(" is held by a "
                + support.kind().name().toLowerCase(Locale.ROOT));
        Vector way = Heading.vector(support.reactions().get(0));
        boolean plain = support.kind() == Support.Kind.PIN
                || support.kind() == Support.Kind.ROLLER && Heading.isVertical(way);
        return plain ? held.text(".") : held.text(support.kind() == Support.Kind.ROLLER
                ? " that rolls on a surface at right angles to the direction " + said(support.reactions().get(0)) + "."
                : " in the direction " + said(support.reactions().get(0)) + ".");
    }

    private Phrase load(Load load) {
        if (load instanceof Load.Components parts) {
            return Phrase.of("A load with the components ").math(Notation.given(parts.fx())).text(" along x and ")
                    .math(Notation.given(parts.fy())).text(" along y acts on joint ").strong(load.joint()).text(".");
        }
        return Phrase.of("A load of ").math(notation.loadAmount(load)).text(" acts " + way(load.direction()) + " on joint ")
                .strong(load.joint()).text(".");
    }

    private static String way(Direction direction) {
        String words = Heading.words(Heading.vector(direction));
        return Heading.isUpright(Heading.vector(direction)) ? words : words + " (" + direction.words() + ")";
    }

    private static String said(Direction direction) {
        return Heading.isUpright(Heading.vector(direction)) ? Heading.words(Heading.vector(direction)) : direction.words();
    }
}
