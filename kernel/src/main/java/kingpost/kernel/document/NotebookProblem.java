package kingpost.kernel.document;

/** A file that is not a notebook that can be run here; the message says what is wrong and what to do. */
public final class NotebookProblem extends RuntimeException {

    private static final long serialVersionUID = 1L;

    public NotebookProblem(String message) {
        super(message);
    }

    public NotebookProblem(String message, Throwable cause) {
        super(message, cause);
    }
}
