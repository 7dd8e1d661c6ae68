package kingpost.units;

/**
 * An error in what the user asked for. Its message is the whole text to show: one clear line, or one line for each
 * problem, with no need of a stack trace.
 */
public class CalculationException extends RuntimeException {

    private static final long serialVersionUID = 1L;

    public CalculationException(String message) {
        super(message);
    }

    public CalculationException(String message, Throwable cause) {
        super(message, cause);
    }
}
