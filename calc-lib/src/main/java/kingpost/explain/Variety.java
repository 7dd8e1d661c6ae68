package kingpost.explain;

import java.util.HashMap;
import java.util.List;
import java.util.Map;

import kingpost.derivation.Phrase;

/**
 * Keeps a text from saying the same thing the same way twice running: each time a situation comes up again, the next
 * of its wordings is taken. One for each text; the order is fixed.
 */
final class Variety {

    private final Map<String, Integer> used = new HashMap<>();

    /** Whether {@code situation} is new; from then on it is not. */
    boolean isFirst(String situation) {
        return used.merge(situation, 1, Integer::sum) == 1;
    }

    /** The wording whose turn it is in this situation. */
    Phrase of(String situation, Phrase... wordings) {
        return List.of(wordings).get(turn(situation, wordings.length));
    }

    /** The words whose turn it is in this situation. */
    String of(String situation, String... wordings) {
        return wordings[turn(situation, wordings.length)];
    }

    private int turn(String situation, int wordings) {
        return (used.merge(situation, 1, Integer::sum) - 1) % wordings;
    }
}
