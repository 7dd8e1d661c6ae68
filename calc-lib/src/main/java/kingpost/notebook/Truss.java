package kingpost.notebook;

import java.nio.file.Path;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import kingpost.derivation.Figure;
import kingpost.derivation.Phrase;
import kingpost.diagram.TrussFigure;
import kingpost.explain.DeterminacyExplanation;
import kingpost.explain.InspectionExplanation;
import kingpost.explain.JointOrderExplanation;
import kingpost.explain.EnvelopeExplanation;
import kingpost.explain.MemberExplanation;
import kingpost.explain.Question;
import kingpost.explain.SectionExplanation;
import kingpost.explain.SubstituteExplanation;
import kingpost.marking.Marker;
import kingpost.moving.Effect;
import kingpost.render.Edition;
import kingpost.render.Exhibit;
import kingpost.render.Showable;
import kingpost.statics.Determinacies;
import kingpost.statics.Determinacy;
import kingpost.statics.Inspection;
import kingpost.statics.Inspections;
import kingpost.statics.JointOrder;
import kingpost.statics.Envelope;
import kingpost.statics.MemberSearch;
import kingpost.statics.MemberWays;
import kingpost.statics.SectionResult;
import kingpost.statics.Sections;
import kingpost.statics.Solver;
import kingpost.statics.Source;
import kingpost.statics.SubstitutedMember;
import kingpost.svg.Svg;
import kingpost.truss.LoadCases;
import kingpost.truss.Member;
import kingpost.truss.TrussBuilder;
import kingpost.truss.TrussModel;
import kingpost.units.CalculationException;
import kingpost.variant.VariantSet;

/**
 * A truss in a notebook: written down once, then asked.
 *
 * <pre>{@code
 * var canopy = Truss.named("Loading-dock canopy")
 *         .units(m, kN)
 *         .joint("A", 0, 0).joint("B", 3, 0).joint("C", 6, 0).joint("D", 3, 2.25)
 *         .members("AB BC AD BD CD")
 *         .pin("A").roller("C")
 *         .load("D", 12, DOWN)
 *         .build();
 * }</pre>
 */
public final class Truss extends TradeForms implements Showable, NamesInQuotes {

    private final TrussModel model;

    private Truss(TrussModel model) {
        this.model = model;
    }

    /** Begins a truss: joints, members, supports and loads follow in any order, then {@code build()}. */
    public static TrussBuilder<Truss> named(String name) {
        return new TrussBuilder<>(name, Truss::new);
    }

    /** The truss of a model. */
    public static Truss of(TrussModel model) {
        return new Truss(model);
    }

    /** What was written down: joints, members, supports, loads. */
    public TrussModel model() {
        return model;
    }

    /** Members and reactions counted against two equations a joint, and whether anything can move. */
    public Answer<Determinacy> determinacy() {
        Determinacy facts = Determinacies.of(model);
        return Answer.to(Question.determinacy(model, facts), facts, Exhibit.of(DeterminacyExplanation.of(model, facts)));
    }

    /** Members that carry nothing, each with the rule that shows it, and joints that only look like a rule. */
    public Answer<Inspection> zeroForceMembers() {
        Inspection facts = Inspections.of(model);
        return Answer.to(Question.zeroForceMembers(model, facts), facts, Exhibit.of(InspectionExplanation.of(model, facts)));
    }

    /** Which joint comes next, how many unknowns each other joint has, and why this one. */
    public Answer<JointOrder> jointOrder() {
        JointOrder facts = JointOrder.of(model);
        return Answer.to(Question.jointOrder(model, facts), facts, Exhibit.of(JointOrderExplanation.of(model, facts)));
    }

    /**
     * Every force, worked joint by joint and checked.
     *
     * @throws kingpost.units.CalculationException when the truss moves, or has more unknowns than equations, or joints
     *                                             alone do not reach every member
     */
    public TrussSolution solve() {
        return new TrussSolution(Solver.solve(model));
    }

    /**
     * The method of sections: cuts these members, keeps the simpler part, and finds each force by an equation that
     * leaves it alone; or says why the cut gives nothing, and offers one that does.
     *
     * @param members by name, as in {@code "BC BD AD"}; spaces and commas part them
     * @throws kingpost.units.CalculationException when a member is not there, or the truss is not determinate
     */
    public Answer<SectionResult> section(String members) {
        String names = members == null ? "" : members.strip();
        List<Member> cut = Stream.of(names.split("[\\s,;]+")).filter(name -> !name.isEmpty())
                .map(name -> TrussNames.member(model, name)).toList();
        SectionResult facts = Sections.of(model, cut);
        return Answer.to(Question.section(facts), facts, Exhibit.of(SectionExplanation.of(facts)));
    }

    /** So many variants with clean numbers and the same difficulty; the same each time. */
    public TrussVariants variants(int count) {
        return variants(count, 1);
    }

    /**
     * So many variants with clean numbers and the same difficulty, no two alike: handout, key and working of each.
     *
     * @param seed another seed makes another set
     * @throws kingpost.units.CalculationException when the truss cannot be varied, or not so often
     */
    public TrussVariants variants(int count, long seed) {
        return new TrussVariants(VariantSet.of(model, count, seed));
    }

    /**
     * Marks one person's answers, in the notation in which people write them: {@code "AB = 12 kN tension, BC = -3"}. What
     * is wrong is told with its likeliest slip; what cannot be read is left to a person.
     */
    public MarkedAnswers mark(String answers) {
        if (answers == null) {
            throw new CalculationException("Answers: there are none; write them as in mark(\"AB = 12 kN tension, BC = -3\").");
        }
        Marker marker = Marker.of(Solver.solve(model));
        return new MarkedAnswers(marker, marker.mark(answers));
    }

    /** Marks answers by name: each a text, a number in the truss's unit of force, or a quantity. */
    public MarkedAnswers mark(Map<String, ?> answers) {
        Marker marker = Marker.of(Solver.solve(model));
        return new MarkedAnswers(marker, marker.mark(answers));
    }

    /** Marks the answers of a class: the text of a table, or the name of its file. */
    public ClassMarks markClass(String csv) {
        return new ClassMarks(Marker.of(Solver.solve(model)).markClass(AnswerTables.read(csv)));
    }

    /** Marks the answers of a class in a file of comma-separated values: a row for each student, a column for each force. */
    public ClassMarks markClass(Path file) {
        return new ClassMarks(Marker.of(Solver.solve(model)).markClass(AnswerTables.read(file)));
    }

    /**
     * The shortest honest way to one member: by looking, by a section, or by joints, with or without the reactions. The
     * ways are compared by the equations that they take; the shortest is worked and checked.
     *
     * @throws kingpost.units.CalculationException when the member is not there, or the truss is not determinate
     */
    public Answer<MemberWays> member(String name) {
        MemberWays facts = MemberSearch.of(model, TrussNames.member(model, name));
        return Answer.to(Question.member(facts), facts,
                Exhibit.of(MemberExplanation.of(facts, Inspections.of(model))));
    }

    /** What a load that moves over the truss does to a member; see {@link Influence}. */
    public Influence influence(String member) {
        Member of = TrussNames.member(model, member);
        return new Influence(model, chord -> new Effect.OfMember(of), Optional.empty());
    }

    /**
     * What a load that moves over the truss does to the reaction at a joint: to its vertical component, where it has
     * more than one.
     *
     * @param joint a supported joint, or one component by its symbol, as in {@code "A_x"}
     * @throws kingpost.units.CalculationException when nothing supports the joint
     */
    public Influence influenceOfReaction(String joint) {
        List<Source.OfReaction> all = Source.OfReaction.of(model);
        Source.OfReaction of = all.stream().filter(r -> r.symbol().equals(joint)).findFirst().orElseGet(() -> {
            String held = TrussNames.support(model, joint);
            return all.stream().filter(r -> r.joint().equals(held))
                    .max(Comparator.comparingDouble(r -> Math.abs(r.direction().cosY()))).orElseThrow();
        });
        return new Influence(model, chord -> new Effect.OfReaction(of), Optional.empty());
    }

    /**
     * What a load that moves over the truss does to the shear in a panel of the loaded chord.
     *
     * @param panel its two joints from left to right, as in {@code "L1 L2"}
     */
    public Influence influenceOfShear(String panel) {
        if (panel == null) {
            throw new CalculationException("Panel: none is named; write its two joints, as in influenceOfShear(\"L1 L2\").");
        }
        List<String> ends = Stream.of(panel.strip().split("[\\s,;]+")).map(name -> TrussNames.joint(model, name)).toList();
        if (ends.size() != 2) {
            throw new CalculationException("Panel " + panel.strip() + ": it takes two joints of the loaded chord; write them"
                    + " from left to right, as in influenceOfShear(\"L1 L2\").");
        }
        return new Influence(model, chord -> new Effect.OfShear(ends.get(0), ends.get(1)), Optional.empty());
    }

    /**
     * A complex truss by a substituted member: this one is taken out and another put in, so that joints alone reach
     * every member; the changed truss is worked twice, and both solutions added so that the substitute carries nothing.
     *
     * @throws kingpost.units.CalculationException when the member is not there, the truss is not determinate, or no
     *                                             exchange makes it simple
     */
    public Answer<SubstitutedMember> substitute(String member) {
        return substituted(SubstitutedMember.of(model, TrussNames.member(model, member)));
    }

    /**
     * The same with a substitute of one's own choice.
     *
     * @param member     to take out
     * @param substitute to put in, by the joints between which it lies: {@code "CE"} or {@code "L0-U2"}
     */
    public Answer<SubstitutedMember> substitute(String member, String substitute) {
        Member out = TrussNames.member(model, member);
        Member in = TrussNames.between(model, substitute);
        return substituted(SubstitutedMember.of(model, out, in.from(), in.to()));
    }

    private static Answer<SubstitutedMember> substituted(SubstitutedMember facts) {
        return Answer.to(Question.substitute(facts), facts, Exhibit.of(SubstituteExplanation.of(facts)));
    }

    /**
     * The truss under one of its load cases.
     *
     * @throws kingpost.units.CalculationException when it has no such case
     */
    public Truss loadCase(String name) {
        LoadCases.LoadCase found = TrussNames.loadCase(model, name);
        return new Truss(model.under(model.name() + ", " + found.name(), found.loads()));
    }

    /**
     * The truss under a combination of its load cases, the loads times their factors.
     *
     * @param formula the name of a combination that was written, or any other: {@code "1.2 dead + 1.6 snow"}
     * @throws kingpost.units.CalculationException when it cannot be read, or names a case that is not there
     */
    public Truss combination(String formula) {
        LoadCases.Combination found = TrussNames.combination(model, formula);
        return new Truss(model.under(model.name() + ", " + found.name(), Envelope.loads(model, found)));
    }

    /**
     * Every force in every load case and every combination.
     *
     * @throws kingpost.units.CalculationException when the truss has no load cases, or is not determinate
     */
    public Answer<Envelope> combinations() {
        Envelope facts = Envelope.of(model);
        return Answer.to(Question.combinations(facts), facts, Exhibit.of(EnvelopeExplanation.ofAll(facts)));
    }

    /**
     * Each member's largest tension and largest compression over the combinations, with the one that governs; over the
     * cases where no combination is written.
     *
     * @throws kingpost.units.CalculationException when the truss has no load cases, or is not determinate
     */
    public Answer<Envelope> envelope() {
        Envelope facts = Envelope.of(model);
        return Answer.to(Question.envelope(facts), facts, Exhibit.of(EnvelopeExplanation.of(facts)));
    }

    /** The figure of the truss. */
    public Exhibit diagram() {
        return figure(TrussFigure.of(model), model.name());
    }

    static Exhibit figure(Svg svg, String caption) {
        return Exhibit.of(new Figure(svg, Phrase.of(caption), svg.description()));
    }

    @Override
    public List<String> names(String method) {
        return TrussNames.of(model, method);
    }

    @Override
    public Map<String, Object> show() {
        return diagram().show();
    }

    @Override
    public Optional<Map<String, Object>> show(Edition edition) {
        return edition == Edition.SOLUTION ? Optional.of(show()) : Editions.of(model, edition);
    }

    @Override
    public String toString() {
        return diagram().toString();
    }
}
