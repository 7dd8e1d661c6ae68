package kingpost.marking;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import kingpost.marking.Equations.Answer;
import kingpost.marking.Recorder.Help;
import kingpost.marking.Tweak.Change;

/**
 * Goes through a working stage by stage, supposing slips, and keeps the suppositions that explain what is stated at
 * the least cost. An answer that follows from an earlier slip costs nothing, which is how follow-through is told from
 * a slip of its own.
 */
final class Search {

    private static final int BEAM = 150;
    private static final int ALIKE = 6;
    /** Stated answers that agree this well leave nothing to explain at a stage. */
    private static final double EXPLAINED = 0.3;

    private final Bodies bodies;
    private final Working working;
    private final Recorder recorder;
    private final double budget;

    Search(Bodies bodies, Working working, Recorder recorder, double budget) {
        this.bodies = bodies;
        this.working = working;
        this.recorder = recorder;
        this.budget = budget;
    }

    /** The ends reached within the budget, the cheapest first. */
    List<State> explain() {
        List<State> states = List.of(State.start(bodies.unknowns().count(), working.unlikely()));
        for (int i = 0; i < working.stages().size(); i++) {
            StageSearch search = new StageSearch(i);
            List<State> next = new ArrayList<>();
            for (State state : states) {
                next.addAll(working.stages().get(i).accept(search.from(state)));
            }
            states = best(next, working.neededAfter(i, bodies.unknowns().count()));
        }
        return states;
    }

    /** The cheapest; of those that go on alike only a few that are as cheap as the cheapest of them. */
    private static List<State> best(List<State> states, boolean[] needed) {
        states.sort(Comparator.comparingDouble(State::cost));
        List<State> best = new ArrayList<>();
        Map<List<Object>, List<State>> alike = new HashMap<>();
        for (State state : states) {
            List<State> others = alike.computeIfAbsent(state.key(needed), key -> new ArrayList<>());
            boolean kept = others.isEmpty()
                    || others.size() < ALIKE && state.cost() <= others.get(0).cost() + Price.TIE;
            if (kept && best.size() < BEAM) {
                others.add(state);
                best.add(state);
            }
        }
        return best;
    }

    /** Goes on through one stage. */
    private final class StageSearch {
        private final int number;
        private final Map<String, List<Terms>> terms = new HashMap<>();

        StageSearch(int number) {
            this.number = number;
            working.stages().get(number).balances().forEach(balance -> terms.put(balance.joint(),
                    balance.choices().stream().map(measures -> new Terms(balance.acting(), measures)).toList()));
        }

        Expander from(State state) {
            return new Expander(state, number, terms);
        }
    }

    /** Goes on from one state through one stage. */
    private final class Expander implements Stage.Visitor<List<State>> {
        private final State state;
        private final int number;
        private final Map<String, List<Terms>> terms;

        Expander(State state, int number, Map<String, List<Terms>> terms) {
            this.state = state;
            this.number = number;
            this.terms = terms;
        }

        @Override
        public List<State> seen(Stage.Seen stage) {
            List<State> states = List.of(state);
            for (int unknown : stage.unknowns()) {
                List<State> next = new ArrayList<>();
                states.forEach(each -> next.addAll(recorder.record(each, unknown, new Answer(0, 0, 0, 0))));
                states = next;
            }
            return states;
        }

        @Override
        public List<State> same(Stage.Same stage) {
            return recorder.record(state, stage.unknown(), new Answer(state.value(stage.as()),
                    state.spread(stage.as()), state.trace(stage.as()), 0));
        }

        @Override
        public List<State> balance(Stage.Balance stage) {
            List<State> ends = new ArrayList<>();
            List<Terms> choices = terms.get(stage.joint());
            // without a slip, all sets of two equations give the same; single equations may differ
            int plain = stage.unknowns().size() == 1 ? choices.size() : 1;
            for (Terms each : choices.subList(0, plain)) {
                work(new Equations(bodies, each, null), stage, state, ends);
            }
            double toExplain = ends.stream().mapToDouble(each -> each.cost() - state.cost()).min().orElse(9);
            boolean hidden = stage.unknowns().stream().anyMatch(unknown -> !recorder.isStated(unknown));
            if (state.cost() + Price.SLIP <= budget && (hidden || toExplain > EXPLAINED)) {
                choices.forEach(each -> slips(stage, each, toExplain, ends));
            }
            return ends;
        }

        /** What the other end gives besides; most often it gives the same. */
        @Override
        public List<State> either(Stage.Either stage) {
            List<State> ends = new ArrayList<>(balance(stage.here()));
            Set<List<Object>> met = new HashSet<>();
            ends.forEach(end -> met.add(List.of(end.slips(), end.outcomes())));
            balance(stage.there()).stream().filter(end -> met.add(List.of(end.slips(), end.outcomes())))
                    .forEach(end -> ends.add(end.paying(Price.ANOTHER_END)));
            return ends;
        }

        private void slips(Stage.Balance stage, Terms each, double toExplain, List<State> ends) {
            Answer[] plain = answers(new Equations(bodies, each, null), stage, state);
            for (Tweak tweak : Tweaks.of(bodies.unknowns(), stage, each, state,
                    load -> working.needsLater(load, number))) {
                if (state.cost() + tweak.price() > budget) {
                    continue;
                }
                State slipped = with(tweak, stage);
                Equations equations = new Equations(bodies, each, tweak);
                Help help = recorder.helps(stage.unknowns(), plain, answers(equations, stage, slipped));
                if (help != Help.NONE) {
                    State priced = help == Help.HERE ? slipped : slipped.paying(Price.unseen(tweak.slip().kind()));
                    List<State> reached = new ArrayList<>();
                    work(equations, stage, priced, reached);
                    reached.removeIf(end -> end.cost() - priced.cost() > toExplain + 1e-9);
                    ends.addAll(reached);
                }
            }
        }

        private State with(Tweak tweak, Stage.Balance stage) {
            State slipped = state.slipping(tweak.slip(), tweak.price());
            if (!tweak.lasting()) {
                return slipped;
            }
            if (tweak.force() < 0) {
                return slipped.swappingAll();
            }
            Acting force = stage.acting().get(tweak.force());
            if (tweak.change() instanceof Change.Valued valued) {
                return slipped.with(force.unknown(), valued.value(), 0, slipped.trace() | state.trace(force.unknown()));
            }
            return tweak.change() instanceof Change.Swapped ? slipped.swapping(force.unknown())
                    : slipped.forgetting(force.load());
        }
    }

    private static List<Integer> all(int rows) {
        List<Integer> all = new ArrayList<>();
        for (int row = 0; row < rows; row++) {
            all.add(row);
        }
        return all;
    }

    private static Answer[] answers(Equations equations, Stage.Balance stage, State state) {
        return equations.solve(all(equations.rows()), stage.unknowns(), state);
    }

    private void work(Equations equations, Stage.Balance stage, State from, List<State> ends) {
        find(equations, all(equations.rows()), stage.unknowns(), from, ends);
    }

    /** Finds {@code wanted} one after another; an answer written with a slip may be carried into the next equation. */
    private void find(Equations equations, List<Integer> rows, List<Integer> wanted, State state, List<State> ends) {
        Answer[] answers = equations.solve(rows, wanted, state);
        if (answers == null) {
            return;
        }
        for (int first : firsts(wanted, answers)) {
            for (State recorded : recorder.record(state, wanted.get(first), answers[first])) {
                boolean usual = first == 0 || recorded.value(wanted.get(first)) == answers[first].value();
                State next = usual ? recorded : recorded.paying(Price.ANOTHER_FIRST);
                if (wanted.size() == 1) {
                    ends.add(next);
                } else {
                    rest(equations, rows, wanted, first, answers, next, ends);
                }
            }
        }
    }

    /** Which unknown to find first: any whose answer does not fit, for its slip may be carried; else the first. */
    private List<Integer> firsts(List<Integer> wanted, Answer[] answers) {
        List<Integer> unfit = new ArrayList<>();
        for (int i = 0; i < answers.length; i++) {
            if (!recorder.fits(wanted.get(i), answers[i])) {
                unfit.add(i);
            }
        }
        return unfit.isEmpty() ? List.of(0) : unfit;
    }

    private void rest(Equations equations, List<Integer> rows, List<Integer> wanted, int first, Answer[] answers,
                      State next, List<State> ends) {
        List<Integer> left = without(wanted, first);
        boolean carried = next.value(wanted.get(first)) != answers[first].value();
        if (carried && left.size() == 1) {
            ends.addAll(recorder.record(next, left.get(0), answers[1 - first]));
        }
        for (int row = 0; row < rows.size(); row++) {
            int before = ends.size();
            find(equations, without(rows, row), left, next, ends);
            if (!carried && ends.size() > before) {
                return;
            }
        }
    }

    private static List<Integer> without(List<Integer> list, int index) {
        List<Integer> shorter = new ArrayList<>(list);
        shorter.remove(index);
        return shorter;
    }
}
