package kingpost.kernel.cli;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.Callable;
import java.util.function.Supplier;
import kingpost.kernel.evaluation.Evaluator;
import picocli.CommandLine.Command;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Unmatched;

/** Runs the kernel for a front end. */
@Command(name = "kernel", header = "Runs the kernel for a front end.",
        mixinStandardHelpOptions = true, versionProvider = Version.class,
        description = "Runs the kernel on a connection file. Front ends call this; people call \"run\".")
final class KernelCommand implements Callable<Integer> {

    private final Supplier<? extends Evaluator> evaluator;

    @Parameters(paramLabel = "CONNECTION_FILE", description = "Written by the front end: ports and key.")
    private Path connectionFile;

    /** Launchers may add arguments of their own. */
    @Unmatched
    private List<String> ignored;

    KernelCommand(Supplier<? extends Evaluator> evaluator) {
        this.evaluator = evaluator;
    }

    @Override
    public Integer call() {
        if (!Files.isRegularFile(connectionFile)) {
            throw new CommandProblem("Connection file " + connectionFile + ": there is no such file; a front end starts "
                    + "the kernel with one, see \"kingpost register --help\".");
        }
        return KernelProcess.run(connectionFile, Version.number(), evaluator, System.err);
    }
}
