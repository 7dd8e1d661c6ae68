/**
 * What runs inside the calc VM: takes classes and calls from the pipe, runs them on the cell thread, and turns
 * values, output and failures into frames. Read {@link kingpost.kernel.agent.CalcMain} first. User code is in this
 * VM, so nothing here may trust it, wait for it on the reading thread, or keep what it has dropped.
 */
package kingpost.kernel.agent;
