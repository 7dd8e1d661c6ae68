package kingpost.explain;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

import kingpost.derivation.Expressions;
import kingpost.derivation.Phrase;
import kingpost.exact.Fraction;
import kingpost.statics.JointForce;
import kingpost.statics.Source;
import kingpost.statics.Step;
import kingpost.statics.Vector;
import kingpost.truss.Load;

/** Where the coefficients of inclined forces come from, said when a slope first comes up. */
final class Slopes {

    private final Variety variety;

    Slopes(Variety variety) {
        this.variety = variety;
    }

    /** A sentence for each slope at the joint that has not been spoken of yet. */
    Phrase at(Step.AtJoint step) {
        if (step.axes() instanceof Step.Axes.Turned) {
            return Phrase.EMPTY;
        }
        Map<String, List<JointForce>> slopes = new LinkedHashMap<>();
        step.forces().stream().filter(force -> !Heading.isUpright(force.along()) && !isGivenByParts(force))
                .forEach(force -> slopes.computeIfAbsent(key(force.along()), key -> new ArrayList<>()).add(force));
        Phrase said = Phrase.EMPTY;
        for (Map.Entry<String, List<JointForce>> slope : slopes.entrySet()) {
            if (variety.isFirst("slope " + slope.getKey())) {
                said = said.sentence(capital(sentence(slope.getValue())));
            }
        }
        return said;
    }

    /** Only our own words get a capital letter; a member's name stays as its owner wrote it. */
    private static Phrase capital(Phrase sentence) {
        return sentence.pieces().get(0) instanceof kingpost.derivation.Inline.Text first && first.text().startsWith("the ")
                ? Series.capital(sentence) : sentence;
    }

    private static boolean isGivenByParts(JointForce force) {
        return force.source() instanceof Source.OfLoad of && of.load() instanceof Load.Components;
    }

    private static String key(Vector along) {
        return Notation.four(Math.toDegrees(Math.atan2(Math.abs(along.y()), Math.abs(along.x())))).digits();
    }

    private Phrase sentence(List<JointForce> alike) {
        Vector along = alike.get(0).along();
        Phrase names = Series.and(alike.stream().map(Slopes::name).toList());
        String verb = alike.size() == 1 ? "has" : "have";
        String theirs = alike.size() == 1 ? "its force" : "each force";
        Optional<Fraction> across = Cosine.fraction(along, Vector.X);
        Optional<Fraction> up = Cosine.fraction(along, Vector.Y);
        if (across.isEmpty() || up.isEmpty()) {
            return names.text(alike.size() == 1 ? " stands at " : " stand at ").math(angle(along)).text(" to the horizontal.");
        }
        String run = across.get().numerator().toString();
        String rise = up.get().numerator().toString();
        String hypotenuse = across.get().denominator().toString();
        return variety.of("slope triangle",
                names.text(" " + verb + " a slope of " + rise + " in " + run + " (the triangle " + rise + "-" + run + "-"
                                + hypotenuse + "), so ").math(share(across.get())).text(" of " + theirs + " acts along x and ")
                        .math(share(up.get())).text(" along y."),
                names.text(" " + verb + " the slope triangle " + rise + "-" + run + "-" + hypotenuse + ": ")
                        .math(share(across.get())).text(" along x, ").math(share(up.get())).text(" along y."));
    }

    private static kingpost.derivation.Expression share(Fraction fraction) {
        return Expressions.fraction(Expressions.number(fraction.numerator().toString()),
                Expressions.number(fraction.denominator().toString()));
    }

    private static kingpost.derivation.Expression angle(Vector along) {
        return Cosine.angle(Math.toDegrees(Math.atan2(Math.abs(along.y()), Math.abs(along.x()))));
    }

    private static Phrase name(JointForce force) {
        return force.source().accept(new Source.Visitor<>() {
            @Override
            public Phrase member(Source.OfMember of) {
                return Phrase.of(of.member().name());
            }

            @Override
            public Phrase reaction(Source.OfReaction of) {
                return Phrase.of("the reaction at " + of.joint());
            }

            @Override
            public Phrase load(Source.OfLoad of) {
                return Phrase.of("the load");
            }
        });
    }
}
