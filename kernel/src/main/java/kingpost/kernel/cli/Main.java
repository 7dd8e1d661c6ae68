package kingpost.kernel.cli;

import java.util.concurrent.Callable;
import java.util.function.Function;
import java.util.function.Supplier;
import kingpost.kernel.document.Edition;
import kingpost.kernel.evaluation.CalcOptions;
import kingpost.kernel.evaluation.Evaluator;
import kingpost.kernel.evaluation.JShellEvaluator;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.HelpCommand;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Spec;

/** The command line of {@code kingpost.jar}. */
@Command(name = "kingpost", mixinStandardHelpOptions = true, versionProvider = Version.class,
        description = "Structural calculations in notebooks: trusses worked joint by joint, checked and drawn.",
        synopsisSubcommandLabel = "COMMAND", subcommands = HelpCommand.class)
public final class Main implements Callable<Integer> {

    /** What a command returns when the command line or a file is not what it should be. */
    static final int BAD_INPUT = 2;

    @Spec
    private CommandSpec spec;

    private Main() {
    }

    /** Runs the command and exits with its status: 0 done, 1 a cell failed or the kernel could not start, 2 bad input. */
    public static void main(String[] args) {
        System.exit(commandLine(Main::evaluator).execute(args));
    }

    /** An evaluator whose calculations know for which edition they run. */
    private static Evaluator evaluator(Edition edition) {
        CalcOptions options = CalcOptions.standard();
        return JShellEvaluator.start(edition == Edition.SOLUTION ? options
                : options.plusFlag("-D" + Edition.PROPERTY + "=" + edition.word()));
    }

    /** The commands; cells run in what {@code evaluator} starts. */
    static CommandLine commandLine(Supplier<? extends Evaluator> evaluator) {
        return commandLine((Edition edition) -> evaluator.get());
    }

    /** The commands; cells run in what {@code evaluator} starts for an edition. */
    static CommandLine commandLine(Function<Edition, ? extends Evaluator> evaluator) {
        Supplier<Evaluator> ordinary = () -> evaluator.apply(Edition.SOLUTION);
        OneLine oneLine = new OneLine();
        return new CommandLine(new Main())
                .addSubcommand(new RunCommand(evaluator))
                .addSubcommand(new RecheckCommand(ordinary))
                .addSubcommand(new RegisterCommand())
                .addSubcommand(new KernelCommand(ordinary))
                .setCaseInsensitiveEnumValuesAllowed(true)
                .setParameterExceptionHandler(oneLine)
                .setExecutionExceptionHandler(oneLine);
    }

    /** Without a command there is nothing to do but name them. */
    @Override
    public Integer call() {
        CommandLine command = spec.commandLine();
        command.getErr().println("Command: none given; choose one of those below.");
        command.usage(command.getErr());
        return BAD_INPUT;
    }
}
