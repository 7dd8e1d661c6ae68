package kingpost.explain;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

import kingpost.derivation.Expressions;
import kingpost.derivation.Inline;
import kingpost.derivation.Phrase;
import kingpost.statics.JointForce;
import kingpost.statics.Source;
import kingpost.statics.Step;
import kingpost.statics.Step.JointCount;
import kingpost.truss.Load;
import kingpost.truss.Member;

/** Why it is this joint's turn, and what is known there. */
final class JointIntroduction {

    private static final int FEW = 5;

    private final Notation notation;
    private final Variety variety;
    private final InLine inLine;

    JointIntroduction(Notation notation, Variety variety, InLine inLine) {
        this.notation = notation;
        this.variety = variety;
        this.inLine = inLine;
    }

    /**
     * @param step     the joint's step
     * @param previous the joint worked before it, if any
     * @param last     whether no joint is worked after it
     */
    Phrase why(Step.AtJoint step, Optional<Step.AtJoint> previous, boolean last) {
        if (step.selection().reason() == Step.Selection.Reason.ONE_ACROSS) {
            String flat = notation.truss().isSpace() ? "plane" : "line";
            return Phrase.of("No joint can be solved whole now. But at joint ").strong(step.joint())
                    .text(" all unknowns except ").then(unknowns(step))
                    .text(" lie in one " + flat + ", and a sum across that " + flat + " holds none of them.");
        }
        if (previous.isEmpty()) {
            return first(step);
        }
        if (last && step.answers().size() == 1) {
            return Phrase.of("One force is still missing: ").then(unknowns(step)).text(". Joint ").strong(step.joint())
                    .text(" gives it.");
        }
        return switch (step.selection().reason()) {
            case ONLY_ONE -> onlyOne(step, previous.get());
            case FEWEST_UNKNOWNS -> fewest(step);
            case NEXT_ALONG -> nextAlong(step, previous.get());
            case FIRST_NAMED, ONE_ACROSS -> firstNamed(step);
        };
    }

    private Phrase first(Step.AtJoint step) {
        boolean held = step.forces().stream().anyMatch(force -> force.source() instanceof Source.OfReaction && force.known());
        if (held) {
            return Phrase.of("With the reactions known, joint ").strong(step.joint()).text(" has only ").then(unknowns(step))
                    .text(" left unknown. That is a place to begin.").sentence(alternatives(step));
        }
        boolean free = step.forces().stream().noneMatch(force -> force.source() instanceof Source.OfReaction);
        return Phrase.of("Begin at joint ").strong(step.joint()).text(", where only ").then(unknowns(step))
                .text(step.answers().size() == 1 ? " is unknown." : " are unknown.")
                .text(free ? " No support holds it, so no reaction is needed for it." : "").sentence(alternatives(step));
    }

    private Phrase alternatives(Step.AtJoint step) {
        List<String> others = step.selection().counts().stream().filter(JointCount::ready).map(JointCount::joint)
                .filter(joint -> !joint.equals(step.joint())).toList();
        return others.isEmpty() ? Phrase.EMPTY : Phrase.of(others.size() == 1 ? "Joint " : "Joints ")
                .then(Series.names(others, FEW)).text(" would serve as well.");
    }

    private Phrase onlyOne(Step.AtJoint step, Step.AtJoint previous) {
        Phrase joint = Phrase.of("joint ").strong(step.joint());
        List<Phrase> fresh = fresh(step, previous);
        Phrase opened = fresh.isEmpty() ? Phrase.of("Next is ").then(joint).text(", where ").then(left(step))
                .text("; no other joint is ready.")
                : Phrase.of("Now that ").then(Series.and(fresh)).text(fresh.size() == 1 ? " is known, " : " are known, ")
                .then(joint).text(" is within reach: ").then(left(step)).text(". At every other joint too much is still unknown.");
        return variety.of("only one", opened,
                Phrase.of("The way on leads through ").then(joint).text(". There, ").then(left(step))
                        .text(", and no other joint is ready."),
                Phrase.of("Of the joints that remain, ").then(joint).text(" alone can be worked: ").then(left(step)).text("."),
                Phrase.of("That opens ").then(joint).text(" and no other; ").then(left(step)).text(" there."));
    }

    private Phrase fewest(Step.AtJoint step) {
        Phrase joint = Phrase.of("joint ").strong(step.joint());
        return variety.of("fewest",
                Phrase.of("Several joints are ready now, and ").then(joint).text(" is the easiest of them: ").then(left(step))
                        .text("."),
                Phrase.of("The least work is at ").then(joint).text(", where ").then(left(step)).text("."),
                Phrase.of("At ").then(joint).text(", ").then(left(step)).text(". That is fewer than elsewhere, so it comes next."),
                Phrase.of("Take ").then(joint).text(" now, while ").then(left(step)).text(" there."));
    }

    private Phrase nextAlong(Step.AtJoint step, Step.AtJoint previous) {
        Phrase joint = Phrase.of("joint ").strong(step.joint());
        Optional<String> member = step.forces().stream().map(JointForce::source)
                .filter(Source.OfMember.class::isInstance).map(source -> ((Source.OfMember) source).member())
                .filter(each -> each.meets(previous.joint())).map(Member::name).findFirst();
        String along = member.map(name -> " along " + name).orElse("");
        return variety.of("next along",
                Phrase.of("Move on" + along + " to ").then(joint).text(", where ").then(left(step)).text("."),
                Phrase.of(member.map(name -> "Follow " + name + " to its other end. At ").orElse("Stay near by: at "))
                        .then(joint).text(", ").then(left(step)).text("."),
                Phrase.of("Next door is ").then(joint).text(", and there ").then(left(step)).text("."),
                Phrase.of(member.map(name -> name + " leads on to ").orElse("The next is ")).then(joint)
                        .text("; ").then(left(step)).text(" there."));
    }

    private Phrase firstNamed(Step.AtJoint step) {
        int unknowns = step.answers().size();
        List<String> equals = step.selection().counts().stream().filter(JointCount::ready)
                .filter(count -> count.unknowns().size() == unknowns).map(JointCount::joint).toList();
        Phrase joint = Phrase.of("joint ").strong(step.joint());
        return variety.of("first named",
                Phrase.of("Joints ").then(Series.names(equals, FEW)).text(" are equally ready. Take ").then(joint)
                        .text(" first: ").then(left(step)).text("."),
                Phrase.of("There is a choice now between ").then(Series.names(equals, FEW)).text("; with ").then(joint)
                        .text(", ").then(left(step)).text("."),
                Phrase.of("It makes no difference which of ").then(Series.names(equals, FEW)).text(" comes next. At ")
                        .then(joint).text(", ").then(left(step)).text("."));
    }

    /** "only F is unknown", "F and G are unknown". */
    private Phrase left(Step.AtJoint step) {
        return step.answers().size() == 1 ? Phrase.of("only ").then(unknowns(step)).text(" is unknown")
                : unknowns(step).text(" are unknown");
    }

    private Phrase unknowns(Step.AtJoint step) {
        return Series.and(step.answers(), answer -> Phrase.of(notation.symbol(answer.unknown())));
    }

    /** What became known at the previous joint and acts at this one. */
    private List<Phrase> fresh(Step.AtJoint step, Step.AtJoint previous) {
        return step.forces().stream().filter(JointForce::known).map(JointForce::source)
                .filter(source -> previous.answers().stream().anyMatch(answer -> answer.unknown().equals(source)))
                .map(source -> Phrase.of(notation.symbol(source))).toList();
    }

    /** What is known at the joint, and what is left out of its free body. */
    Phrase known(Step.AtJoint step) {
        List<Phrase> known = step.forces().stream().filter(JointForce::known).map(this::known).toList();
        Phrase said = Phrase.EMPTY;
        if (!known.isEmpty()) {
            Phrase all = Series.and(known);
            boolean one = known.size() == 1;
            said = variety.of("known",
                    Phrase.of("Known there: ").then(all).text("."),
                    Phrase.of("Already acting on it: ").then(all).text("."),
                    capital(all).text(one ? " is known there." : " are known there."),
                    Phrase.of(one ? "One force on it is known, " : "Of the forces on it, these are known: ").then(all).text("."));
        }
        return said.sentence(omitted(step.omitted()));
    }

    /** Known forces start with "the load" or with a symbol. */
    private static Phrase capital(Phrase all) {
        return all.pieces().get(0) instanceof Inline.Text ? Series.capital(all) : all;
    }

    private Phrase known(JointForce force) {
        return force.source().accept(new Source.Visitor<>() {
            @Override
            public Phrase member(Source.OfMember of) {
                return value(of, force.value()).text(" (" + SenseWords.noun(force.value()) + because(of.member()) + ")");
            }

            @Override
            public Phrase reaction(Source.OfReaction of) {
                return value(of, force.value());
            }

            @Override
            public Phrase load(Source.OfLoad of) {
                if (of.load() instanceof Load.Components parts && notation.truss().isSpace()) {
                    return Phrase.of("the load of ").math(Notation.given(parts.fx())).text(" along x, ")
                            .math(Notation.given(parts.fy())).text(" along y and ").math(Notation.given(parts.fz()))
                            .text(" along z");
                }
                boolean upright = Heading.isUpright(Heading.vector(of.load().direction()));
                String way = of.load() instanceof Load.Directed directed && !upright
                        ? " (" + directed.direction().words() + ")" : "";
                return Phrase.of("the load of ").math(notation.loadAmount(of.load())).text(way);
            }
        });
    }

    private Phrase value(Source source, double newtons) {
        return Phrase.of(Expressions.equal(notation.symbol(source), notation.answer(newtons)));
    }

    /** Said once of each member in line with another. */
    private String because(Member member) {
        List<String> same = inLine.with(member);
        return same.isEmpty() || !variety.isFirst("in line " + member.name()) ? ""
                : ", as in " + String.join(" and ", same);
    }

    private Phrase omitted(List<Member> omitted) {
        if (omitted.isEmpty()) {
            return Phrase.EMPTY;
        }
        List<String> names = new ArrayList<>(omitted.stream().map(Member::name).toList());
        boolean one = names.size() == 1;
        Phrase all = Series.names(names);
        return variety.of("omitted",
                all.text(one ? " carries nothing, as seen before, and is left out."
                        : " carry nothing, as seen before, and are left out."),
                all.text(one ? " is idle and not drawn." : " are idle and not drawn."),
                Phrase.of("Leave out ").then(all).text(one ? ", which is idle." : ", which are idle."));
    }
}
