package kingpost.kernel.session;

import java.util.function.Predicate;

/**
 * A pattern for whole texts: {@code *} stands for any text, also over several lines, {@code ?} for one character;
 * everything else, brackets too, stands for itself. Takes time proportional to pattern times text at most.
 */
final class Glob implements Predicate<String> {

    private final int[] pattern;

    Glob(String pattern) {
        this.pattern = pattern.codePoints().toArray();
    }

    @Override
    public boolean test(String text) {
        int[] characters = text.codePoints().toArray();
        int at = 0;
        int inPattern = 0;
        int star = -1;
        int starTook = 0;
        while (at < characters.length) {
            if (inPattern < pattern.length && pattern[inPattern] == '*') {
                star = inPattern++;
                starTook = at;
            } else if (inPattern < pattern.length
                    && (pattern[inPattern] == '?' || pattern[inPattern] == characters[at])) {
                inPattern++;
                at++;
            } else if (star >= 0) {
                inPattern = star + 1;
                at = ++starTook;
            } else {
                return false;
            }
        }
        while (inPattern < pattern.length && pattern[inPattern] == '*') {
            inPattern++;
        }
        return inPattern == pattern.length;
    }
}
