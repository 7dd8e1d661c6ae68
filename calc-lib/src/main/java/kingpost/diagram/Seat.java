package kingpost.diagram;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.List;
import java.util.Optional;

/** A label while places are being found: what it can choose from, what it has chosen, whom it may meet. */
final class Seat {

    private static final double CLASH = 50;
    private static final double YIELDING = 1;
    private static final int CHAIN = 3;
    private static final int MOST_TRIALS = 4000;

    private final Label label;
    private final List<Choice> choices;
    /** A box round every spot that it could take; null where there is none. */
    private final Patch round;
    private final List<Seat> neighbours = new ArrayList<>();
    private Choice taken;
    private boolean fixed;

    /** @param choices free of everything drawn, cheapest first */
    Seat(Label label, List<Choice> choices) {
        this.label = label;
        this.choices = choices;
        this.round = choices.isEmpty() ? null : round(choices);
    }

    /** A spot that is clear of everything drawn. */
    record Choice(Spot spot, Patch patch, double cost) {
    }

    /** Finds out which of {@code seats} could ever be in its way. */
    void meet(List<Seat> seats) {
        if (round != null) {
            seats.stream().filter(s -> s != this && s.round != null && round.isWithin(s.round, 0))
                    .forEach(neighbours::add);
        }
    }

    private static Patch round(List<Choice> choices) {
        return Patch.edges(choices.stream().mapToDouble(c -> c.patch.left()).min().orElseThrow(),
                choices.stream().mapToDouble(c -> c.patch.top()).min().orElseThrow(),
                choices.stream().mapToDouble(c -> c.patch.right()).max().orElseThrow(),
                choices.stream().mapToDouble(c -> c.patch.bottom()).max().orElseThrow());
    }

    int choiceCount() {
        return choices.size();
    }

    int rank() {
        return label.rank();
    }

    boolean isStanding() {
        return taken == null;
    }

    Optional<Label.Placed> placed() {
        return Optional.ofNullable(taken).map(c -> new Label.Placed(label, c.spot));
    }

    /** Takes the best spot as the others stand now; true if that is another than before. */
    boolean choose() {
        Choice best = null;
        double least = Double.MAX_VALUE;
        for (Choice choice : choices) {
            if (choice.cost >= least) {
                break;
            }
            double cost = choice.cost + inTheWay(choice).stream().mapToDouble(this::clash).sum();
            if (cost < least) {
                least = cost;
                best = choice;
            }
        }
        boolean moved = best != taken;
        taken = best;
        return moved;
    }

    /** How bad it is to be in another's way; little where the other is lower in rank and can give way. */
    private double clash(Seat other) {
        return other.rank() > rank() ? YIELDING : CLASH;
    }

    /** Gives its place up when it is in another's way, unless the other is lower in rank. */
    void giveWay() {
        if (taken != null && inTheWay(taken).stream().anyMatch(s -> s.rank() <= rank())) {
            taken = null;
        }
    }

    void takeFree() {
        choices.stream().filter(c -> inTheWay(c).isEmpty()).findFirst().ifPresent(c -> taken = c);
    }

    /** Takes a spot that is free, or that others can leave for spots that are free or can be left in their turn. */
    void squeezeIn() {
        squeezeIn(CHAIN, new Trials(MOST_TRIALS));
    }

    private boolean squeezeIn(int chain, Trials trials) {
        fixed = true;
        for (Choice choice : choices) {
            List<Seat> others = inTheWay(choice);
            boolean movable = chain > 0 && others.size() <= 2 && others.stream().noneMatch(s -> s.fixed);
            if (others.isEmpty()) {
                trials.move(this, choice);
                fixed = false;
                return true;
            }
            if (movable && trials.isLeft() && makeRoom(others, choice, chain, trials)) {
                fixed = false;
                return true;
            }
        }
        fixed = false;
        return false;
    }

    private boolean makeRoom(List<Seat> others, Choice choice, int chain, Trials trials) {
        int mark = trials.mark();
        trials.move(this, choice);
        others.forEach(other -> trials.move(other, null));
        for (Seat other : others) {
            if (!other.squeezeIn(chain - 1, trials)) {
                trials.back(mark);
                return false;
            }
        }
        return true;
    }

    private List<Seat> inTheWay(Choice choice) {
        List<Seat> others = List.of();
        for (Seat other : neighbours) {
            if (other.taken != null && choice.patch.overlaps(other.taken.patch, LabelPlacer.MARGIN)) {
                others = others.isEmpty() ? new ArrayList<>() : others;
                others.add(other);
            }
        }
        return others;
    }

    /** Moves made on trial, so that they can be taken back. */
    private static final class Trials {
        private final Deque<Runnable> undo = new ArrayDeque<>();
        private int left;

        Trials(int most) {
            left = most;
        }

        boolean isLeft() {
            return left > 0;
        }

        void move(Seat seat, Choice choice) {
            Choice before = seat.taken;
            undo.push(() -> seat.taken = before);
            seat.taken = choice;
            left--;
        }

        int mark() {
            return undo.size();
        }

        void back(int mark) {
            while (undo.size() > mark) {
                undo.pop().run();
            }
        }
    }
}
