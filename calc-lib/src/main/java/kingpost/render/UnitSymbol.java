package kingpost.render;

import java.util.ArrayList;
import java.util.List;

/**
 * A unit's label, as {@code units} writes it, taken apart: {@code kN/m²} is "kN/m" with nothing, then "" with "2".
 *
 * @param base  characters on the line
 * @param power digits raised after them, may be empty
 */
record UnitSymbol(String base, String power) {

    private static final String RAISED = "⁰¹²³⁴⁵⁶⁷⁸⁹";

    static List<UnitSymbol> parts(String label) {
        List<UnitSymbol> parts = new ArrayList<>();
        StringBuilder base = new StringBuilder();
        StringBuilder power = new StringBuilder();
        for (char c : label.toCharArray()) {
            int digit = RAISED.indexOf(c);
            if (digit >= 0) {
                power.append(digit);
                continue;
            }
            if (!power.isEmpty()) {
                parts.add(new UnitSymbol(base.toString(), power.toString()));
                base.setLength(0);
                power.setLength(0);
            }
            base.append(c);
        }
        parts.add(new UnitSymbol(base.toString(), power.toString()));
        return parts;
    }

    /** Whether the label follows its number without a space, as a degree sign does. */
    static boolean standsClose(String label) {
        return label.isEmpty() || label.startsWith("°");
    }
}
