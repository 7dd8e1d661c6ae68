package kingpost.explain;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;

import kingpost.derivation.Inline;
import kingpost.derivation.Phrase;

/** Things named one after another in a sentence, and small numbers as words. */
final class Series {

    private static final List<String> NUMBERS = List.of("no", "one", "two", "three", "four", "five", "six", "seven",
            "eight", "nine", "ten", "eleven", "twelve");

    private Series() {
    }

    /** "A", "A and B", "A, B and C". */
    static Phrase and(List<Phrase> items) {
        return joined(items, " and ");
    }

    /** "A", "A or B", "A, B or C". */
    static Phrase or(List<Phrase> items) {
        return joined(items, " or ");
    }

    static <T> Phrase and(List<T> items, Function<T, Phrase> said) {
        return and(items.stream().map(said).toList());
    }

    /** Names as plain words: "A, B and C". */
    static Phrase names(List<String> names) {
        return and(names, Phrase::of);
    }

    /** The first {@code most} names, and how many more there are. */
    static Phrase names(List<String> names, int most) {
        if (names.size() <= most) {
            return names(names);
        }
        List<Phrase> shown = new ArrayList<>(names.subList(0, most).stream().map(Phrase::of).toList());
        shown.add(Phrase.of(names.size() - most + " more"));
        return and(shown);
    }

    /** The same with "or". */
    static Phrase oneOf(List<String> names, int most) {
        List<Phrase> shown = new ArrayList<>(names.stream().limit(most).map(Phrase::of).toList());
        if (names.size() > most) {
            shown.add(Phrase.of(names.size() - most + " more"));
        }
        return or(shown);
    }

    /** "one" to "twelve" as words, larger ones in digits; 0 is "no". */
    static String number(int count) {
        return count < NUMBERS.size() ? NUMBERS.get(count) : Integer.toString(count);
    }

    /** "one member", "two members". */
    static String count(int count, String noun) {
        return number(count) + " " + noun + (count == 1 ? "" : "s");
    }

    /** The phrase with a capital letter at its start, if it starts with words. */
    static Phrase capital(Phrase phrase) {
        if (phrase.isEmpty() || !(phrase.pieces().get(0) instanceof Inline.Text first)) {
            return phrase;
        }
        List<Inline> pieces = new ArrayList<>(phrase.pieces());
        pieces.set(0, new Inline.Text(capital(first.text())));
        return new Phrase(pieces);
    }

    static String capital(String sentence) {
        return sentence.substring(0, 1).toUpperCase(java.util.Locale.ROOT) + sentence.substring(1);
    }

    private static Phrase joined(List<Phrase> items, String last) {
        Phrase all = Phrase.EMPTY;
        for (int i = 0; i < items.size(); i++) {
            String before = i == 0 ? "" : i == items.size() - 1 ? last : ", ";
            all = all.text(before).then(items.get(i));
        }
        return all;
    }
}
