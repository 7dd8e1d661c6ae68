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
    /** A budget for more slips than two. */
    private static final double SEVERAL = 3;
    /** Ways of working tried for several slips. */
    private static final int FEW = 3;

    private final Solution solution;
    private final Unknowns unknowns;
    private final Bodies bodies;
    private final Workings workings;
    private final List<Working> usual;
    private final List<Working> withReactions;
    private final Detours detours;
    private final double[] right;
    private final double truss;
    private final Misreadings misreadings;
    private final Imbalance imbalance;

    private Marker(Solution solution) {
        TrussModel model = solution.truss();
        this.solution = solution;
        this.unknowns = Unknowns.of(model, solution.reactions().stream().map(Solution.ReactionResult::reaction).toList());
        this.bodies = new Bodies(unknowns);
        this.workings = new Workings(bodies, solution);
        this.usual = workings.usual(false);
        this.withReactions = workings.usual(true);
        this.imbalance = new Imbalance(bodies);
        this.detours = new Detours(bodies, workings.cuts());
        this.right = new double[unknowns.count()];
        for (int i = 0; i < right.length; i++) {
            double newtons = unknowns.isMember(i) ? solution.members().get(i).force()
                    : solution.reactions().get(i - model.members().size()).force();
            right[i] = Quantity.of(newtons, StructuralUnits.N).in(model.forceUnit());
        }
        this.truss = largest();
        this.misreadings = new Misreadings(bodies, right, usual, truss);
    }

    public static Marker of(Solution solution) {
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
            if (explanation.whole().isPresent()) {
                wrong = throughout(explanation.whole().get(), sheet, forces, wrong);
            }
        }
        List<MarkedAnswer> answers = new ArrayList<>();
        for (Stated stated : sheet.answers()) {
            answers.add(marked(stated, wrong));
        }
        return new MarkedSheet(solution.truss().name(), sheet.student(), answers, steps(sheet, forces), slips, others);
    }

    /**
     * Verdicts where one slip of the sheet as a whole was supposed beforehand: the first answer that it makes wrong shows
     * it, the others follow. Where no sense is stated, it is missing from each; early rounding leaves answers right.
     */
    private Map<Integer, Verdict> throughout(Slip whole, AnswerSheet sheet, Map<Integer, Force> forces,
                                             Map<Integer, Verdict> verdicts) {
        Map<Integer, Verdict> changed = new HashMap<>(verdicts);
        boolean shown = false;
        for (Stated stated : sheet.answers()) {
            int unknown = unknowns.find(stated.subject()).orElse(-1);
            boolean follows = forces.containsKey(unknown) && !isRight(unknown, forces.get(unknown))
                    && verdicts.get(unknown) instanceof Verdict.Right;
            if (follows && whole.kind() == Kind.ROUNDED_CARRIED) {
                changed.put(unknown, new Verdict.Right(false, true));
            } else if (follows) {
                changed.put(unknown, shown && whole.kind() != Kind.SENSE_NOT_STATED && whole.kind() != Kind.VALUES_EXCHANGED
                        ? new Verdict.FollowThrough(List.of(whole)) : new Verdict.Slipped(List.of(whole)));
                shown = true;
            }
        }
        return changed;
    }

    private List<MarkedSheet.MarkedStep> steps(AnswerSheet sheet, Map<Integer, Force> forces) {
        double[] stated = right.clone();
        forces.forEach((unknown, force) -> stated[unknown] = force.value());
        StepMarker marker = new StepMarker(bodies, right, stated);
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
        return Figures.agree(force, right[unknown], truss) || Figures.agreeCoarsely(force, right[unknown], truss)
                || Figures.near(force, right[unknown], truss);
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
                return Figures.agree(reading, right[number], truss) ? new Verdict.Right(false)
                        : Figures.agreeCoarsely(reading, right[number], truss) ? new Verdict.Right(true)
                        : Figures.near(reading, right[number], truss) ? new Verdict.Right(false, true)
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
        List<Supposition> suppositions = new ArrayList<>();
        List<Working> ways = ways(sheet, forces);
        suppositions.add(new Supposition(forces, Optional.empty(), 0, right, ways,
                imbalance.leastSlips(forces)));
        new SenseOfSheet(unknowns, right, truss).suppositions(forces).forEach((slip, turned) ->
                suppositions.add(new Supposition(turned, Optional.of(slip), Price.SLIP, right, ways,
                        imbalance.leastSlips(turned))));
        misreadings.worthTrying(forces).forEach(each -> suppositions.add(new Supposition(forces, Optional.of(each.slip()),
                each.price(), each.values(), List.of(each.working()), 0)));
        for (double budget : BUDGETS) {
            Optional<Explanation> cheapest = suppositions.stream()
                    .map(each -> each.explain(budget)).flatMap(Optional::stream)
                    .min(Comparator.comparingDouble(Explanation::cost));
            if (cheapest.isPresent()) {
                return cheapest.get();
            }
        }
        return suppositions.get(0).anyhow();
    }

    private List<Working> ways(AnswerSheet sheet, Map<Integer, Force> forces) {
        boolean reactions = forces.keySet().stream().anyMatch(unknown -> !unknowns.isMember(unknown));
        return sheet.order().isEmpty() ? reactions ? withReactions : usual
                : List.of(workings.told(sheet.order(), reactions));
    }

    /**
     * Something supposed of a sheet as a whole before slips are looked for.
     *
     * @param forces what the sheet then states
     * @param whole  the slip supposed, if any
     * @param price  of that
     * @param values that are then right
     * @param ways   in which it may have been worked
     * @param least  how many slips it holds at least besides
     */
    private final class Supposition {
        private final Map<Integer, Force> forces;
        private final Optional<Slip> whole;
        private final double price;
        private final double[] values;
        private final List<Working> ways;
        private final int least;

        Supposition(Map<Integer, Force> forces, Optional<Slip> whole, double price, double[] values, List<Working> ways,
                    int least) {
            this.forces = forces;
            this.whole = whole;
            this.price = price;
            this.values = values;
            this.ways = ways;
            this.least = least;
        }

        /** The explanation within a budget; the more slips it takes, the fewer ways of working are tried. */
        Optional<Explanation> explain(double budget) {
            if (least * Price.SLIP > budget - price) {
                return Optional.empty();
            }
            int tried = budget < SEVERAL ? ways.size() : Math.min(FEW, ways.size());
            List<State> ends = ends(ways.subList(0, tried), budget - price);
            return ends.isEmpty() ? Optional.empty() : Optional.of(Explanation.of(ends, whole, price));
        }

        Explanation anyhow() {
            return Explanation.of(ends(ways.subList(0, 1), 2 * forces.size() + 1), whole, price);
        }

        /** Ends by the first way, and by the others where they are cheaper. */
        private List<State> ends(List<Working> tried, double budget) {
            List<State> ends = new ArrayList<>();
            double most = budget;
            for (Working way : tried) {
                Recorder recorder = new Recorder(bodies, values, forces, truss, most);
                ends.addAll(new Search(bodies, way, detours, recorder, most).explain());
                for (State end : ends) {
                    most = Math.min(most, end.cost() + Price.TIE);
                }
            }
            ends.sort(Comparator.comparingDouble(State::cost));
            return ends;
        }
    }

    /** For a test: which kinds of slip the likeliest explanation names. */
    static List<Kind> kinds(MarkedSheet sheet) {
        return sheet.slips().stream().map(Slip::kind).toList();
    }
}
