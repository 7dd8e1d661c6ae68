package kingpost.kernel.library;

/** A library that cannot be had; the message says why and what to do. */
public final class LibraryProblem extends RuntimeException {

    private static final long serialVersionUID = 1L;

    LibraryProblem(String message) {
        super(message);
    }
}
