package kingpost.units;

import java.util.ArrayList;
import java.util.List;
import javax.measure.Unit;
import tech.units.indriya.unit.ProductUnit;

/** A unit as people write it: kN/m², mm⁴, kip·ft, ksi, °. */
public final class UnitLabel {

    private static final String SUPERSCRIPTS = "\u2070\u00b9\u00b2\u00b3\u2074\u2075\u2076\u2077\u2078\u2079";

    private UnitLabel() {
    }

    /**
     * The unit that {@code text} names: kN, kN/m2, kN/m², mm^4, kip-ft, kN·m.
     *
     * @throws CalculationException when a name is not known or the text cannot be read
     */
    public static Unit<?> parse(String text) {
        return UnitParser.parse(text);
    }

    /** The label of {@code unit}; empty for a plain number. */
    public static String of(Unit<?> unit) {
        String name = UnitNames.name(unit);
        if (name != null) {
            return name;
        }
        return unit instanceof ProductUnit<?> product ? product(product) : unit.toString();
    }

    private static String product(ProductUnit<?> product) {
        List<String> above = new ArrayList<>();
        List<String> below = new ArrayList<>();
        for (int i = 0; i < product.getUnitCount(); i++) {
            Unit<?> factor = product.getUnit(i);
            int power = product.getUnitPow(i);
            String text = of(factor) + (Math.abs(power) == 1 ? "" : superscript(Math.abs(power)));
            List<String> side = power > 0 ? above : below;
            if (isForce(factor)) {
                side.add(0, text);
            } else {
                side.add(text);
            }
        }
        String top = above.isEmpty() ? "1" : String.join("\u00b7", above);
        if (below.isEmpty()) {
            return top;
        }
        String bottom = String.join("\u00b7", below);
        return top + "/" + (below.size() == 1 ? bottom : "(" + bottom + ")");
    }

    private static boolean isForce(Unit<?> factor) {
        return factor.getDimension().equals(StructuralUnits.N.getDimension());
    }

    /** The number in raised digits. */
    static String superscript(int number) {
        StringBuilder text = new StringBuilder(number < 0 ? "\u207b" : "");
        for (char digit : Integer.toString(Math.abs(number)).toCharArray()) {
            text.append(SUPERSCRIPTS.charAt(digit - '0'));
        }
        return text.toString();
    }

    /** Raised digits and minus signs as ordinary ones. */
    static String lowered(String text) {
        StringBuilder low = new StringBuilder();
        for (char c : text.toCharArray()) {
            int digit = SUPERSCRIPTS.indexOf(c);
            low.append(digit >= 0 ? (char) ('0' + digit) : c == '\u207b' || c == '\u2212' ? '-' : c);
        }
        return low.toString();
    }
}
