package kingpost.diagram;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * Finds a place for every label, clear of everything drawn and of the other labels.
 *
 * <p>Each label brings the spots where it could stand. A spot that covers something drawn is out, and so is one with
 * something drawn between it and what it names. The label with the fewest spots left chooses first, the cheapest spot
 * that is free; then each label in turn looks again; a label still without a place may make others move. The same
 * labels always end in the same places.
 */
final class LabelPlacer {

    /** Air that a label keeps on each side, px. */
    static final double MARGIN = 1.5;
    private static final double NEAR = 8;
    private static final double CROWDING = 0.3;
    private static final double TOO_CLOSE = 50;
    private static final int ROUNDS = 12;
    /** With more labels than these without a place, moving others about is not worth the while. */
    private static final int HOPELESS = 8;

    private final PatchGrid drawn;

    LabelPlacer(List<Patch> drawn) {
        this.drawn = new PatchGrid(drawn);
    }

    /** One entry for each label, in the order given; empty where no free spot is left for it. */
    List<Optional<Label.Placed>> place(List<Label> labels) {
        List<Seat> seats = labels.stream().map(this::seat).toList();
        seats.forEach(seat -> seat.meet(seats));
        List<Seat> byNeed = new ArrayList<>(seats);
        byNeed.sort(Comparator.comparingInt(Seat::choiceCount));
        byNeed.forEach(Seat::choose);
        for (int round = 0; round < ROUNDS; round++) {
            if (!anyMoves(seats)) {
                break;
            }
        }
        settle(byNeed);
        return seats.stream().map(Seat::placed).toList();
    }

    private static boolean anyMoves(List<Seat> seats) {
        boolean moved = false;
        for (Seat seat : seats) {
            moved |= seat.choose();
        }
        return moved;
    }

    /** Labels still in each other's way: the lower in rank gives up its place, then the one with more to choose from. */
    private static void settle(List<Seat> byNeed) {
        List<Seat> givingWay = new ArrayList<>(byNeed);
        givingWay.sort(Comparator.comparingInt(Seat::rank).thenComparingInt(Seat::choiceCount).reversed());
        givingWay.forEach(Seat::giveWay);
        List<Seat> left = byNeed.stream().filter(Seat::isStanding).sorted(Comparator.comparingInt(Seat::rank)).toList();
        if (left.size() <= HOPELESS) {
            left.forEach(Seat::squeezeIn);
        } else {
            left.forEach(Seat::takeFree);
        }
    }

    private Seat seat(Label label) {
        List<Seat.Choice> choices = new ArrayList<>();
        double width = label.caption().width() + 2 * MARGIN;
        double height = label.caption().height() + 2 * MARGIN;
        for (Spot spot : label.spots()) {
            Patch patch = Patch.box(spot.centre(), width, height, spot.degrees());
            double crowding = crowding(patch);
            if (crowding < TOO_CLOSE && isReachable(spot)) {
                choices.add(new Seat.Choice(spot, patch, spot.cost() + crowding));
            }
        }
        choices.sort(Comparator.comparingDouble(Seat.Choice::cost));
        return new Seat(label, choices);
    }

    private boolean isReachable(Spot spot) {
        Patch tether = spot.tether();
        return drawn.near(tether, 0).stream().noneMatch(tether::overlaps);
    }

    private double crowding(Patch patch) {
        double crowding = 0;
        for (Patch other : drawn.near(patch, NEAR)) {
            double depth = patch.depth(other);
            if (depth > 0) {
                return TOO_CLOSE;
            }
            double closeness = Math.max(0, (depth + NEAR) / NEAR);
            crowding += CROWDING * closeness * closeness;
        }
        return Math.min(crowding, 2);
    }
}
