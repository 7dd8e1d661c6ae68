package kingpost.calculation;

import java.util.List;
import java.util.Locale;
import java.util.Set;
import kingpost.units.CalculationException;

/**
 * What to say of a name that no line has given.
 *
 * @param known the names that lines have given
 */
record UnknownNames(Set<String> known) {

    CalculationException error(String name) {
        List<String> near = nearest(name);
        String advice = !near.isEmpty() ? "did you mean " + String.join(" or ", near) + "?"
                : "give it in a line above, with given(\"" + name + "\", ...)"
                + (known.isEmpty() ? "." : "; the sheet has " + String.join(", ", known) + ".");
        return new CalculationException("Name " + name + ": no line above gives it; " + advice);
    }

    private List<String> nearest(String name) {
        int least = known.stream().mapToInt(other -> distance(other, name)).min().orElse(Integer.MAX_VALUE);
        boolean close = least == 0 || least <= 2 && least * 2 <= name.length();
        return close ? known.stream().filter(other -> distance(other, name) == least).toList() : List.of();
    }

    /**
     * Refuses {@code 2 N} in a sheet that has a symbol N: it could be two newtons or twice N.
     *
     * @throws CalculationException when the formula has such a number
     */
    static void refuseAmbiguous(Formula formula, Set<String> symbols) {
        formula.all().filter(Formula.Amount.class::isInstance).map(Formula.Amount.class::cast)
                .filter(amount -> symbols.contains(amount.bareUnit()))
                .findFirst().ifPresent(amount -> {
                    throw ambiguous(amount);
                });
    }

    private static CalculationException ambiguous(Formula.Amount amount) {
        String unit = amount.bareUnit();
        return new CalculationException("\"" + amount.value() + "\" in a formula: " + unit
                + " is a unit and also a symbol of this sheet; write * between them for the symbol, or [" + unit
                + "] for the unit.");
    }

    /** Letters to change, add or drop to come from one to the other, capitals or not. */
    private static int distance(String a, String b) {
        String s = a.toLowerCase(Locale.ROOT);
        String t = b.toLowerCase(Locale.ROOT);
        int[] above = new int[t.length() + 1];
        for (int j = 0; j <= t.length(); j++) {
            above[j] = j;
        }
        for (int i = 1; i <= s.length(); i++) {
            int[] row = new int[t.length() + 1];
            row[0] = i;
            for (int j = 1; j <= t.length(); j++) {
                int change = above[j - 1] + (s.charAt(i - 1) == t.charAt(j - 1) ? 0 : 1);
                row[j] = Math.min(change, 1 + Math.min(above[j], row[j - 1]));
            }
            above = row;
        }
        return above[t.length()];
    }
}
