package kingpost.kernel.evaluation;

/** What the writer of a misspelt name could have meant. */
interface NearMiss {

    /** {@code "; did you mean X?"} or nothing. */
    String hint(String cell, int offset, String message);
}
