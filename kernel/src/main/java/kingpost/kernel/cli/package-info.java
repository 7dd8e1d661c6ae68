/**
 * The command line, and the running kernel that it starts: the only place that knows every package. Read
 * {@link kingpost.kernel.cli.KernelProcess} for how sockets, session and evaluator are joined.
 */
package kingpost.kernel.cli;
