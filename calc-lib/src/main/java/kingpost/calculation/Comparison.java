package kingpost.calculation;

import java.util.LinkedHashSet;
import java.util.Set;
import kingpost.derivation.Expression.Relator;

/** Two formulas and how they ought to compare. */
public record Comparison(Formula left, Sign sign, Formula right) {

    /** The comparisons that a check may make. */
    public enum Sign {
        AT_MOST("<=", "at most", Relator.AT_MOST, Relator.GREATER),
        AT_LEAST(">=", "at least", Relator.AT_LEAST, Relator.LESS),
        LESS("<", "less than", Relator.LESS, Relator.AT_LEAST),
        GREATER(">", "more than", Relator.GREATER, Relator.AT_MOST),
        EQUAL("=", "equal to", Relator.EQUAL, Relator.NOT_EQUAL);

        private final String typed;
        private final String words;
        private final Relator holds;
        private final Relator fails;

        Sign(String typed, String words, Relator holds, Relator fails) {
            this.typed = typed;
            this.words = words;
            this.holds = holds;
            this.fails = fails;
        }

        String typed() {
            return typed;
        }

        /** "at most" and so on. */
        public String words() {
            return words;
        }

        /** What is true of the two sides, given whether the check holds. */
        Relator relator(boolean satisfied) {
            return satisfied ? holds : fails;
        }
    }

    Set<String> names() {
        Set<String> names = new LinkedHashSet<>(left.names());
        names.addAll(right.names());
        return names;
    }
}
