/**
 * What stands between the network and the library that speaks ZeroMQ: listening places (TCP and Unix sockets), and
 * connections whose bytes are checked, frame by frame, before that library sees them. Only the JDK is used here.
 * What a frame means is none of its business. Read {@link kingpost.kernel.transport.FrameScanner} first.
 */
package kingpost.kernel.transport;
