/**
 * What the kernel VM and the calc VM say to each other: frames of plain data on one socket. Read
 * {@link kingpost.kernel.pipe.Kind} first. Only text, numbers, bytes, lists and maps cross the pipe; no class of
 * the other side is ever instantiated from what arrives.
 */
package kingpost.kernel.pipe;
