package kingpost.diagram;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;

/**
 * Finds a place for every label, clear of everything drawn and of the other labels.
 *
 * <p>Each label brings the spots where it could stand. A spot that covers something drawn is out. The label with the
 * fewest spots left chooses first, the cheapest spot that is free; then each label in turn looks again, and may take a
 * spot that another label can leave. The same labels always end in the same places.
 */
final class LabelPlacer {

    /** Air that a label keeps on each side, px. */
    static final double MARGIN = 1.5;
    private static final double NEAR = 3.5;
    private static final double CLASH = 50;
    private static final int ROUNDS = 12;

    private final PatchGrid drawn;

    LabelPlacer(List<Patch> drawn) {
        this.drawn = new PatchGrid(drawn);
    }

    /** One entry for each label, in the order given; empty where no free spot is left for it. */
    List<Optional<Label.Placed>> place(List<Label> labels) {
        List<Seat> seats = labels.stream().map(this::seat).toList();
        IntStream.range(0, seats.size()).boxed()
                .sorted(Comparator.comparingInt(i -> seats.get(i).choices.size()))
                .forEach(i -> seats.get(i).choose(seats));
        for (int round = 0; round < ROUNDS; round++) {
            boolean moved = false;
            for (Seat seat : seats) {
                moved |= seat.choose(seats);
            }
            if (!moved) {
                break;
            }
        }
        return settled(seats);
    }

    /** Labels still in each other's way: the one with the more spots to choose from gives up its place. */
    private static List<Optional<Label.Placed>> settled(List<Seat> seats) {
        List<Seat> byNeed = new ArrayList<>(seats);
        byNeed.sort(Comparator.comparingInt((Seat s) -> s.choices.size()).reversed());
        for (Seat seat : byNeed) {
            if (seat.taken != null && seat.clashes(seat.taken, seats) > 0) {
                seat.taken = null;
            }
        }
        for (Seat seat : seats) {
            if (seat.taken == null) {
                seat.takeFree(seats);
            }
        }
        return seats.stream()
                .map(s -> Optional.ofNullable(s.taken).map(c -> new Label.Placed(s.label, c.spot)))
                .toList();
    }

    private Seat seat(Label label) {
        List<Choice> choices = new ArrayList<>();
        for (Spot spot : label.spots()) {
            Patch patch = label.at(spot, MARGIN);
            double crowding = crowding(patch);
            if (crowding < CLASH) {
                choices.add(new Choice(spot, patch, spot.cost() + crowding));
            }
        }
        choices.sort(Comparator.comparingDouble(Choice::cost));
        return new Seat(label, choices);
    }

    private double crowding(Patch patch) {
        double crowding = 0;
        for (Patch other : drawn.near(patch, NEAR)) {
            double depth = patch.depth(other);
            if (depth > 0) {
                return CLASH;
            }
            crowding += 0.25 * Math.max(0, (depth + NEAR) / NEAR);
        }
        return Math.min(crowding, 2);
    }

    private record Choice(Spot spot, Patch patch, double cost) {
    }

    /** A label with what it can choose from and what it has chosen. */
    private static final class Seat {
        private final Label label;
        private final List<Choice> choices;
        private Choice taken;

        Seat(Label label, List<Choice> choices) {
            this.label = label;
            this.choices = choices;
        }

        /** Takes the best spot as the others stand now; true if that is another than before. */
        boolean choose(List<Seat> seats) {
            Choice best = null;
            double least = Double.MAX_VALUE;
            for (Choice choice : choices) {
                if (choice.cost < least) {
                    double cost = choice.cost + CLASH * clashes(choice, seats);
                    if (cost < least) {
                        least = cost;
                        best = choice;
                    }
                }
            }
            boolean moved = best != taken;
            taken = best;
            return moved;
        }

        void takeFree(List<Seat> seats) {
            choices.stream().filter(c -> clashes(c, seats) == 0).findFirst().ifPresent(c -> taken = c);
        }

        int clashes(Choice choice, List<Seat> seats) {
            int clashes = 0;
            for (Seat other : seats) {
                if (other != this && other.taken != null && choice.patch.overlaps(other.taken.patch, MARGIN)) {
                    clashes++;
                }
            }
            return clashes;
        }
    }
}
