package kingpost.marking;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import kingpost.marking.Equations.Answer;
import kingpost.marking.Stage.Balance;

/**
 * Members found by a section in the midst of a working by joints: each by one equation of a part of the truss, which
 * holds nothing else that may be wrong but the reactions and loads on that part.
 */
final class Detours {

    /** Cuts that are looked into for one member. */
    private static final int MOST = 3;

    private final Bodies bodies;
    private final Map<Integer, List<Detour>> ways = new HashMap<>();

    Detours(Bodies bodies, List<Cuts.Cut> cuts) {
        this.bodies = bodies;
        for (Cuts.Cut cut : cuts) {
            for (int member : cut.members()) {
                List<Detour> here = ways.computeIfAbsent(member, key -> new ArrayList<>());
                if (here.size() < 2 * MOST) {
                    for (List<String> part : List.of(cut.here(), cut.there())) {
                        cut.balance(part, List.of(member)).ifPresent(balance -> here.add(new Detour(balance,
                                new Terms(balance.acting(), balance.choices().get(0)))));
                    }
                }
            }
        }
    }

    private record Detour(Balance balance, Terms terms) {

        /** Whether everything is known that its equation holds besides the member. */
        boolean isOpen(State state) {
            return balance.acting().stream().allMatch(force -> force.isLoad() || balance.unknowns().contains(force.unknown())
                    || state.isKnown(force.unknown()) || !terms.has(0, terms.column(force.unknown())));
        }
    }

    /** What a section gives for an unknown, where it is the answer stated and what was {@code found} is not. */
    Optional<Answer> fitting(Recorder recorder, int unknown, Answer found, State state) {
        if (recorder.fits(unknown, found)) {
            return Optional.empty();
        }
        for (Detour detour : ways.getOrDefault(unknown, List.of())) {
            if (detour.isOpen(state)) {
                Answer[] answer = new Equations(bodies, detour.terms(), null).solve(List.of(0), List.of(unknown), state);
                if (answer != null && recorder.fits(unknown, answer[0])) {
                    return Optional.of(answer[0]);
                }
            }
        }
        return Optional.empty();
    }
}
