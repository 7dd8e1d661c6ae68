package kingpost.notebook;

import java.util.Map;
import java.util.Optional;
import kingpost.marking.Marker;
import kingpost.render.Edition;
import kingpost.render.Exhibit;
import kingpost.render.Showable;
import kingpost.variant.Variant;
import kingpost.variant.VariantSet;

/** One variant of a truss in a notebook; shown as its figure. */
public final class TrussVariant implements Showable {

    private final Variant variant;

    TrussVariant(Variant variant) {
        this.variant = variant;
    }

    /** Its number, from 1. */
    public int number() {
        return variant.number();
    }

    /** The truss, to be asked as any other. */
    public Truss truss() {
        return Truss.of(variant.truss());
    }

    /** Its solution, to be asked as any other. */
    public TrussSolution solution() {
        return new TrussSolution(variant.solution());
    }

    /** What a student gets: problem, figure, free bodies and a table to fill in; no answer is in it. */
    public MadeFor handout() {
        return new MadeFor(Edition.HANDOUT, Editions.about(variant.truss()), Exhibit.of(variant.handout()));
    }

    /** The answers and nothing else. */
    public MadeFor key() {
        return new MadeFor(Edition.KEY, Editions.about(variant.truss()), Exhibit.of(variant.key()));
    }

    /** Marks one person's answers to this variant. */
    public MarkedAnswers mark(String answers) {
        Marker marker = Marker.of(variant.solution());
        return new MarkedAnswers(marker, marker.mark(answers));
    }

    private Exhibit figure() {
        return Exhibit.of(VariantSet.figure(variant));
    }

    @Override
    public Map<String, Object> show() {
        return figure().show();
    }

    @Override
    public Optional<Map<String, Object>> show(Edition edition) {
        return edition == Edition.SOLUTION ? Optional.of(show()) : Editions.of(variant.truss(), edition);
    }

    @Override
    public String toString() {
        return figure().toString();
    }
}
