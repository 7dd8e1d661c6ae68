package kingpost.explain;

import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;

import kingpost.derivation.Expression;
import kingpost.derivation.Expressions;
import kingpost.derivation.Phrase;
import kingpost.statics.Source;
import kingpost.statics.Step;
import kingpost.truss.Member;

/** What the answers of a joint mean, in words. */
final class JointOutcome {

    private final Notation notation;
    private final Variety variety;
    private final InLine inLine;

    JointOutcome(Notation notation, Variety variety, InLine inLine) {
        this.notation = notation;
        this.variety = variety;
        this.inLine = inLine;
    }

    Phrase of(Step.AtJoint step) {
        Phrase said = members(step.answers());
        for (Step.Answer answer : step.answers()) {
            if (answer.unknown() instanceof Source.OfReaction reaction && answer.value() <= 0) {
                said = said.sentence(reaction(reaction, answer.value()));
            }
        }
        for (Step.Answer answer : step.answers()) {
            if (answer.unknown() instanceof Source.OfMember of) {
                said = said.sentence(passedOn(of.member()));
            }
        }
        return said;
    }

    private Phrase members(List<Step.Answer> answers) {
        Map<Double, List<String>> bySign = answers.stream().filter(answer -> answer.unknown() instanceof Source.OfMember)
                .collect(Collectors.groupingBy(answer -> Math.signum(answer.value()) + 0.0,
                        Collectors.mapping(answer -> ((Source.OfMember) answer.unknown()).member().name(), Collectors.toList())));
        List<String> pulling = bySign.getOrDefault(1.0, List.of());
        List<String> pushing = bySign.getOrDefault(-1.0, List.of());
        List<String> idle = bySign.getOrDefault(0.0, List.of());
        Phrase said = !pulling.isEmpty() && !pushing.isEmpty() ? mixed(pulling, pushing)
                : !pulling.isEmpty() ? tension(pulling) : !pushing.isEmpty() ? compression(pushing) : Phrase.EMPTY;
        return idle.isEmpty() ? said : said.sentence(zero(idle));
    }

    private Phrase tension(List<String> names) {
        Phrase all = Series.names(names);
        return names.size() == 1
                ? variety.of("tension",
                all.text(" is positive, so it pulls as it was drawn: it is in tension."),
                Phrase.of("A positive answer again: ").then(all).text(" is in tension."),
                Phrase.of("So ").then(all).text(" pulls on the joint."),
                Phrase.of("The arrow was drawn the right way round; ").then(all).text(" is stretched."))
                : variety.of("tensions",
                Phrase.of(each(names) + " answers are positive, so ").then(all).text(" pull as they were drawn: "
                        + each(names).toLowerCase(java.util.Locale.ROOT) + " are in tension."),
                all.text(names.size() == 2 ? " both pull on the joint." : " all pull on the joint."),
                Phrase.of("No sign has to be turned: ").then(all).text(" are in tension."));
    }

    private Phrase compression(List<String> names) {
        Phrase all = Series.names(names);
        return names.size() == 1
                ? variety.of("compression",
                Phrase.of("The minus sign says that ").then(all)
                        .text(" does not pull as it was drawn; it pushes on the joint and is in compression."),
                Phrase.of("Negative: ").then(all).text(" pushes, so it is in compression."),
                all.text("'s arrow has to be turned round. It is a compression member."),
                Phrase.of("Here ").then(all).text(" is the one that pushes."),
                Phrase.of("By its minus sign ").then(all).text(" is squeezed between its joints."))
                : variety.of("compressions",
                Phrase.of(each(names) + " answers are negative: ").then(all).text(" push on the joint instead of pulling, which is compression."),
                all.text(names.size() == 2 ? " both come out negative and push." : " all come out negative and push."),
                Series.capital(Phrase.of(Series.number(names.size()) + " minus signs, so ")).then(all)
                        .text(names.size() == 2 ? " are both in compression." : " are all in compression."));
    }

    private static String each(List<String> names) {
        return names.size() == 2 ? "Both" : "All";
    }

    private Phrase mixed(List<String> pulling, List<String> pushing) {
        Phrase plus = Series.names(pulling);
        Phrase minus = Series.names(pushing);
        if (pulling.size() + pushing.size() > 2) {
            String pull = pulling.size() == 1 ? " pulls" : " pull";
            String push = pushing.size() == 1 ? " pushes" : " push";
            return variety.of("mixed three",
                    plus.text((pulling.size() == 1 ? " is" : " are") + " positive and" + pull
                            + ": tension. The minus sign of ").then(minus).text(" says that "
                            + (pushing.size() == 1 ? "it pushes" : "they push") + " instead: compression."),
                    minus.text(push + " on the joint, and ").then(plus).text(pull + "."),
                    plus.text((pulling.size() == 1 ? " is" : " are") + " in tension and ").then(minus).text(" in compression."));
        }
        return variety.of("mixed",
                plus.text(" is positive and pulls, as drawn: tension. The minus sign of ").then(minus)
                        .text(" says that it pushes instead: compression."),
                minus.text(" pushes on the joint and ").then(plus).text(" pulls."),
                Phrase.of("Of the two, ").then(plus).text(" is stretched and ").then(minus).text(", with its minus sign, compressed."),
                Phrase.of("So turn the arrow of ").then(minus).text(", which is in compression; that of ").then(plus)
                        .text(" stays, in tension."),
                plus.text(" holds the joint back while ").then(minus).text(" props it."));
    }

    private Phrase zero(List<String> names) {
        Phrase all = Series.names(names);
        String carry = names.size() == 1 ? " carries" : " carry";
        return variety.of("zero",
                all.text(carry + " nothing. No rule showed that at sight; it is these loads that leave "
                        + (names.size() == 1 ? "it" : "them") + " idle."),
                all.text(carry + " nothing either, under these loads."),
                Phrase.of("For ").then(all).text(" nothing is left to carry."));
    }

    private Phrase reaction(Source.OfReaction reaction, double value) {
        if (value == 0) {
            return Phrase.of("The reaction ").math(notation.symbol(reaction)).text(" comes out as zero.");
        }
        String way = Heading.words(Heading.vector(reaction.direction()).times(Math.signum(value)));
        return variety.of("reaction",
                Phrase.of("The minus sign of ").math(notation.symbol(reaction)).text(" says that the support acts " + way
                        + ", against the way it was drawn."),
                Phrase.of("Being negative, ").math(notation.symbol(reaction)).text(" acts " + way + "."));
    }

    private Phrase passedOn(Member member) {
        List<String> same = inLine.with(member);
        if (same.isEmpty()) {
            return Phrase.EMPTY;
        }
        Expression[] sides = new Expression[same.size() + 1];
        for (int i = 0; i < same.size(); i++) {
            sides[i] = Expressions.symbol("F", same.get(i));
        }
        sides[same.size()] = Notation.force(member);
        Phrase equal = Phrase.of(Expressions.equal(sides));
        Phrase others = Series.names(same);
        boolean one = same.size() == 1;
        return variety.of("passed on",
                others.text(one ? " lies in line with " + member.name() + " and carries the same, as seen at the start: "
                        : " lie in line with " + member.name() + " and carry the same, as seen at the start: ").then(equal).text("."),
                Phrase.of("That settles ").then(others).text(" too: ").then(equal).text("."),
                Phrase.of("The same force runs on in ").then(others).text(": ").then(equal).text("."));
    }
}
