package kingpost.explain;

import java.util.ArrayList;
import java.util.List;

import kingpost.derivation.Block;
import kingpost.derivation.Block.Prose;
import kingpost.derivation.Block.Section;
import kingpost.derivation.Derivation;
import kingpost.derivation.EquationLine;
import kingpost.derivation.Expression;
import kingpost.derivation.Expressions;
import kingpost.derivation.Phrase;
import kingpost.derivation.Table;
import kingpost.derivation.Table.Column;
import kingpost.moving.Effect;
import kingpost.moving.InfluenceLine;
import kingpost.moving.InfluenceLine.Ordinate;
import kingpost.moving.UniformEffect;
import kingpost.statics.Checks;
import kingpost.statics.Inspections;
import kingpost.statics.MemberSearch;
import kingpost.statics.Solver;
import kingpost.statics.Source;
import kingpost.statics.Step;
import kingpost.truss.Direction;
import kingpost.truss.Load;
import kingpost.truss.Member;
import kingpost.truss.TrussModel;
import kingpost.units.CalculationException;
import kingpost.units.Quantity;
import kingpost.units.StructuralUnits;

/** An influence line: how the load gets to the joints, where one ordinate comes from, all of them, how to read them. */
public final class InfluenceExplanation {

    private final InfluenceLine line;
    private final Notation notation;

    private InfluenceExplanation(InfluenceLine line) {
        this.line = line;
        this.notation = new Notation(line.truss());
    }

    public static Derivation of(InfluenceLine line) {
        InfluenceExplanation explanation = new InfluenceExplanation(line);
        return new Derivation(line.truss().name() + ": influence line of " + name(line.effect()), explanation.sections());
    }

    /** "member BC", "reaction A_y", "the shear in panel L1 L2". */
    static String name(Effect effect) {
        return effect.accept(new Effect.Visitor<>() {
            @Override
            public String member(Effect.OfMember of) {
                return "member " + of.member().name();
            }

            @Override
            public String reaction(Effect.OfReaction of) {
                return "reaction " + of.reaction().symbol();
            }

            @Override
            public String shear(Effect.OfShear of) {
                return "the shear in panel " + of.left() + " " + of.right();
            }
        });
    }

    /** The symbol of what is changed. */
    static Expression symbol(Notation notation, Effect effect) {
        return effect.accept(new Effect.Visitor<>() {
            @Override
            public Expression member(Effect.OfMember of) {
                return Notation.force(of.member());
            }

            @Override
            public Expression reaction(Effect.OfReaction of) {
                return notation.symbol(of.reaction());
            }

            @Override
            public Expression shear(Effect.OfShear of) {
                return Expressions.symbol("V", of.left() + "-" + of.right());
            }
        });
    }

    private List<Block> sections() {
        List<Block> load = new ArrayList<>(List.of(new Prose(load())));
        load.addAll(Pictures.influence(line));
        List<Block> ordinates = new ArrayList<>(List.of(new Prose(route())));
        ordinates.addAll(worked());
        ordinates.add(table());
        ordinates.add(new Prose(check()));
        return List.of(Section.of("The moving load", load), Section.of("Ordinates", ordinates),
                Section.of("Reading it", List.of(new Prose(reading()))));
    }

    private Phrase load() {
        int last = line.ordinates().size() - 1;
        return Phrase.of("A load of 1, straight down, moves from " + line.ordinates().get(0).joint() + " to "
                + line.ordinates().get(last).joint() + " on stringers that rest on the joints of the loaded chord. Between two"
                + " joints the stringer gives each its share by the lever, so between them the effect changes evenly and the"
                + " influence line is straight. Its ordinates at the " + Series.number(last + 1)
                + " joints are all that has to be found.");
    }

    private Phrase route() {
        return Phrase.of("Let the load stand on each joint in turn. ").then(line.effect().accept(new Effect.Visitor<>() {
            @Override
            public Phrase member(Effect.OfMember of) {
                return Phrase.of("The force in " + of.member().name() + " is the ordinate there; tension is positive.");
            }

            @Override
            public Phrase reaction(Effect.OfReaction of) {
                return Phrase.of("The reaction ").math(notation.symbol(of.reaction())).text(", positive "
                        + Heading.words(Heading.vector(of.reaction().direction())) + ", is the ordinate there.");
            }

            @Override
            public Phrase shear(Effect.OfShear of) {
                return Phrase.of("The shear is all that acts vertically from outside on the part to the left of panel "
                        + of.left() + " " + of.right() + ", upwards positive: the reactions there, less the load when it"
                        + " stands on " + of.left() + " or to the left of it.");
            }
        }));
    }

    /** The ordinate at the peak by the equations of statics, for a load of one unit of force. */
    private List<Block> worked() {
        Ordinate peak = line.peak();
        if (peak.value() == 0) {
            return List.of(Prose.of("The load does nothing to it wherever it stands."));
        }
        TrussModel loaded = loadedAt(peak.joint());
        Notation units = new Notation(loaded);
        List<Block> blocks = new ArrayList<>();
        Phrase lead = Phrase.of("With a load of ").math(units.loadAmount(loaded.loads().get(0))).text(" on ")
                .strong(peak.joint()).text(", where the ordinate is largest:");
        if (line.effect() instanceof Effect.OfMember of) {
            blocks.add(new Prose(lead));
            blocks.addAll(work(loaded, of.member()));
            return blocks;
        }
        List<Step> steps = toReactions(loaded);
        if (steps.isEmpty()) {
            return blocks;
        }
        blocks.add(new Prose(lead));
        steps.forEach(step -> blocks.addAll(step instanceof Step.Reactions reactions
                ? new ReactionsExplanation(units).blocks(new Step.Reactions(Step.WhyReactions.ASKED_FOR, reactions.equations(),
                reactions.answers()))
                : MemberExplanation.work(List.of(step), units, Inspections.of(loaded))));
        if (line.effect() instanceof Effect.OfShear panel) {
            blocks.add(shear(units, panel, steps.stream().flatMap(step -> step.answers().stream()).toList()));
        }
        return blocks;
    }

    /** The work that leads to the reactions that the effect is made of: mostly the whole truss. */
    private List<Step> toReactions(TrussModel loaded) {
        List<Source.OfReaction> needed = line.effect() instanceof Effect.OfReaction of ? List.of(of.reaction())
                : Source.OfReaction.of(loaded).stream().filter(r -> isInShear(r, (Effect.OfShear) line.effect())).toList();
        List<Step> solved = Solver.solve(loaded).steps();
        boolean atOnce = !solved.isEmpty() && solved.get(0) instanceof Step.Reactions first
                && first.answers().stream().map(Step.Answer::unknown).toList().containsAll(needed);
        return atOnce ? solved.subList(0, 1) : MemberSearch.toReactions(loaded, needed);
    }

    private boolean isInShear(Source.OfReaction reaction, Effect.OfShear panel) {
        return isLeft(reaction.joint(), panel) && !Heading.isHorizontal(Heading.vector(reaction.direction()));
    }

    /** The sum of what acts vertically to the left of the panel. */
    private Block shear(Notation units, Effect.OfShear panel, List<Step.Answer> answers) {
        List<Expression.Term> symbols = new ArrayList<>();
        for (Step.Answer answer : answers) {
            if (answer.unknown() instanceof Source.OfReaction r && isInShear(r, panel)) {
                boolean upright = Heading.isVertical(Heading.vector(r.direction()));
                symbols.add(new Expression.Term(r.direction().y() < 0, upright ? units.symbol(r)
                        : Expressions.product(Notation.four(Math.abs(r.direction().cosY())), units.symbol(r))));
            }
        }
        if (isLeft(line.peak().joint(), panel)) {
            symbols.add(Expressions.minus(units.answer(Quantity.of(1, line.truss().forceUnit()).in(StructuralUnits.N))));
        }
        Expression shear = symbol(units, panel);
        Expression value = units.answer(Quantity.of(line.peak().value(), line.truss().forceUnit()).in(StructuralUnits.N));
        return new Block.Equations(List.of(EquationLine.of(shear, Expression.Relator.EQUAL, Expressions.sum(symbols)),
                EquationLine.of(shear, Expression.Relator.EQUAL, value)));
    }

    private boolean isLeft(String joint, Effect.OfShear panel) {
        TrussModel truss = line.truss();
        return truss.joint(joint).orElseThrow().x().getValue() <= truss.joint(panel.left()).orElseThrow().x().getValue();
    }

    private TrussModel loadedAt(String joint) {
        TrussModel t = line.truss();
        return new TrussModel(t.name(), t.lengthUnit(), t.forceUnit(), t.joints(), t.members(), t.supports(),
                List.of(new Load.Directed(joint, Quantity.of(1, t.forceUnit()), Direction.DOWN)));
    }

    private static List<Block> work(TrussModel loaded, Member member) {
        try {
            return MemberExplanation.work(MemberSearch.of(loaded, member), Inspections.of(loaded));
        } catch (CalculationException noWay) {
            return List.of(Prose.of("Joints and sections do not lead to " + member.name()
                    + " one after the other; all joint equations at once give its force."));
        }
    }

    private Table table() {
        boolean exact = line.ordinates().stream().anyMatch(o -> ExactValue.saysMore(o.exact()));
        List<Column> columns = new ArrayList<>(List.of(Column.left("Load on"),
                Column.right("x (" + notation.lengthLabel() + ")"), Column.right("Ordinate")));
        if (exact) {
            columns.add(Column.right("Exactly"));
        }
        return new Table(Phrase.of("Ordinates for a load of 1"), columns,
                line.ordinates().stream().map(o -> row(o, exact)).toList(), true);
    }

    private List<Phrase> row(Ordinate ordinate, boolean exact) {
        List<Phrase> cells = new ArrayList<>(List.of(Phrase.of(ordinate.joint()),
                Phrase.of(notation.length(ordinate.x()).number()), Phrase.of(Notation.three(ordinate.value()))));
        if (exact) {
            cells.add(ExactValue.of(ordinate.exact()).map(Phrase::of).orElse(Phrase.EMPTY));
        }
        return cells;
    }

    private Phrase check() {
        Phrase said = Phrase.of("All joint equations were written down and factored once, and every position of the load was"
                + " solved with the factors");
        if (line.ordinates().stream().anyMatch(o -> o.exact().isEmpty())) {
            return said.text(".");
        }
        return line.worst() <= Checks.TOLERANCE
                ? said.text("; solved a second time in fractions they give the same, to ").math(Notation.three(line.worst()))
                .text(" of the largest force.")
                : said.text("; solved in fractions they differ by ").math(Notation.three(line.worst()))
                .text(" of the largest force. ").strong("Do not use these ordinates").text(".");
    }

    private Phrase reading() {
        UniformEffect one = UniformEffect.of(line, Quantity.of(1, line.truss().forceUnit().divide(line.truss().lengthUnit())));
        if (one.parts().isEmpty()) {
            return Phrase.of("There is nothing to read: every ordinate is zero.");
        }
        Phrase said = Phrase.of("A load ").math(Expressions.symbol("P")).text(" adds ").math(Expressions.symbol("P"))
                .text(" times the ordinate under it; a uniform load adds its intensity times the area under it. ");
        Ordinate high = line.highest();
        Ordinate low = line.lowest();
        if (high.value() > 0) {
            said = said.text("A load " + sense(true) + " at " + high.joint() + " (").math(
                    Notation.three(high.value())).text("); the area above the base is ").math(notation.answerLength(
                    one.areaAbove())).text(".");
        }
        if (low.value() < 0) {
            said = said.text((high.value() > 0 ? " It " : "A load ") + sense(false) + " at " + low.joint() + " (")
                    .math(Notation.three(low.value())).text("); the area below the base is ").math(notation.answerLength(one.areaBelow())).text(".");
        }
        List<Phrase> zeros = new ArrayList<>();
        for (int i = 1; i < one.parts().size(); i++) {
            if (one.parts().get(i).from() == one.parts().get(i - 1).to()) {
                zeros.add(Phrase.of(Expressions.equal(Expressions.symbol("x"),
                        notation.answerLength(one.parts().get(i).from()))));
            }
        }
        return zeros.isEmpty() ? said : said.sentence(Phrase.of("The line changes sign at ").then(Series.and(zeros)).text("."));
    }

    private String sense(boolean positive) {
        return line.effect() instanceof Effect.OfMember ? "does most in " + (positive ? "tension" : "compression")
                : positive ? "adds most" : "takes most away";
    }
}
