package kingpost.kernel.evaluation;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.CompletableFuture;
import java.util.function.Supplier;
import kingpost.kernel.display.MimeBundle;

/** Cells compiled by JShell here and run in a calc VM of their own. */
public final class JShellEvaluator implements Evaluator {

    private final CompletableFuture<Shell> shell;
    private volatile Interrupter running;

    private JShellEvaluator(CompletableFuture<Shell> shell) {
        this.shell = shell;
    }

    /** Starts with the standard options. */
    public static JShellEvaluator start() {
        return start(CalcOptions.standard());
    }

    /** Begins to start JShell and the calc VM, and returns at once; the first call waits for what it needs. */
    public static JShellEvaluator start(CalcOptions options) {
        var shell = new CompletableFuture<Shell>();
        var starter = new Thread(() -> {
            try {
                var made = new Shell(options);
                made.inTurn(() -> {
                    shell.complete(made);
                    return warmUp(made);
                });
            } catch (RuntimeException | Error failed) {
                shell.completeExceptionally(failed);
            }
        }, "evaluator start");
        starter.setDaemon(true);
        starter.start();
        return new JShellEvaluator(shell);
    }

    private static Outcome warmUp(Shell shell) {
        Preload.imports().forEach(shell.jshell()::eval);
        return new CellRun(shell, CellRequest.of("1 + 1"), NoOutput.INSTANCE).run();
    }

    @Override
    public Outcome run(CellRequest cell, CellOutput output) {
        Shell ready = shell.join();
        return ready.inTurn(() -> {
            var run = new CellRun(ready, cell, output);
            return stoppable(run.interrupter(), run::run);
        });
    }

    private <T> T stoppable(Interrupter interrupter, Supplier<T> work) {
        running = interrupter;
        try {
            return work.get();
        } finally {
            running = null;
        }
    }

    @Override
    public void interrupt() {
        Interrupter now = running;
        if (now != null) {
            now.stop();
        }
    }

    @Override
    public Completion complete(String code, int cursor) {
        return questions().complete(code, cursor);
    }

    @Override
    public Optional<MimeBundle> inspect(String code, int cursor, int detail) {
        return questions().inspect(code, cursor, detail);
    }

    @Override
    public Completeness completeness(String code) {
        return questions().completeness(code);
    }

    private CodeQuestions questions() {
        return shell.join().questions();
    }

    @Override
    public void comm(String type, Map<String, Object> content, Map<String, Object> metadata, List<byte[]> buffers,
                     CellOutput output) {
        Shell ready = shell.join();
        ready.inTurn(() -> {
            var delivery = new CommDelivery(ready, output);
            return stoppable(delivery.interrupter(), () -> {
                delivery.deliver(type, content, metadata, buffers);
                return null;
            });
        });
    }

    @Override
    public Map<String, String> comms() {
        return shell.isDone() ? shell.join().outputs().comms() : Map.of();
    }

    @Override
    public void close() {
        shell.thenAccept(ready -> ready.control().shutDown());
    }
}
