package kingpost.kernel.formula;

/** The formula nests deeper than anything a person would write. */
final class FormulaTooDeep extends RuntimeException {

    private static final long serialVersionUID = 1L;

    FormulaTooDeep(int limit) {
        super("Formula: nested deeper than " + limit + " levels; split it.");
    }
}
