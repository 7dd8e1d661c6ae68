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
    /** Of explanations that cost more than two slips fewer are kept: there are too many to tell apart. */
    private static final int NARROW_BEAM = 50;
    private static final double COSTLY = 2.7;
    private static final int NARROWEST_BEAM = 12;
    private static final double HOPELESS = 5.5;
    private static final int ALIKE = 6;
    /** Stated answers that agree this well leave nothing to explain at a stage. */
    private static final double EXPLAINED = 0.3;

    private final Bodies bodies;
    private final Working working;
    private final Recorder recorder;
    private final Detours detours;
    private final double budget;

    Search(Bodies bodies, Working working, Detours detours, Recorder recorder, double budget) {
        this.bodies = bodies;
        this.detours = detours;
        this.working = working;
        this.recorder = recorder;
        this.budget = budget;
    }

    /** The ends reached within the budget, the cheapest first. */
    List<State> explain() {
        List<State> states = List.of(State.start(bodies.unknowns().count(), working.unlikely()));
        for (int i = 0; i < working.stages().size(); i++) {
            List<State> next = new ArrayList<>();
            for (State state : states) {
                next.addAll(working.stages().get(i).accept(new Expander(state, i)));
            }
            states = best(next, working.neededAfter(i));
        }
        return states;
    }

    /** The cheapest; of those that go on alike only a few that are as cheap as the cheapest of them. */
    private List<State> best(List<State> states, boolean[] needed) {
        int beam = budget > HOPELESS ? NARROWEST_BEAM : budget > COSTLY ? NARROW_BEAM : BEAM;
        states.sort(Comparator.comparingDouble(State::cost));
        List<State> best = new ArrayList<>();
        Map<State.Key, List<State>> alike = new HashMap<>();
        for (State state : states) {
            List<State> others = alike.computeIfAbsent(state.key(needed), key -> new ArrayList<>());
            boolean kept = others.isEmpty()
                    || others.size() < ALIKE && state.cost() <= others.get(0).cost() + Price.TIE;
            if (kept && best.size() < beam) {
                others.add(state);
                best.add(state);
            }
        }
        return best;
    }

    /** Goes on from one state through one stage. */
    private final class Expander implements Stage.Visitor<List<State>> {
        private final State state;
        private final int number;

        Expander(State state, int number) {
            this.state = state;
            this.number = number;
        }

        @Override
        public List<State> seen(Stage.Seen stage) {
            List<State> states = List.of(state);
            for (int unknown : stage.unknowns()) {
                states = recorded(states, unknown, 0);
            }
            return states;
        }

        @Override
        public List<State> given(Stage.Given stage) {
            List<State> states = List.of(state);
            for (int unknown = 0; unknown < stage.values().size(); unknown++) {
                states = recorded(states, unknown, stage.values().get(unknown));
            }
            return states;
        }

        private List<State> recorded(List<State> states, int unknown, double value) {
            List<State> next = new ArrayList<>();
            states.forEach(each -> next.addAll(recorder.record(each, unknown, new Answer(value, 0, 0, 0))));
            next.sort(Comparator.comparingDouble(State::cost));
            return next.subList(0, Math.min(BEAM, next.size()));
        }

        @Override
        public List<State> same(Stage.Same stage) {
            return recorder.record(state, stage.unknown(), new Answer(state.value(stage.as()),
                    state.spread(stage.as()), state.trace(stage.as()), 0));
        }

        @Override
        public List<State> balance(Stage.Balance stage) {
            List<State> ends = new ArrayList<>();
            List<Terms> choices = working.terms(stage);
            work(new Equations(bodies, choices.get(0), null), stage, state, ends);
            if (choices.size() > 1 && (stage.unknowns().size() == 1 || stage.isPart() && toExplain(ends) > EXPLAINED)) {
                others(stage, choices.subList(1, choices.size()), ends);
            }
            double toExplain = toExplain(ends);
            boolean hidden = stage.unknowns().stream().anyMatch(unknown -> !recorder.isStated(unknown));
            if (state.cost() + Price.SLIP <= budget && (hidden || toExplain > EXPLAINED)) {
                for (int i = 0; i < choices.size(); i++) {
                    slips(stage, choices.get(i), i > 0 && stage.unknowns().size() > 1, toExplain, ends);
                }
            }
            return ends;
        }

        private double toExplain(List<State> ends) {
            return ends.stream().mapToDouble(each -> each.cost() - state.cost()).min().orElse(9);
        }

        /** What other sets of equations give besides; without a slip they give the same. */
        private void others(Stage.Balance stage, List<Terms> choices, List<State> ends) {
            Set<List<Object>> met = new HashSet<>();
            ends.forEach(end -> met.add(end.history()));
            for (Terms each : choices) {
                List<State> more = new ArrayList<>();
                work(new Equations(bodies, each, null), stage, state, more);
                more.stream().filter(end -> met.add(end.history())).forEach(ends::add);
            }
        }

        /** What the other end gives besides; most often it gives the same. */
        @Override
        public List<State> either(Stage.Either stage) {
            List<State> ends = new ArrayList<>(balance(stage.here()));
            Set<List<Object>> met = new HashSet<>();
            ends.forEach(end -> met.add(end.history()));
            balance(stage.there()).stream().filter(end -> met.add(end.history()))
                    .forEach(end -> ends.add(end.paying(Price.ANOTHER_END)));
            return ends;
        }

        /** @param oneRow only slips in one equation: a slip in all of them is the same in every set of equations */
        private void slips(Stage.Balance stage, Terms each, boolean oneRow, double toExplain, List<State> ends) {
            Answer[] plain = answers(new Equations(bodies, each, null), stage, state);
            for (Tweak tweak : Tweaks.of(bodies, stage, each, state,
                    load -> working.needsLater(load, number))) {
                if (state.cost() + tweak.price() > budget || oneRow && tweak.row() < 0) {
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
                goOn(equations, rows, wanted, first, answers, next, ends);
            }
            detours.fitting(recorder, wanted.get(first), answers[first], state).ifPresent(answer ->
                    recorder.record(state, wanted.get(first), answer).forEach(next -> goOn(equations, rows, wanted, first,
                            answers, next.paying(Price.DETOUR), ends)));
        }
    }

    private void goOn(Equations equations, List<Integer> rows, List<Integer> wanted, int first, Answer[] answers,
                      State next, List<State> ends) {
        if (wanted.size() == 1) {
            ends.add(next);
        } else {
            rest(equations, rows, wanted, first, answers, next, ends);
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
        } else if (carried) {
            apart(left, wanted, answers, next, ends);
        }
        for (int row = 0; row < rows.size(); row++) {
            int before = ends.size();
            find(equations, without(rows, row), left, next, ends);
            if (!carried && ends.size() > before) {
                return;
            }
        }
    }

    /** The others as they were found, apart from what was written for the first. */
    private void apart(List<Integer> left, List<Integer> wanted, Answer[] answers, State next, List<State> ends) {
        List<State> states = List.of(next);
        for (int unknown : left) {
            List<State> more = new ArrayList<>();
            states.forEach(state -> more.addAll(recorder.record(state, unknown, answers[wanted.indexOf(unknown)])));
            states = more;
        }
        ends.addAll(states);
    }

    private static List<Integer> without(List<Integer> list, int index) {
        List<Integer> shorter = new ArrayList<>(list);
        shorter.remove(index);
        return shorter;
    }
}
