package kingpost.explain;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

import kingpost.derivation.Block;
import kingpost.derivation.Block.Prose;
import kingpost.derivation.Expression;
import kingpost.derivation.Expressions;
import kingpost.derivation.Phrase;
import kingpost.statics.AxisEquation.Role;
import kingpost.statics.BodyEquation;
import kingpost.statics.BodyEquation.Kind;
import kingpost.statics.Source;
import kingpost.statics.Step;

/** The reactions from the whole truss as one free body: why now, where to take moments and why there. */
final class ReactionsExplanation {

    private final Notation notation;
    private final BodyEquations equations;
    private final Variety variety = new Variety();

    ReactionsExplanation(Notation notation) {
        this.notation = notation;
        this.equations = new BodyEquations(notation);
    }

    List<Block> blocks(Step.Reactions step) {
        List<Block> blocks = new ArrayList<>();
        blocks.add(step.why() == Step.WhyReactions.WITHIN_REACH_NOW ? new Prose(again(step)) : Prose.of(why(step.why())));
        blocks.addAll(Pictures.wholeTruss(notation.truss(), step));
        for (BodyEquation equation : step.equations()) {
            blocks.add(new Prose(equation.kind() instanceof Kind.Moment moment ? momentIntro(equation, moment)
                    : equation.kind() instanceof Kind.MomentAbout about ? lineIntro(equation, about)
                    : sumIntro(equation, (Kind.Along) equation.kind())));
            blocks.add(equations.block(equation));
        }
        if (step.why() != Step.WhyReactions.MEMBER_NEEDS_THEM && step.why() != Step.WhyReactions.WITHIN_REACH_NOW) {
            leftOver(step).ifPresent(blocks::add);
        }
        Phrase remarks = reversed(step);
        if (!remarks.isEmpty()) {
            blocks.add(new Prose(remarks));
        }
        return blocks;
    }

    private Phrase again(Step.Reactions step) {
        Phrase found = Series.and(step.answers(), answer -> Phrase.of(notation.symbol(answer.unknown())));
        return Phrase.of("Go back to the whole truss. More of its reactions are known than when it was looked at as one body, and so"
                + " an equation of it now holds one unknown alone: it gives ").then(found).text(".");
    }

    private String why(Step.WhyReactions why) {
        String whole = " Cut the truss free of its supports and treat it as one body: inside it the member forces come in"
                + " pairs that cancel, so only loads and reactions enter.";
        return switch (why) {
            case NO_JOINT_TO_START -> "A joint gives " + (notation.truss().isSpace() ? "three" : "two") + " equations, and at the moment every joint has more unknown forces"
                    + " than that. The reactions have to come first." + whole;
            case JOINTS_STOP_SHORT -> "Some joints could be worked straight away, but the way from joint to joint would"
                    + " stop before it had reached every member. With the reactions known it goes through." + whole;
            case WITHIN_REACH_NOW, ASKED_FOR -> "The reactions are wanted, so they are found first." + whole;
            case MEMBER_NEEDS_THEM -> "The way to the member leads through what the supports do, so that comes first, as far as it"
                    + " is needed." + whole;
            case SECTION_NEEDS_THEM -> "Each part that the section leaves is held by a support, so the reactions come first."
                    + whole;
        };
    }

    private Phrase lineIntro(BodyEquation equation, Kind.MomentAbout about) {
        Phrase line = about.to().isEmpty()
                ? Phrase.of("the line through joint ").strong(about.through()).text(" along " + about.axis().label())
                : Phrase.of("the line through joints ").strong(about.through()).text(" and ").strong(about.to());
        Phrase passing = Series.and(about.passing(), source -> Phrase.of(notation.symbol(source)));
        return about.passing().isEmpty() ? Phrase.of("Moments about ").then(line).text(" hold only ")
                .then(unknown(equation)).text(" of the unknowns:")
                : variety.of("moment about a line", Phrase.of("Take moments about ").then(line).text(": ").then(passing)
                .text(about.passing().size() == 1 ? " meets it or runs along it and drops out, which leaves "
                        : " meet it or run along it and drop out, which leaves ").then(unknown(equation)).text(" alone."),
                Phrase.of("Moments about ").then(line).text(" keep ").then(passing).text(" out of the equation."));
    }

    private Phrase momentIntro(BodyEquation equation, Kind.Moment moment) {
        Phrase about = moment.joint().isEmpty()
                ? Phrase.of("the point O, which lies " + "where their lines cross")
                : Phrase.of("joint ").strong(moment.joint());
        if (equation.role() instanceof Role.Check) {
            return Phrase.of("One equation more than needed serves as a check. Moments about ").then(about)
                    .text(", with the reactions just found:");
        }
        Phrase passing = Series.and(moment.passing(), source -> Phrase.of(notation.symbol(source)));
        boolean one = moment.passing().size() == 1;
        return variety.of("moment",
                Phrase.of("Take moments about ").then(about).text(": ").then(passing)
                        .text(one ? " passes through it and has no arm there, which leaves "
                                : " pass through it and have no arm there, which leaves ")
                        .then(unknown(equation)).text(" alone."),
                Phrase.of("Moments about ").then(about).text(" keep ").then(passing).text(" out of the equation."));
    }

    private Phrase sumIntro(BodyEquation equation, Kind.Along along) {
        Expression sum = Expressions.sigma(Expressions.symbol("F", along.axis().label()));
        if (equation.terms().size() == 1) {
            return Phrase.of("Along ").math(Expressions.symbol(along.axis().label())).text(" nothing else acts on the truss than ")
                    .then(unknown(equation)).text(", so it must vanish:");
        }
        return variety.of("sum",
                Phrase.of("Now ").then(unknown(equation)).text(" is the only unknown left in ").math(sum).text(":"),
                Phrase.of("The other direction, ").math(sum).text(", gives ").then(unknown(equation)).text(":"));
    }

    private Phrase unknown(BodyEquation equation) {
        return equation.role() instanceof Role.Gives gives ? Phrase.of(notation.symbol(gives.unknown())) : Phrase.EMPTY;
    }

    /** Reactions that the whole truss does not give, and why. */
    private Optional<Block> leftOver(Step.Reactions step) {
        List<Source> found = step.answers().stream().map(Step.Answer::unknown).toList();
        List<Source.OfReaction> left = Source.OfReaction.of(notation.truss()).stream()
                .filter(reaction -> !found.contains(reaction)).toList();
        if (left.isEmpty()) {
            return Optional.empty();
        }
        Phrase symbols = Series.and(left, source -> Phrase.of(notation.symbol(source)));
        return Optional.of(new Prose(symbols.text(left.size() == 1 ? " stays unknown." : " stay unknown.").sentence(
                notation.truss().isSpace() ? "No other equation of the whole truss holds one of them alone; they come out on"
                + " the way, at the joints."
                : "The whole truss has three equations, and here the supports give more forces than that. What is missing"
                + " comes from the inside: the truss is made of parts, and an equation of a part alone, or of a joint,"
                + " brings in what the whole cannot tell.")));
    }

    /** What a minus sign means for a reaction; for a roller it is more than a matter of signs. */
    private Phrase reversed(Step.Reactions step) {
        Phrase said = Phrase.EMPTY;
        for (Step.Answer answer : step.answers()) {
            if (answer.value() < 0 && answer.unknown() instanceof Source.OfReaction reaction) {
                said = said.sentence(reversed(reaction, answer.value()));
            }
        }
        return said;
    }

    private Phrase reversed(Source.OfReaction reaction, double value) {
        Phrase symbol = Phrase.of(notation.symbol(reaction));
        String way = Heading.words(reaction, value);
        boolean pinned = notation.truss().supportsAt(reaction.joint()).stream()
                .anyMatch(support -> support.reactions().size() > 1);
        return pinned
                ? variety.of("reversed", symbol.text(" is negative: the reaction acts " + way + ", against the way it was drawn."),
                        Phrase.of("The minus sign of ").then(symbol).text(" turns that arrow too: it acts " + way + "."))
                : Phrase.of("The minus sign of ").then(symbol).text(" is more than a matter of drawing: the support at ")
                        .strong(reaction.joint()).text(" must hold the truss back (" + way
                                + "), so it must not be one that the truss only rests on.");
    }
}
