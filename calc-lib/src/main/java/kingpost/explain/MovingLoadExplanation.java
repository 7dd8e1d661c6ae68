package kingpost.explain;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

import kingpost.derivation.Block;
import kingpost.derivation.Block.Equations;
import kingpost.derivation.Block.Prose;
import kingpost.derivation.Block.Section;
import kingpost.derivation.Derivation;
import kingpost.derivation.EquationLine;
import kingpost.derivation.Expression;
import kingpost.derivation.Expression.Relator;
import kingpost.derivation.Expressions;
import kingpost.derivation.Phrase;
import kingpost.derivation.Table;
import kingpost.derivation.Table.Column;
import kingpost.exact.Surd;
import kingpost.moving.Effect;
import kingpost.moving.InfluenceLine;
import kingpost.moving.TrainEffect;
import kingpost.moving.TrainEffect.Edge;
import kingpost.moving.TrainEffect.Placement;
import kingpost.moving.TrainEffect.WheelPlace;
import kingpost.moving.UniformEffect;
import kingpost.moving.UniformEffect.Part;

/** The most that a train of wheels or a uniform load does: where it stands, why there, and what it adds up to. */
public final class MovingLoadExplanation {

    private final InfluenceLine line;
    private final Notation notation;

    private MovingLoadExplanation(InfluenceLine line) {
        this.line = line;
        this.notation = new Notation(line.truss());
    }

    public static Derivation of(TrainEffect effect) {
        MovingLoadExplanation explanation = new MovingLoadExplanation(effect.line());
        return new Derivation(effect.line().truss().name() + ": a wheel train and "
                + InfluenceExplanation.name(effect.line().effect()), explanation.train(effect));
    }

    public static Derivation of(UniformEffect effect) {
        MovingLoadExplanation explanation = new MovingLoadExplanation(effect.line());
        return new Derivation(effect.line().truss().name() + ": a uniform load and "
                + InfluenceExplanation.name(effect.line().effect()), explanation.uniform(effect));
    }

    private List<Block> train(TrainEffect effect) {
        List<Block> blocks = new ArrayList<>();
        int wheels = effect.train().wheels().size();
        Phrase extent = wheels == 1 ? Phrase.EMPTY
                : Phrase.of(" over a length of ").math(notation.length(effect.train().length()));
        blocks.add(new Prose(Phrase.of("The train has " + Series.count(wheels, "wheel")).then(extent)
                .text(". Its effect is the sum of each load times the ordinate under it. While it moves and no wheel passes a"
                        + " bend of the influence line, that sum changes evenly; so it is largest with a wheel at a bend, which is"
                        + " a joint of the loaded chord. Each wheel was set on each joint, in both directions of travel: "
                        + effect.positions() + " positions.")));
        blocks.add(placed(effect.largest(), true));
        blocks.add(placed(effect.smallest(), false));
        blocks.add(caution());
        return blocks;
    }

    private Block placed(Optional<Placement> placement, boolean positive) {
        String title = title(positive);
        if (placement.isEmpty()) {
            return Section.of(title, List.of(Prose.of("There is none: no position of the train gives any.")));
        }
        Placement at = placement.get();
        List<Block> blocks = new ArrayList<>();
        blocks.add(new Prose(where(at)));
        blocks.addAll(Pictures.train(line, at));
        blocks.add(wheels(at));
        blocks.add(new Equations(sum(at)));
        at.exact().filter(exact -> ExactValue.saysMore(at.exact())).ifPresent(exact -> blocks.add(new Prose(Phrase.of("Exactly ")
                .math(ExactValue.of(exact)).text(" " + notation.forceLabel() + "."))));
        return Section.of(title, blocks);
    }

    private String title(boolean positive) {
        if (line.effect() instanceof Effect.OfMember of) {
            return "Largest " + (positive ? "tension" : "compression") + " in " + of.member().name();
        }
        return (positive ? "Largest" : "Smallest") + " value of " + InfluenceExplanation.name(line.effect());
    }

    private static Phrase where(Placement at) {
        Phrase said = Phrase.of("The train travels to the " + (at.rightward() ? "right" : "left") + " and stands with wheel "
                + at.wheel() + " at ").strong(at.joint());
        Phrase edge = at.edge() == Edge.AT ? said.text(".") : at.edge() == Edge.BEFORE
                ? said.text(", just short of it, so that a wheel at the end of the chord is not on it yet.")
                : said.text(", just past it, so that a wheel at the end of the chord has left it.");
        List<String> off = at.wheels().stream().filter(wheel -> !wheel.on()).map(w -> Integer.toString(w.number())).toList();
        return off.isEmpty() ? edge : edge.sentence(off.size() == 1 ? "Wheel " + off.get(0) + " is off the chord."
                : "Wheels " + OpeningExplanation.plain(off) + " are off the chord.");
    }

    private Table wheels(Placement at) {
        return new Table(Phrase.of("The wheels, the leading one first"), List.of(Column.left("Wheel"), Column.right("Load"),
                Column.right("x (" + notation.lengthLabel() + ")"), Column.right("Ordinate"),
                Column.right("Load × ordinate (" + notation.forceLabel() + ")")),
                at.wheels().stream().map(this::wheel).toList(), true);
    }

    private List<Phrase> wheel(WheelPlace wheel) {
        return List.of(Phrase.of(Integer.toString(wheel.number())), Phrase.of(Notation.given(wheel.load())),
                Phrase.of(notation.length(wheel.x()).number()),
                wheel.on() ? Phrase.of(Notation.three(wheel.ordinate())) : Phrase.of("off"),
                Phrase.of(Notation.three(notation.inForceUnit(wheel.effect()))));
    }

    private List<EquationLine> sum(Placement at) {
        Expression symbol = InfluenceExplanation.symbol(notation, line.effect());
        List<Expression.Term> terms = at.wheels().stream().filter(w -> w.on() && w.ordinate() != 0)
                .map(w -> new Expression.Term(w.effect() < 0, notation.answer(Math.abs(w.effect())))).toList();
        List<EquationLine> lines = new ArrayList<>();
        if (terms.size() > 1 && terms.size() < 7) {
            lines.add(EquationLine.of(symbol, Relator.EQUAL, Expressions.sum(terms)));
        }
        String remark = line.effect() instanceof Effect.OfMember ? SenseWords.noun(at.effect()) : "";
        lines.add(EquationLine.of(symbol, Relator.EQUAL, notation.answer(at.effect())).remarked(remark));
        return lines;
    }

    private List<Block> uniform(UniformEffect effect) {
        List<Block> blocks = new ArrayList<>();
        blocks.add(new Prose(Phrase.of("A uniform load of ").math(Notation.given(effect.intensity()))
                .text(" may stand on any stretches. What a stretch adds is the intensity times the area between line and base"
                        + " there; so the largest value comes from loading all that lies above the base and nothing else, and the"
                        + " smallest from loading all that lies below.")));
        blocks.addAll(Pictures.uniform(effect));
        if (!effect.parts().isEmpty()) {
            blocks.add(new Table(Phrase.of("Stretches of one sign"), List.of(
                    Column.right("From x (" + notation.lengthLabel() + ")"),
                    Column.right("to x (" + notation.lengthLabel() + ")"),
                    Column.right("Area (" + notation.lengthLabel() + ")")),
                    effect.parts().stream().map(this::part).toList(), false));
        }
        List<EquationLine> lines = new ArrayList<>();
        Expression symbol = InfluenceExplanation.symbol(notation, line.effect());
        lines.addAll(value(symbol, "max", effect, effect.areaAbove(), effect.largest(), 0));
        lines.addAll(value(symbol, "min", effect, effect.areaBelow(), effect.smallest(), 1));
        lines.addAll(value(symbol, "whole", effect, effect.areaAbove() + effect.areaBelow(), effect.whole(), 2));
        blocks.add(new Equations(lines));
        blocks.add(caution());
        return blocks;
    }

    private static Block caution() {
        return Prose.of("These are the loads as given, standing still: impact, the share of lanes, loads that go with them, and"
                + " factors come from the code in force where the structure stands.");
    }

    private List<Phrase> part(Part part) {
        return List.of(Phrase.of(Notation.three(part.from())), Phrase.of(Notation.three(part.to())),
                Phrase.of(Notation.three(part.area())));
    }

    private List<EquationLine> value(Expression symbol, String which, UniformEffect effect, double area, double newtons,
                                     int number) {
        Expression.Symbol plain = (Expression.Symbol) symbol;
        Expression named = Expressions.symbol(plain.name(), plain.subscript() + ", " + which);
        List<EquationLine> lines = new ArrayList<>();
        if (area != 0) {
            lines.add(EquationLine.of(named, Relator.EQUAL, Expressions.product(
                    Expressions.parenthesised(Notation.given(effect.intensity())),
                    Expressions.parenthesised(notation.answerLength(area)))));
        }
        Optional<Surd> exact = effect.exact().isEmpty() ? Optional.empty() : Optional.of(effect.exact().get(number));
        String exactly = ExactValue.saysMore(exact) ? "exactly " + exact.get() + " " + notation.forceLabel() : "";
        String sense = line.effect() instanceof Effect.OfMember ? SenseWords.noun(newtons) : "";
        lines.add(EquationLine.of(named, Relator.EQUAL, notation.answer(newtons))
                .remarked(sense + (sense.isEmpty() || exactly.isEmpty() ? "" : ", ") + exactly));
        return lines;
    }
}
