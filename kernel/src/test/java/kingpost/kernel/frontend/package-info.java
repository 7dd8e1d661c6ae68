/**
 * The jar as front ends use it: registered in a scratch folder, started by clients of the protocol that others wrote.
 * Each test runs a script of {@code src/test/python}; where the client is not installed the test is skipped, or fails
 * if {@code kingpost.requireClients} is true. Read {@link kingpost.kernel.frontend.FrontEnd} first.
 */
package kingpost.kernel.frontend;
