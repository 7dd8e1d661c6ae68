/**
 * The commands of {@code kingpost.jar}, and the running kernel that one of them starts: the only package that knows
 * every other one, and the only one that prints to the standard streams. Read {@link kingpost.kernel.cli.Main} first,
 * then {@link kingpost.kernel.cli.KernelProcess} for how sockets, session and evaluator are joined.
 */
package kingpost.kernel.cli;
