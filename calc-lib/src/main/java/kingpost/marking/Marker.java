package kingpost.marking;

import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import kingpost.csv.CsvTable;
import kingpost.marking.AnswerSheet.Stated;
import kingpost.marking.MarkedSheet.MarkedAnswer;
import kingpost.marking.Reading.Force;
import kingpost.marking.Slip.Kind;
import kingpost.marking.Slip.Place;
import kingpost.statics.Solution;
import kingpost.truss.Member;
import kingpost.truss.TrussModel;
import kingpost.units.CalculationException;
import kingpost.units.Quantity;
import kingpost.units.StructuralUnits;

/**
 * Marks answers for one truss.
 *
 * <p>An answer is right when it is the right force to three significant figures, in the right sense; fewer figures are
 * right to those. For what is wrong the truss is worked again with slips put in, the fewest that give the answers
 * stated. An answer that cannot be read for sure is never marked.
 *
 * <p><b>Signs</b>: a number without a word is tension when positive, unless the sheet declares otherwise.
 */
public final class Marker {

    private static final double[] BUDGETS = {1.4, 2.7, 4.0, 5.3};

    private final Solution solution;
    private final Unknowns unknowns;
    private final Bodies bodies;
    private final Workings workings;
    private final List<Working> usual;
    private final double[] right;
    private final double truss;

    private Marker(Solution solution) {
        TrussModel model = solution.truss();
        this.solution = solution;
        this.unknowns = Unknowns.of(model, solution.reactions().stream().map(Solution.ReactionResult::reaction).toList());
        this.bodies = new Bodies(unknowns);
        this.workings = new Workings(bodies, solution);
        this.usual = workings.usual();
        this.right = new double[unknowns.count()];
        for (int i = 0; i < right.length; i++) {
            double newtons = unknowns.isMember(i) ? solution.members().get(i).force()
                    : solution.reactions().get(i - model.members().size()).force();
            right[i] = Quantity.of(newtons, StructuralUnits.N).in(model.forceUnit());
        }
        this.truss = largest();
    }

    /** @throws CalculationException for a truss in space, whose slips cannot be looked for yet */
    public static Marker of(Solution solution) {
        boolean planar = solution.truss().joints().stream().allMatch(joint -> joint.z().getValue() == 0);
        if (!planar) {
            throw new CalculationException("Marking of " + solution.truss().name()
                    + ": it is a truss in space; only planar trusses can be marked.");
        }
        return new Marker(solution);
    }

    private double largest() {
        double largest = 0;
        for (double force : right) {
            largest = Math.max(largest, Math.abs(force));
        }
        for (int i = 0; i < bodies.loadCount(); i++) {
            largest = Math.max(largest, bodies.load(i));
        }
        return largest;
    }

    /** Marks answers written as text: {@code AB = 12.5 kN C, AD = -3}, one or more to a line. */
    public MarkedSheet mark(String answers) {
        return mark(new SheetReader(unknowns, Convention.TENSION_POSITIVE).read("", answers));
    }

    /** Marks a map from a force's name to a text, a number in the truss's force unit, or a quantity. */
    public MarkedSheet mark(Map<String, ?> answers) {
        return mark(new SheetReader(unknowns, Convention.TENSION_POSITIVE).read("", answers));
    }

    /**
     * Marks the answers of a class: a table with a row for each student and a column for each force, or with columns
     * student, member and answer.
     *
     * @throws CalculationException when the table has no column to mark
     */
    public MarkedClass markClass(String csv) {
        return markClass(CsvTable.read("Answers", csv));
    }

    /** Marks the answers of a class, from a table that has been read. */
    public MarkedClass markClass(CsvTable table) {
        ClassReader.ClassAnswers read = new ClassReader(unknowns).read(table);
        Set<String> asked = new LinkedHashSet<>();
        read.sheets().forEach(sheet -> sheet.answers().stream().map(Stated::subject)
                .filter(subject -> unknowns.find(subject).isPresent()).forEach(asked::add));
        return new MarkedClass(solution.truss(), read.sheets().parallelStream()
                .map(sheet -> asking(mark(sheet), asked)).toList(), read.problems());
    }

    /** Every member's name: what a sheet is asked for unless told otherwise. */
    public List<String> members() {
        return solution.truss().members().stream().map(Member::name).toList();
    }

    /**
     * The sheet with each force that was asked for: what is not stated is not answered.
     *
     * @param asked names of forces
     * @throws CalculationException when a name is no force of the truss
     */
    public MarkedSheet asking(MarkedSheet sheet, Collection<String> asked) {
        List<MarkedAnswer> answers = new ArrayList<>(sheet.answers());
        for (String name : asked) {
            String subject = unknowns.name(unknowns.find(name).orElseThrow(() -> new CalculationException("Marking of "
                    + solution.truss().name() + ": \"" + name + "\" is no member and no reaction of it; correct the name.")));
            if (answers.stream().noneMatch(answer -> answer.subject().equals(subject))) {
                answers.add(marked(new Stated(subject, "", new Reading.Blank()), Map.of()));
            }
        }
        return sheet.with(answers);
    }

    /** Marks one sheet. */
    public MarkedSheet mark(AnswerSheet sheet) {
        Map<Integer, Force> forces = forces(sheet);
        Map<Integer, Verdict> wrong = Map.of();
        List<Slip> slips = List.of();
        List<List<Slip>> others = List.of();
        if (!forces.entrySet().stream().allMatch(e -> isRight(e.getKey(), e.getValue()))) {
            Explanation explanation = explain(sheet, forces);
            wrong = explanation.verdicts();
            slips = explanation.slips();
            others = explanation.others();
            Optional<Slip> whole = explanation.whole();
            Map<Integer, Verdict> changed = new HashMap<>(wrong);
            whole.ifPresent(slip -> changed.replaceAll((unknown, verdict) -> verdict instanceof Verdict.Right
                    ? new Verdict.Slipped(List.of(slip)) : verdict));
            wrong = changed;
        }
        List<MarkedAnswer> answers = new ArrayList<>();
        for (Stated stated : sheet.answers()) {
            answers.add(marked(stated, wrong));
        }
        return new MarkedSheet(solution.truss().name(), sheet.student(), answers, steps(sheet, forces), slips, others);
    }

    private List<MarkedSheet.MarkedStep> steps(AnswerSheet sheet, Map<Integer, Force> forces) {
        double[] stated = right.clone();
        forces.forEach((unknown, force) -> stated[unknown] = force.value());
        StepMarker marker = new StepMarker(bodies, List.of(right, stated));
        return sheet.steps().stream().map(marker::mark).toList();
    }

    private Map<Integer, Force> forces(AnswerSheet sheet) {
        Map<Integer, Force> forces = new HashMap<>();
        for (Stated stated : sheet.answers()) {
            if (stated.reading() instanceof Force force) {
                forces.put(unknowns.find(stated.subject()).orElseThrow(), force);
            }
        }
        return forces;
    }

    private boolean isRight(int unknown, Force force) {
        return Figures.agree(force, right[unknown], truss) || Figures.agreeCoarsely(force, right[unknown], truss);
    }

    private MarkedAnswer marked(Stated stated, Map<Integer, Verdict> wrong) {
        OptionalInt unknown = unknowns.find(stated.subject());
        Optional<Quantity> answer = unknown.isEmpty() ? Optional.empty()
                : Optional.of(Quantity.of(right[unknown.getAsInt()], solution.truss().forceUnit()));
        boolean member = unknown.isPresent() && unknowns.isMember(unknown.getAsInt());
        Verdict verdict = stated.reading().accept(new Reading.Visitor<Verdict>() {
            @Override
            public Verdict force(Force reading) {
                int number = unknown.orElseThrow();
                return isRight(number, reading)
                        ? new Verdict.Right(!Figures.agree(reading, right[number], truss))
                        : wrong.getOrDefault(number, new Verdict.Unexplained());
            }

            @Override
            public Verdict blank(Reading.Blank reading) {
                return new Verdict.NotAnswered();
            }

            @Override
            public Verdict unread(Reading.Unread reading) {
                return new Verdict.NotRead(reading.reason());
            }
        });
        return new MarkedAnswer(stated.subject(), stated.text().strip(), answer, member, verdict);
    }

    private Explanation explain(AnswerSheet sheet, Map<Integer, Force> forces) {
        List<Explanation> all = new ArrayList<>();
        all.add(search(sheet, forces, Optional.empty()));
        if (all.get(0).cost() > Price.SLIP + Price.TIE) {
            new SenseOfSheet(unknowns, right).suppositions(forces)
                    .forEach((kind, turned) -> all.add(search(sheet, turned,
                            Optional.of(new Slip(kind, new Place.Throughout(), "", "")))));
        }
        return all.stream().min(Comparator.comparingDouble(Explanation::cost)).orElseThrow();
    }

    private Explanation search(AnswerSheet sheet, Map<Integer, Force> forces, Optional<Slip> whole) {
        double price = whole.isPresent() ? Price.SLIP : 0;
        List<Working> ways = sheet.order().isEmpty() ? usual : List.of(workings.told(sheet.order()));
        for (double budget : BUDGETS) {
            List<State> ends = ends(ways, forces, budget);
            if (!ends.isEmpty()) {
                return Explanation.of(ends, whole, price);
            }
        }
        return Explanation.of(ends(ways.subList(0, 1), forces, 2 * forces.size() + 1), whole, price);
    }

    /** Ends by the first way, and by the others where they are cheaper. */
    private List<State> ends(List<Working> ways, Map<Integer, Force> forces, double budget) {
        List<State> ends = new ArrayList<>();
        double most = budget;
        for (Working way : ways) {
            Recorder recorder = new Recorder(unknowns, right, forces, truss, most);
            ends.addAll(new Search(bodies, way, recorder, most).explain());
            for (State end : ends) {
                most = Math.min(most, end.cost() + Price.TIE);
            }
        }
        ends.sort(Comparator.comparingDouble(State::cost));
        return ends;
    }

    /** For a test: which kinds of slip the likeliest explanation names. */
    static List<Kind> kinds(MarkedSheet sheet) {
        return sheet.slips().stream().map(Slip::kind).toList();
    }
}
