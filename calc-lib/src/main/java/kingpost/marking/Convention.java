package kingpost.marking;

import java.util.Locale;
import java.util.Optional;

/** Which sense a number without a word is in. */
public enum Convention {

    TENSION_POSITIVE, COMPRESSION_POSITIVE;

    /** The convention that a line such as "compression positive" or "C +" declares, if it declares one. */
    static Optional<Convention> declaredBy(String line) {
        String words = line.toLowerCase(Locale.ROOT).strip().replaceAll("\\s+", " ");
        if (words.matches("(signs?:? ?)?(t|tens|tension)( is| =|:)? ?(positive|plus|\\+|\\+ve)")
                || words.matches("(signs?:? ?)?(c|comp|compression)( is| =|:)? ?(negative|minus|-|-ve)")) {
            return Optional.of(TENSION_POSITIVE);
        }
        if (words.matches("(signs?:? ?)?(c|comp|compression)( is| =|:)? ?(positive|plus|\\+|\\+ve)")
                || words.matches("(signs?:? ?)?(t|tens|tension)( is| =|:)? ?(negative|minus|-|-ve)")) {
            return Optional.of(COMPRESSION_POSITIVE);
        }
        return Optional.empty();
    }
}
