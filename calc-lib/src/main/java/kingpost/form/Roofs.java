package kingpost.form;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;

/** Forms with two straight rafters, or their kin: roofs. */
final class Roofs {

    private static final long SCISSORS_PART = 3;

    private Roofs() {
    }

    static void kingPost(SettingOut s) {
        s.joint("L0", s.across(0, 1), BigDecimal.ZERO);
        s.joint("L1", s.across(1, 2), BigDecimal.ZERO);
        s.joint("L2", s.span(), BigDecimal.ZERO);
        rafters(s, "L2");
        s.chain("L0", "L1", "L2");
        s.chain("U" + s.panels() / 2, "L1");
        if (s.panels() == 4) {
            s.chain("U1", "L1", "U3");
        }
    }

    static void queenPost(SettingOut s) {
        for (int i = 0; i <= 3; i++) {
            s.joint("L" + i, s.across(i, 3), BigDecimal.ZERO);
        }
        s.joint("U1", s.across(1, 3), s.up(1, 1));
        s.joint("U2", s.across(2, 3), s.up(1, 1));
        s.chain("L0", "L1", "L2", "L3");
        s.chain("L0", "U1", "U2", "L3");
        s.chain("U1", "L1");
        s.chain("U2", "L2");
        s.chain("U1", "L2");
    }

    static void pratt(SettingOut s) {
        gable(s, 0);
        Girders.webs(s, false);
    }

    static void howe(SettingOut s) {
        gable(s, 0);
        Girders.webs(s, true);
    }

    static void scissors(SettingOut s) {
        if (s.panels() > 4) {
            gable(s, 1);
            Girders.webs(s, false);
            return;
        }
        s.joint("L0", s.across(0, 1), BigDecimal.ZERO);
        s.joint("L1", s.across(1, 2), s.up(1, SCISSORS_PART));
        s.joint("L2", s.span(), BigDecimal.ZERO);
        rafters(s, "L2");
        s.chain("L0", "L1", "U3");
        s.chain("U1", "L1", "L2");
        s.chain("U2", "L1");
    }

    /** Struts square to the rafters at their middles; with eight panels a smaller set in each half of a rafter. */
    static void fink(SettingOut s) {
        boolean compound = s.panels() == 8;
        BigDecimal foot = s.footOfSquareStrut();
        BigDecimal half = foot.divide(BigDecimal.valueOf(2));
        List<BigDecimal> left = compound ? List.of(BigDecimal.ZERO, half, foot) : List.of(BigDecimal.ZERO, foot);
        int last = 2 * left.size() - 1;
        for (int i = 0; i <= last; i++) {
            s.joint("L" + i, i < left.size() ? left.get(i) : s.span().subtract(left.get(last - i)), BigDecimal.ZERO);
        }
        rafters(s, "L" + last);
        if (!compound) {
            s.chain("L0", "L1", "L2", "L3");
            s.chain("U1", "L1", "U2", "L2", "U3");
            return;
        }
        BigDecimal hanging = foot.add(s.across(1, 2)).divide(BigDecimal.valueOf(2));
        s.joint("M1", hanging, s.up(1, 2));
        s.joint("M2", s.span().subtract(hanging), s.up(1, 2));
        s.chain("L0", "L1", "L2", "L3", "L4", "L5");
        s.chain("L2", "M1", "U4", "M2", "L3");
        s.chain("U1", "L1", "U2", "M1", "U3");
        s.chain("U5", "M2", "U6", "L4", "U7");
        s.chain("U2", "L2");
        s.chain("L3", "U6");
    }

    /** Rafters and posts; the lower chord rises to {@code third} thirds of the rise at midspan. */
    private static void gable(SettingOut s, int third) {
        int n = s.panels();
        List<String> lower = new ArrayList<>();
        for (int i = 0; i <= n; i++) {
            s.joint("L" + i, s.across(i, n), s.up(2L * third * Math.min(i, n - i), SCISSORS_PART * n));
            lower.add("L" + i);
        }
        rafters(s, "L" + n);
        s.chain(lower.toArray(String[]::new));
        Girders.posts(s);
    }

    /** Equal panels from the left bearing over the ridge to the right one. */
    private static void rafters(SettingOut s, String right) {
        int n = s.panels();
        List<String> upper = new ArrayList<>(List.of("L0"));
        for (int i = 1; i < n; i++) {
            s.joint("U" + i, s.across(i, n), s.up(2L * Math.min(i, n - i), n));
            upper.add("U" + i);
        }
        upper.add(right);
        s.chain(upper.toArray(String[]::new));
    }
}
