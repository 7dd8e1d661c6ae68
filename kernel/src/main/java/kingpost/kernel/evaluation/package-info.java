/**
 * Java cells: JShell compiles them here, the calc VM runs them. Read {@link kingpost.kernel.evaluation.Evaluator}
 * first. Knows nothing of messages or sockets.
 */
package kingpost.kernel.evaluation;
