package kingpost.explain;

/** What a member's force is called. */
final class SenseWords {

    private SenseWords() {
    }

    /** "tension", "compression" or "no force". */
    static String noun(double force) {
        return force > 0 ? "tension" : force < 0 ? "compression" : "no force";
    }

    /** "pulls", "pushes" or "carries nothing". */
    static String verb(double force) {
        return force > 0 ? "pulls" : force < 0 ? "pushes" : "carries nothing";
    }
}
