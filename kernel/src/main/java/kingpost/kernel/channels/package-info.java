/**
 * The five sockets of a kernel: shell, control and stdin (ROUTER), iopub (XPUB), heartbeat (REP). Each socket lives
 * in one thread of its own; everything that other threads send goes through a queue. What a message means is none of
 * its business. Read {@link kingpost.kernel.channels.KernelSockets} first. JeroMQ appears here only.
 */
package kingpost.kernel.channels;
