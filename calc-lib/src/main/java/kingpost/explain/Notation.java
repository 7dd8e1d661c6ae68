package kingpost.explain;

import kingpost.derivation.Expression;
import kingpost.derivation.Expression.Amount;
import kingpost.derivation.Expression.Numeral;
import kingpost.derivation.Expression.Symbol;
import kingpost.derivation.Expressions;
import kingpost.statics.Source;
import kingpost.truss.Load;
import kingpost.truss.Member;
import kingpost.truss.TrussModel;
import kingpost.units.EngineeringFormat;
import kingpost.units.Quantity;
import kingpost.units.StructuralUnits;
import kingpost.units.UnitLabel;

/**
 * How a truss's forces are named and its numbers written: F with the member's name, joint and axis for a reaction;
 * forces in the truss's force unit to three significant figures, data as they were given.
 */
final class Notation {

    private static final EngineeringFormat ANSWER = EngineeringFormat.standard().keepingUnits();
    private static final EngineeringFormat GIVEN = EngineeringFormat.given();
    private static final EngineeringFormat FOUR = EngineeringFormat.standard().keepingUnits().withFigures(4);
    private static final EngineeringFormat SIX = EngineeringFormat.standard().keepingUnits().withFigures(6);
    private static final int LONGEST_GIVEN = 7;

    private final TrussModel truss;
    private final String forceLabel;
    private final String lengthLabel;

    Notation(TrussModel truss) {
        this.truss = truss;
        this.forceLabel = UnitLabel.of(truss.forceUnit());
        this.lengthLabel = UnitLabel.of(truss.lengthUnit());
    }

    TrussModel truss() {
        return truss;
    }

    String forceLabel() {
        return forceLabel;
    }

    String lengthLabel() {
        return lengthLabel;
    }

    static Symbol force(Member member) {
        return Expressions.symbol("F", member.name());
    }

    /** The symbol of a member's force or a reaction; a load has its amount instead. */
    Expression symbol(Source source) {
        return source.accept(new Source.Visitor<>() {
            @Override
            public Expression member(Source.OfMember of) {
                return force(of.member());
            }

            @Override
            public Expression reaction(Source.OfReaction of) {
                return of.letter().isEmpty() ? Expressions.symbol("R", of.joint())
                        : Expressions.symbol(of.joint(), of.letter());
            }

            @Override
            public Expression load(Source.OfLoad of) {
                return loadAmount(of.load());
            }
        });
    }

    /** An answer: newtons, shown in the truss's unit to three significant figures. */
    Amount answer(double newtons) {
        return new Amount(number(ANSWER, inForceUnit(newtons)), forceLabel);
    }

    /** A remainder of rounding: zero where it is no more than {@code noise} newtons. */
    Amount remainder(double newtons, double noise) {
        return answer(Math.abs(newtons) <= noise ? 0 : newtons);
    }

    /** A load's size as it was given, in its own unit. */
    Amount loadAmount(Load load) {
        return given(load.magnitude());
    }

    static Amount given(Quantity quantity) {
        return new Amount(data(quantity.getValue()), UnitLabel.of(quantity.getUnit()));
    }

    /** A length in the truss's length unit, as the data have it. */
    Amount length(double number) {
        return new Amount(data(number), lengthLabel);
    }

    /** A length or an area under an influence line that was calculated: to three significant figures. */
    Amount answerLength(double number) {
        return new Amount(number(ANSWER, number), lengthLabel);
    }

    /** A bare number for an answer: to three significant figures. */
    static Numeral three(double number) {
        return number(ANSWER, number);
    }

    /** A coefficient: to four significant figures, one more than the answers. */
    static Numeral four(double number) {
        return number(FOUR, number);
    }

    /** A number to be compared with another: to six significant figures. */
    static Numeral six(double number) {
        return number(SIX, number);
    }

    double inForceUnit(double newtons) {
        return Quantity.of(newtons, StructuralUnits.N).in(truss.forceUnit());
    }

    /** Data as given, unless that takes so many figures that it came from a calculation. */
    private static Numeral data(double number) {
        String text = GIVEN.number(number);
        return text.length() > LONGEST_GIVEN ? four(number) : numeral(text);
    }

    private static Numeral number(EngineeringFormat format, double value) {
        return numeral(format.number(value));
    }

    private static Numeral numeral(String text) {
        StringBuilder digits = new StringBuilder();
        for (char c : text.replace("×10", "e").toCharArray()) {
            int raised = "⁰¹²³⁴⁵⁶⁷⁸⁹".indexOf(c);
            if (raised >= 0) {
                digits.append(raised);
            } else if (c == '−' || c == '⁻') {
                digits.append('-');
            } else if (c != '\u202f') {
                digits.append(c);
            }
        }
        return new Numeral(digits.toString());
    }
}
