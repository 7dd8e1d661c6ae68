package kingpost.kernel.client;

import java.nio.file.Path;
import kingpost.kernel.cli.KernelProcess;
import kingpost.kernel.session.ScriptedEvaluator;

/** A kernel with scripted cells as a process of its own. */
public final class KernelMain {

    private KernelMain() { }

    public static void main(String[] arguments) {
        System.exit(KernelProcess.run(Path.of(arguments[0]), "test", ScriptedEvaluator::withUsualCells, System.err));
    }
}
