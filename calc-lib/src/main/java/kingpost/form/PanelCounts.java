package kingpost.form;

import java.util.Arrays;
import java.util.function.IntPredicate;
import java.util.stream.Collectors;

/**
 * The numbers of panels that a form can have.
 *
 * @param words   the rule as it ends a sentence: "an even number from 4"
 * @param allowed whether a form can have so many
 */
record PanelCounts(String words, IntPredicate allowed) {

    static PanelCounts from(int fewest) {
        return new PanelCounts(fewest + " or more", n -> n >= fewest);
    }

    static PanelCounts evenFrom(int fewest) {
        return new PanelCounts("an even number from " + fewest, n -> n >= fewest && n % 2 == 0);
    }

    static PanelCounts only(int... counts) {
        String words = Arrays.stream(counts).mapToObj(String::valueOf).collect(Collectors.joining(" or "));
        return new PanelCounts(words, n -> Arrays.stream(counts).anyMatch(c -> c == n));
    }
}
