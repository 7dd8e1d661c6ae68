package kingpost.kernel.cli;

import kingpost.kernel.document.NotebookProblem;
import picocli.CommandLine;
import picocli.CommandLine.IExecutionExceptionHandler;
import picocli.CommandLine.IParameterExceptionHandler;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.ParseResult;

/** Shows what the user can mend as one line, without a stack trace. */
final class OneLine implements IExecutionExceptionHandler, IParameterExceptionHandler {

    @Override
    public int handleParseException(ParameterException problem, String[] arguments) {
        CommandLine command = problem.getCommandLine();
        String told = problem.getMessage().lines().findFirst().orElse("").replace(" (case-insensitive)", "");
        command.getErr().println(told.replaceFirst("\\.$", "") + "; see \""
                + command.getCommandSpec().qualifiedName() + " --help\".");
        return Main.BAD_INPUT;
    }

    @Override
    public int handleExecutionException(Exception problem, CommandLine command, ParseResult parsed) throws Exception {
        if (problem instanceof NotebookProblem || problem instanceof CommandProblem) {
            command.getErr().println(problem.getMessage());
            return Main.BAD_INPUT;
        }
        throw problem;
    }
}
