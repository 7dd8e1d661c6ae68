package kingpost.kernel.evaluation;

/** The calc VM is gone; the message says how it ended, as far as that can be known. */
final class CalcLost extends Exception {

    private static final long serialVersionUID = 1L;

    CalcLost(String how) {
        super(how);
    }
}
