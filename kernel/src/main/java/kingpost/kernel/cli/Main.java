package kingpost.kernel.cli;

import java.util.function.Supplier;
import kingpost.kernel.evaluation.Evaluator;
import kingpost.kernel.evaluation.JShellEvaluator;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.HelpCommand;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Spec;

/** The command line of {@code kingpost.jar}. */
@Command(name = "kingpost", mixinStandardHelpOptions = true, versionProvider = Version.class,
        description = "Structural calculations in notebooks: trusses worked joint by joint, checked and drawn.",
        synopsisSubcommandLabel = "COMMAND", subcommands = HelpCommand.class)
public final class Main implements Runnable {

    /** What a command returns when the command line or a file is not what it should be. */
    static final int BAD_INPUT = 2;

    @Spec
    private CommandSpec spec;

    private Main() {
    }

    /** Runs the command and exits with its status: 0 done, 1 a cell failed or the kernel could not start, 2 bad input. */
    public static void main(String[] args) {
        System.exit(commandLine(JShellEvaluator::start).execute(args));
    }

    /** The commands; cells run in what {@code evaluator} starts. */
    static CommandLine commandLine(Supplier<? extends Evaluator> evaluator) {
        return new CommandLine(new Main())
                .addSubcommand(new RunCommand(evaluator))
                .addSubcommand(new RecheckCommand(evaluator))
                .addSubcommand(new RegisterCommand())
                .addSubcommand(new KernelCommand(evaluator))
                .setExecutionExceptionHandler(new OneLine());
    }

    @Override
    public void run() {
        throw new ParameterException(spec.commandLine(), "Command: none given; choose one of those below.");
    }
}
