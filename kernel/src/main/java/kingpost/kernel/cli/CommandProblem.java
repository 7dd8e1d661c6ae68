package kingpost.kernel.cli;

/** A command that cannot be carried out as given; the message says what is wrong and what to do. */
final class CommandProblem extends RuntimeException {

    private static final long serialVersionUID = 1L;

    CommandProblem(String message) {
        super(message);
    }

    CommandProblem(String message, Throwable cause) {
        super(message, cause);
    }
}
