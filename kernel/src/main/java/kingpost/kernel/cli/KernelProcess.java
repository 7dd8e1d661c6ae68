package kingpost.kernel.cli;

import java.nio.file.Path;
import java.util.function.Supplier;
import kingpost.kernel.evaluation.Evaluator;

/** Joins sockets, session and evaluator into a running kernel. */
public final class KernelProcess {

    private KernelProcess() { }

    /**
     * Runs a kernel on the connection file until a client shuts it down or the process that started it ends. The
     * sockets answer before the evaluator exists: it is made on another thread, and the first cell waits for it.
     *
     * @param version the product's version, for clients to show
     * @return the process's exit status: 0 after a shutdown, 1 when the kernel could not start; in that case one
     *         line on standard error has said why
     */
    public static int run(Path connectionFile, String version, Supplier<? extends Evaluator> evaluator) {
        throw new UnsupportedOperationException("the sockets are not joined yet");
    }
}
