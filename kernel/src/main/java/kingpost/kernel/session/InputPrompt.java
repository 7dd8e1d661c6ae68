package kingpost.kernel.session;

import java.util.Optional;

/** How a cell asks the user for a line. */
@FunctionalInterface
interface InputPrompt {

    /** Nobody to ask: every read meets the end of input. */
    InputPrompt NONE = (prompt, password) -> Optional.empty();

    /**
     * The user's line without its end, or empty at end of input.
     *
     * @throws InterruptedException when the cell is interrupted while it waits
     */
    Optional<String> ask(String prompt, boolean password) throws InterruptedException;
}
