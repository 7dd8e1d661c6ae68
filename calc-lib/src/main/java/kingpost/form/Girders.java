package kingpost.form;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.function.IntFunction;

/** Forms whose panels are equal along a level lower chord: girders and bridges. */
final class Girders {

    private Girders() {
    }

    static void pratt(SettingOut s) {
        chords(s, i -> s.up(1, 1));
        diagonals(s, true);
    }

    static void howe(SettingOut s) {
        chords(s, i -> s.up(1, 1));
        diagonals(s, false);
    }

    /** Upper joints on a parabola that would stand at half the rise over the bearings. */
    static void parker(SettingOut s) {
        long below = 2 * parabola(s.panels(), 0);
        chords(s, i -> s.up(below - parabola(s.panels(), i), below));
        diagonals(s, true);
    }

    /** Upper joints on a parabola through the bearings. */
    static void bowstring(SettingOut s) {
        long below = parabola(s.panels(), 0);
        chords(s, i -> s.up(below - parabola(s.panels(), i), below));
        diagonals(s, true);
    }

    static void warren(SettingOut s) {
        int n = s.panels();
        level(s, n);
        List<String> upper = new ArrayList<>();
        for (int i = 1; i <= n; i++) {
            s.joint("U" + i, s.across(2L * i - 1, 2L * n), s.up(1, 1));
            upper.add("U" + i);
        }
        s.chain(upper.toArray(String[]::new));
        for (int i = 1; i <= n; i++) {
            s.chain("L" + (i - 1), "U" + i, "L" + i);
        }
    }

    static void warrenWithVerticals(SettingOut s) {
        chords(s, i -> s.up(1, 1));
        posts(s);
        for (int i = 2; i < s.panels(); i++) {
            boolean falls = i % 2 == 0;
            s.chain(falls ? "U" + (i - 1) : "L" + (i - 1), falls ? "L" + i : "U" + i);
        }
    }

    static void kTruss(SettingOut s) {
        int n = s.panels();
        chords(s, i -> s.up(1, 1));
        for (int i = 1; i < n; i++) {
            if (2 * i == n) {
                s.chain("U" + i, "L" + i);
            } else {
                s.joint("M" + i, s.across(i, n), s.up(1, 2));
                s.chain("U" + i, "M" + i, "L" + i);
            }
        }
        for (int i = 1; i < n; i++) {
            if (2 * i < n) {
                s.chain("M" + i, "U" + (i + 1));
                s.chain("M" + i, "L" + (i + 1));
            } else if (2 * i > n) {
                s.chain("U" + (i - 1), "M" + i);
                s.chain("L" + (i - 1), "M" + i);
            }
        }
    }

    static void baltimore(SettingOut s) {
        int n = s.panels();
        level(s, n);
        List<String> upper = new ArrayList<>();
        for (int i = 2; i < n; i += 2) {
            s.joint("U" + i, s.across(i, n), s.up(1, 1));
            upper.add("U" + i);
        }
        for (int i = 1; i < n; i += 2) {
            s.joint("M" + i, s.across(i, n), s.up(1, 2));
        }
        s.chain(upper.toArray(String[]::new));
        for (int i = 2; i < n; i += 2) {
            s.chain("U" + i, "L" + i);
        }
        for (int i = 1; i < n; i += 2) {
            boolean rises = i == 1 || i > n / 2 && i < n - 1;
            s.chain((rises ? "L" : "U") + (i - 1), "M" + i, (rises ? "U" : "L") + (i + 1));
            s.chain("M" + i, "L" + i);
            if (rises) {
                s.chain("M" + i, "L" + (i + 1));
            } else {
                s.chain("L" + (i - 1), "M" + i);
            }
        }
    }

    /** How far panel point i lies below the top of a parabola, in parts of {@code parabola(panels, 0)}. */
    private static long parabola(int panels, int i) {
        long fromMiddle = 2L * i - panels;
        return fromMiddle * fromMiddle - panels % 2;
    }

    /** The lower chord, and the upper one from bearing to bearing at the given height over each inner panel point. */
    private static void chords(SettingOut s, IntFunction<BigDecimal> height) {
        int n = s.panels();
        level(s, n);
        List<String> upper = new ArrayList<>(List.of("L0"));
        for (int i = 1; i < n; i++) {
            s.joint("U" + i, s.across(i, n), height.apply(i));
            upper.add("U" + i);
        }
        upper.add("L" + n);
        s.chain(upper.toArray(String[]::new));
    }

    private static void level(SettingOut s, int n) {
        List<String> lower = new ArrayList<>();
        for (int i = 0; i <= n; i++) {
            s.joint("L" + i, s.across(i, n), BigDecimal.ZERO);
            lower.add("L" + i);
        }
        s.chain(lower.toArray(String[]::new));
    }

    /** Posts, and in each inner panel a diagonal that falls or rises towards midspan. */
    private static void diagonals(SettingOut s, boolean fall) {
        posts(s);
        webs(s, fall);
    }

    static void posts(SettingOut s) {
        for (int i = 1; i < s.panels(); i++) {
            s.chain("U" + i, "L" + i);
        }
    }

    /** The middle panel of an odd number has the diagonal of the left half. */
    static void webs(SettingOut s, boolean fall) {
        int n = s.panels();
        for (int i = 2; i < n; i++) {
            boolean falls = (2 * i <= n + 1) == fall;
            s.chain(falls ? "U" + (i - 1) : "L" + (i - 1), falls ? "L" + i : "U" + i);
        }
    }
}
