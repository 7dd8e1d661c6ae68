package kingpost.render;

/**
 * For whom a document is made. A value shows the same problem to all of them, but not the same answers.
 *
 * <p>Which one is in force is said when the calculation starts, and no value need ask: what shows values does.
 */
public enum Edition {
    /** The whole working. */
    SOLUTION,
    /** The problem with room to work in; nothing that could not be said before anything was solved. */
    HANDOUT,
    /** The answers alone. */
    KEY;

    /** The system property that names the edition of this run; without it the solution is shown. */
    public static final String PROPERTY = "kingpost.edition";

    /** The edition of this run. */
    public static Edition inForce() {
        String name = System.getProperty(PROPERTY, "");
        for (Edition edition : values()) {
            if (edition.word().equals(name)) {
                return edition;
            }
        }
        return SOLUTION;
    }

    /** Its name in small letters. */
    public String word() {
        return name().toLowerCase(java.util.Locale.ROOT);
    }
}
