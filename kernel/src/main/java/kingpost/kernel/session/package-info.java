/**
 * The kernel's behaviour: which request is answered how, busy and idle around it, the order of cells, history,
 * comms, input. Knows neither sockets nor JSON: messages come in through {@link kingpost.kernel.message.Inbox} and
 * go out through {@link kingpost.kernel.message.Outlet}. Read {@link kingpost.kernel.session.KernelSession} first;
 * {@link kingpost.kernel.session.DirectSession} runs cells without any client.
 */
package kingpost.kernel.session;
