package kingpost.kernel.cli;

import kingpost.kernel.document.NotebookProblem;
import picocli.CommandLine;
import picocli.CommandLine.IExecutionExceptionHandler;
import picocli.CommandLine.ParseResult;

/** Shows what the user can mend as one line, without a stack trace. */
final class OneLine implements IExecutionExceptionHandler {

    @Override
    public int handleExecutionException(Exception problem, CommandLine command, ParseResult parsed) throws Exception {
        if (problem instanceof NotebookProblem || problem instanceof CommandProblem) {
            command.getErr().println(problem.getMessage());
            return Main.BAD_INPUT;
        }
        throw problem;
    }
}
