package kingpost.kernel.recheck;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** A text taken apart into its numbers and the words between them, so that numbers are compared as numbers. */
final class NumberedText {

    private static final Pattern NUMBER = Pattern.compile(
            "(?<![\\w.])[-\u2212+]?(?:\\d[\\d,\u202f\u00a0]*\\d|\\d)(?:\\.\\d+)?(?:[eE][-\u2212+]?\\d+)?|[-\u2212+]?\\.\\d+");
    private static final Pattern IDENTITY = Pattern.compile("@[0-9a-f]{4,16}\\b|\\$\\$Lambda[^\\s@]*");

    private final List<String> words = new ArrayList<>();
    private final List<Double> numbers = new ArrayList<>();
    private final List<String> written = new ArrayList<>();

    private NumberedText(String text) {
        Matcher number = NUMBER.matcher(text);
        int from = 0;
        while (number.find()) {
            words.add(squeezed(text.substring(from, number.start())));
            written.add(number.group());
            numbers.add(value(number.group()));
            from = number.end();
        }
        words.add(squeezed(text.substring(from)));
    }

    /** What differs between two texts, or empty; identity hashes and the width of spaces do not count. */
    static Optional<String> difference(String saved, String now, Tolerance tolerance) {
        NumberedText before = new NumberedText(IDENTITY.matcher(saved).replaceAll("@"));
        NumberedText after = new NumberedText(IDENTITY.matcher(now).replaceAll("@"));
        if (!before.words.equals(after.words)) {
            return Optional.of("\"" + excerpt(saved, now) + "\" was saved, now it is \"" + excerpt(now, saved) + "\"");
        }
        double largest = Math.max(before.largest(), after.largest());
        for (int i = 0; i < before.numbers.size(); i++) {
            if (!tolerance.same(before.numbers.get(i), after.numbers.get(i), largest)) {
                return Optional.of(before.written.get(i) + " was saved, now it is " + after.written.get(i) + after.place(i));
            }
        }
        return Optional.empty();
    }

    private double largest() {
        return numbers.stream().mapToDouble(Math::abs).filter(Double::isFinite).max().orElse(0);
    }

    private String place(int index) {
        String words = (this.words.get(index) + " ... " + this.words.get(index + 1)).strip();
        return words.length() <= 5 ? "" : " (at \"" + tail(this.words.get(index)) + " " + written.get(index) + " "
                + head(this.words.get(index + 1)) + "\")";
    }

    private static String head(String text) {
        return text.length() <= 20 ? text : text.substring(0, 20);
    }

    private static String tail(String text) {
        return text.length() <= 30 ? text : text.substring(text.length() - 30);
    }

    /** A piece of {@code text} from a little before the point where it begins to differ from {@code other}. */
    private static String excerpt(String text, String other) {
        int same = 0;
        while (same < text.length() && same < other.length() && text.charAt(same) == other.charAt(same)) {
            same++;
        }
        int from = Math.max(0, same - 20);
        String piece = text.substring(from, Math.min(text.length(), from + 70));
        return (from > 0 ? "..." : "") + squeezed(piece) + (from + 70 < text.length() ? "..." : "");
    }

    private static String squeezed(String text) {
        return text.replaceAll("[\\s\u00a0\u202f]+", " ").strip();
    }

    private static double value(String number) {
        String plain = number.replace('\u2212', '-').replaceAll("[,\u202f\u00a0]", "");
        return Double.parseDouble(plain);
    }
}
