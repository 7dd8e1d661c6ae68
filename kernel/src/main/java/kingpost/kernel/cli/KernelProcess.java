package kingpost.kernel.cli;

import java.io.PrintStream;
import java.nio.file.Path;
import java.util.Map;
import java.util.concurrent.atomic.AtomicBoolean;
import java.util.function.Supplier;
import kingpost.kernel.channels.BindingException;
import kingpost.kernel.channels.KernelSockets;
import kingpost.kernel.channels.MessageLimits;
import kingpost.kernel.evaluation.Evaluator;
import kingpost.kernel.session.HistoryStore;
import kingpost.kernel.session.KernelDescription;
import kingpost.kernel.session.KernelSession;
import kingpost.kernel.session.OutputLimits;
import kingpost.kernel.wire.ConnectionFile;
import kingpost.kernel.wire.ConnectionFileException;

/** Joins sockets, session and evaluator into a running kernel. */
public final class KernelProcess {

    private final String version;
    private final Supplier<? extends Evaluator> evaluator;
    private final HistoryStore history;
    private final Host host;
    private final PrintStream errors;

    /**
     * @param evaluator makes the evaluator, on another thread, while the sockets answer already
     * @param history   closed at the end
     * @param errors    where one line says why a kernel could not start
     */
    public KernelProcess(String version, Supplier<? extends Evaluator> evaluator, HistoryStore history, Host host,
                         PrintStream errors) {
        this.version = version;
        this.evaluator = evaluator;
        this.history = history;
        this.host = host;
        this.errors = errors;
    }

    /**
     * Runs a kernel as what this process is for: with the user's history, with SIGINT as a request to stop the cell,
     * and only as long as the process that started it. Exit the VM with what this returns.
     *
     * @param version the product's version, for clients to show
     * @param errors  where one line says why the kernel could not start
     * @return the process's exit status: 0 after a shutdown, 1 when the kernel could not start or go on
     */
    public static int run(Path connectionFile, String version, Supplier<? extends Evaluator> evaluator,
                          PrintStream errors) {
        Map<String, String> environment = System.getenv();
        Host host = new ProcessHost(environment);
        HistoryStore history = HistoryLocation.open(environment, System.getProperty("os.name", ""),
                Path.of(System.getProperty("user.home", ".")));
        return new KernelProcess(version, evaluator, history, host, errors).serve(connectionFile);
    }

    /** Serves until the kernel is shut down; the result is a process's exit status. */
    public int serve(Path connectionFile) {
        try {
            ConnectionFile file = ConnectionFile.read(connectionFile);
            int status;
            try (KernelSockets sockets = new KernelSockets(file, MessageLimits.configured())) {
                ConnectionFile bound = sockets.ports().equals(file.ports()) ? file
                        : file.withPorts(sockets.ports(), connectionFile);
                status = serve(bound, sockets);
            }
            host.ended();
            return status;
        } catch (ConnectionFileException | BindingException e) {
            errors.println(e.getMessage());
            return 1;
        }
    }

    private int serve(ConnectionFile file, KernelSockets sockets) {
        var broken = new AtomicBoolean();
        KernelDescription description = new KernelDescription(version, file.ports().byName());
        try (KernelSession session = new KernelSession(description, evaluator, history, sockets,
                OutputLimits.configured())) {
            host.begins(session::interrupt, session::end);
            sockets.whenBroken(reason -> {
                errors.println(reason);
                broken.set(true);
                session.end();
            });
            sockets.start(session);
            session.start();
            session.awaitEnd();
            int status = broken.get() ? 1 : 0;
            host.ends(status);
            return status;
        }
    }
}
