package kingpost.explain;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.StreamSupport;

import kingpost.derivation.Block;
import kingpost.derivation.Block.Prose;
import kingpost.derivation.Expressions;
import kingpost.derivation.Phrase;
import kingpost.statics.AxisEquation;
import kingpost.statics.AxisEquation.Role;
import kingpost.statics.BodyEquation;
import kingpost.statics.BodyEquation.Kind;
import kingpost.statics.JointForce;
import kingpost.statics.Source;
import kingpost.statics.Step;
import kingpost.statics.Step.JointCount;
import kingpost.truss.Member;

/** What is done where the way from joint to joint ends: a section through the truss, or several joints at once. */
final class OpeningExplanation {

    private static final int FEW = 6;

    private final Notation notation;
    private final Variety variety;

    OpeningExplanation(Notation notation, Variety variety) {
        this.notation = notation;
        this.variety = variety;
    }

    /** "Section through AB, CD and EF". */
    static String title(Step.AtSection step) {
        return "Section through " + names(step.cut());
    }

    /** "Joints C and D together". */
    static String title(Step.JointsTogether step) {
        return "Joints " + plain(step.joints()) + " together";
    }

    List<Block> blocks(Step.AtSection step) {
        List<Block> blocks = new ArrayList<>();
        blocks.add(new Prose(stuck(step.stuck()).sentence(cut(step))));
        blocks.addAll(Pictures.section(notation.truss(), step));
        BodyEquations equations = new BodyEquations(notation);
        for (BodyEquation equation : step.equations()) {
            blocks.add(new Prose(lead(step, equation)));
            blocks.add(equations.block(equation));
        }
        Phrase senses = senses(step.answers());
        if (!senses.isEmpty()) {
            blocks.add(new Prose(senses));
        }
        return blocks;
    }

    List<Block> blocks(Step.JointsTogether step) {
        List<Block> blocks = new ArrayList<>();
        Phrase all = Series.and(step.answers(), answer -> Phrase.of(notation.symbol(answer.unknown())));
        blocks.add(new Prose(stuck(step.stuck()).sentence(Phrase.of(notation.truss().isSpace() ? "Joints "
                : "No section leaves one unknown alone either. Joints ")
                .then(Series.names(step.joints())).text(" together have as many useful equations as unknowns, ").then(all)
                .text(", so their equations are solved at once."))));
        List<JointForce> forces = step.forces().stream().map(Step.BodyForce::force).toList();
        JointEquations written = new JointEquations(notation, new Step.Axes.Conventional(), forces);
        for (String joint : step.joints()) {
            List<AxisEquation> atJoint = step.equations().stream().filter(each -> each.joint().equals(joint))
                    .map(Step.JointEquation::equation).filter(each -> each.role() instanceof Role.Together).toList();
            if (!atJoint.isEmpty()) {
                blocks.add(new Prose(Phrase.of("At joint ").strong(joint).text(":")));
                blocks.add(written.unsolved(atJoint));
            }
        }
        blocks.add(Prose.of("Solved together, " + (step.answers().size() > 3 ? "which is work for elimination or a machine,"
                + " these give:" : "these give:")));
        blocks.add(written.answers(step.answers()));
        if (step.answers().size() > 3 && notation.truss().joints().stream().allMatch(j -> j.z().getValue() == 0)) {
            blocks.add(Prose.of("By hand there is another way: exchange a member for one between two other joints, so that"
                    + " joints go through, and add two such solutions; substitute(\"" + memberOf(step) + "\") tries it."));
        }
        blocks.add(new Prose(senses(step.answers())));
        return blocks;
    }

    private static String memberOf(Step.JointsTogether step) {
        return step.answers().stream().map(Step.Answer::unknown).filter(Source.OfMember.class::isInstance)
                .map(source -> ((Source.OfMember) source).member().name()).findFirst().orElse("");
    }

    /** "The whole truss and the part with A, B and C". */
    static String title(Step.TwoBodies step) {
        return Series.capital(plain(step.bodies().stream().map(OpeningExplanation::body).toList())) + " together";
    }

    static String body(Step.AtSection body) {
        List<String> part = body.part();
        return body.cut().isEmpty() ? "the whole truss" : "the part with " + plain(part.size() <= FEW ? part
                : List.of(part.get(0), part.get(1), (part.size() - 2) + " more"));
    }

    List<Block> blocks(Step.TwoBodies step) {
        List<Block> blocks = new ArrayList<>();
        Phrase both = Series.and(step.answers(), answer -> Phrase.of(notation.symbol(answer.unknown())));
        blocks.add(new Prose(stuck(step.stuck()).sentence(Phrase.of("No equation of the whole truss or of a part of it holds"
                + " one unknown alone either. But two hold the same two, ").then(both)
                .text(", and can be solved together: one of " + body(step.bodies().get(0)) + ", one of "
                        + body(step.bodies().get(1)) + "."))));
        BodyEquations equations = new BodyEquations(notation);
        for (Step.AtSection body : step.bodies()) {
            BodyEquation equation = body.equations().get(0);
            Phrase what = Series.capital(equation.kind() instanceof Kind.Moment moment ? moment(moment)
                    .text(moment.passing().isEmpty() ? "" : ", where ").then(symbols(moment.passing()))
                    .text(moment.passing().isEmpty() ? "" : moment.passing().size() == 1 ? " drops out" : " drop out")
                    : Phrase.of("the sum ").math(Expressions.sigma(Expressions.symbol("F",
                            ((Kind.Along) equation.kind()).axis().label()))));
            blocks.add(new Prose(Phrase.of(Series.capital(body(body)) + ". ").then(what).text(":")));
            blocks.addAll(Pictures.section(notation.truss(), body));
            blocks.add(equations.block(equation));
        }
        blocks.add(Prose.of("Two equations with two unknowns, solved together:"));
        blocks.add(equations.answers(step.answers()));
        return blocks;
    }

    /** Where the work by joints stopped and why. */
    private Phrase stuck(List<JointCount> counts) {
        List<JointCount> all = StreamSupport.stream(counts.spliterator(), false).toList();
        if (all.isEmpty()) {
            return Phrase.EMPTY;
        }
        List<Phrase> each = all.stream().limit(FEW)
                .map(count -> Phrase.of(count.joint() + " has " + Series.number(count.unknowns().size()))).toList();
        String more = all.size() > FEW ? ", and so on" : "";
        return variety.of("stuck",
                Phrase.of("Here joint by joint comes to a stop: no joint is left with few enough unknowns. ")
                        .then(Series.and(each)).text(more + "."),
                Phrase.of("The joints are stuck again: ").then(Series.and(each)).text(more + " unknown."));
    }

    private Phrase cut(Step.AtSection step) {
        Phrase cut = Phrase.of("Cut through ").then(Series.names(step.cut().stream().map(Member::name).toList()))
                .text(" and keep the part with ").then(Series.names(step.part(), FEW)).text(switch (step.keep()) {
                    case NO_REACTIONS -> ": no support holds it, so no reaction is needed.";
                    case LEAVES_ONE_ALONE -> ", of which " + (step.answers().size() == 1 ? "one equation is"
                            : Series.number(step.answers().size()) + " equations are") + " enough.";
                    case FEWER_FORCES -> ", on which fewer forces act.";
                    case EITHER -> "; the other would do as well.";
                });
        return step.omitted().isEmpty() ? cut : cut.sentence(Phrase.of("The cut also passes ")
                .then(Series.names(step.omitted().stream().map(Member::name).toList())).text(", which carries nothing."));
    }

    private Phrase lead(Step.AtSection step, BodyEquation equation) {
        Phrase what = equation.kind() instanceof Kind.Moment moment ? moment(moment)
                : Phrase.of("the sum ").math(Expressions.sigma(Expressions.symbol("F",
                        ((Kind.Along) equation.kind()).axis().label())));
        if (!(equation.role() instanceof Role.Gives gives)) {
            return Phrase.of("As a check, ").then(what).text(":");
        }
        Phrase take = Phrase.of("For ").then(Phrase.of(notation.symbol(gives.unknown()))).text(", take ").then(what);
        if (equation.kind() instanceof Kind.Moment moment) {
            return moment.passing().isEmpty() ? take.text(", in which it is the only unknown:")
                    : take.text(": ").then(symbols(moment.passing()))
                            .text(moment.passing().size() == 1 ? " passes through it and drops out."
                                    : " meet there and drop out.");
        }
        return take.then(across(step, equation, ((Kind.Along) equation.kind()).axis()));
    }

    /** Why a sum of forces holds one unknown: the others lie across it, or are known by now. */
    private Phrase across(Step.AtSection step, BodyEquation equation, AxisEquation.Axis axis) {
        List<Source> inIt = equation.terms().stream().map(BodyEquation.Term::source).toList();
        List<Source> out = step.forces().stream().map(Step.BodyForce::force).filter(force -> !force.known())
                .map(JointForce::source).filter(source -> !inIt.contains(source)).toList();
        if (out.isEmpty()) {
            return Phrase.of(", in which it is the only unknown:");
        }
        String lie = switch (axis.label()) {
            case "x" -> "upright";
            case "y" -> "level";
            default -> "across y\u2032";
        };
        Phrase others = Phrase.of(": ").then(symbols(out));
        return out.size() == 1 ? others.text(" is " + lie + " and has no part in it.")
                : others.text(" are " + lie + ". Parallel forces meet in no point, but this sum leaves them out.");
    }

    private Phrase symbols(List<Source> sources) {
        return Series.and(sources, source -> Phrase.of(notation.symbol(source)));
    }

    private static Phrase moment(Kind.Moment moment) {
        return Phrase.of("moments about ").then(moment.joint().isEmpty()
                ? Phrase.of("the point O where the lines of the others cross")
                : Phrase.of("joint ").strong(moment.joint()));
    }

    private static Phrase senses(List<Step.Answer> answers) {
        List<Phrase> said = answers.stream().filter(answer -> answer.unknown() instanceof Source.OfMember)
                .map(answer -> Phrase.of(((Source.OfMember) answer.unknown()).member().name() + " "
                        + (answer.value() == 0 ? "carries nothing" : "is in " + SenseWords.noun(answer.value())))).toList();
        return said.isEmpty() ? Phrase.EMPTY : Series.and(said).text(".");
    }

    private static String names(List<Member> members) {
        return plain(members.stream().map(Member::name).toList());
    }

    /** "A", "A and B", "A, B and C" as a plain string. */
    static String plain(List<String> names) {
        int last = names.size() - 1;
        return names.size() < 2 ? String.join("", names)
                : String.join(", ", names.subList(0, last)) + " and " + names.get(last);
    }
}
