package kingpost.form;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.Map;
import java.util.Set;

/**
 * A form being set out: where each joint stands and which are joined. Places are worked in decimals and rounded once,
 * so that a third of the span is the double nearest to a third and the exact route can read it as one.
 *
 * <p><b>Units</b>: every length in the unit of the span.
 */
final class SettingOut {

    private final BigDecimal span;
    private final BigDecimal rise;
    private final int panels;
    private final Map<String, Place> joints = new LinkedHashMap<>();
    private final Set<Ends> members = new LinkedHashSet<>();

    SettingOut(double span, double rise, int panels) {
        this.span = BigDecimal.valueOf(span);
        this.rise = BigDecimal.valueOf(rise);
        this.panels = panels;
    }

    /**
     * @param x to the right of the left bearing
     * @param y above the bearings
     */
    record Place(double x, double y) {
    }

    /** The two joints of a member, in the order of its name. */
    record Ends(String from, String to) {
    }

    int panels() {
        return panels;
    }

    Map<String, Place> joints() {
        return joints;
    }

    Set<Ends> members() {
        return members;
    }

    /** {@code numerator / denominator} of the span from the left bearing. */
    BigDecimal across(long numerator, long denominator) {
        return part(span, numerator, denominator);
    }

    /** {@code numerator / denominator} of the rise above the bearings. */
    BigDecimal up(long numerator, long denominator) {
        return part(rise, numerator, denominator);
    }

    /** Where a line square to the left rafter, from the rafter's middle, meets the line between the bearings. */
    BigDecimal footOfSquareStrut() {
        BigDecimal half = across(1, 2);
        return half.pow(2).add(rise.pow(2)).divide(half.multiply(BigDecimal.valueOf(2)), MathContext.DECIMAL128);
    }

    BigDecimal span() {
        return span;
    }

    void joint(String name, BigDecimal x, BigDecimal y) {
        joints.put(name, new Place(x.doubleValue(), y.doubleValue()));
    }

    /** The member between each joint and the next; the joints stand already. */
    void chain(String... names) {
        for (int i = 1; i < names.length; i++) {
            members.add(inOrder(names[i - 1], names[i]));
        }
    }

    /** The left joint first; in a post the upper one. */
    private Ends inOrder(String a, String b) {
        Place p = joints.get(a);
        Place q = joints.get(b);
        boolean asGiven = p.x() < q.x() || p.x() == q.x() && p.y() > q.y();
        return asGiven ? new Ends(a, b) : new Ends(b, a);
    }

    private static BigDecimal part(BigDecimal whole, long numerator, long denominator) {
        return whole.multiply(BigDecimal.valueOf(numerator))
                .divide(BigDecimal.valueOf(denominator), MathContext.DECIMAL128);
    }
}
