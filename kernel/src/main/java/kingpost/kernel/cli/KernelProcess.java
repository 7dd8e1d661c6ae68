package kingpost.kernel.cli;

import java.io.PrintStream;
import java.nio.file.Path;
import java.util.function.Supplier;
import kingpost.kernel.channels.BindingException;
import kingpost.kernel.channels.KernelSockets;
import kingpost.kernel.channels.MessageLimits;
import kingpost.kernel.evaluation.Evaluator;
import kingpost.kernel.session.KernelDescription;
import kingpost.kernel.session.KernelSession;
import kingpost.kernel.session.MemoryHistory;
import kingpost.kernel.session.OutputLimits;
import kingpost.kernel.wire.ConnectionFile;
import kingpost.kernel.wire.ConnectionFileException;

/** Joins sockets, session and evaluator into a running kernel. */
public final class KernelProcess {

    private KernelProcess() { }

    /**
     * Runs a kernel on the connection file until a client shuts it down or the process that started it ends. The
     * sockets answer before the evaluator exists: it is made on another thread, and the first cell waits for it.
     *
     * @param version the product's version, for clients to show
     * @param errors  where one line says why the kernel could not start
     * @return the process's exit status: 0 after a shutdown, 1 when the kernel could not start
     */
    public static int run(Path connectionFile, String version, Supplier<? extends Evaluator> evaluator,
                          PrintStream errors) {
        try {
            ConnectionFile file = ConnectionFile.read(connectionFile);
            try (KernelSockets sockets = new KernelSockets(file, MessageLimits.configured())) {
                ConnectionFile bound = sockets.ports().equals(file.ports()) ? file
                        : file.withPorts(sockets.ports(), connectionFile);
                serve(bound, sockets, version, evaluator);
            }
            return 0;
        } catch (ConnectionFileException | BindingException e) {
            errors.println(e.getMessage());
            return 1;
        }
    }

    private static void serve(ConnectionFile file, KernelSockets sockets, String version,
                              Supplier<? extends Evaluator> evaluator) {
        KernelDescription description = new KernelDescription(version, file.ports().byName());
        try (KernelSession session = new KernelSession(description, evaluator, new MemoryHistory(), sockets,
                OutputLimits.configured())) {
            sockets.start(session);
            session.start();
            session.awaitEnd();
        }
    }
}
