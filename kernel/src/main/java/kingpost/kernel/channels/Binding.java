package kingpost.kernel.channels;

import java.util.function.Consumer;
import org.zeromq.SocketType;
import org.zeromq.ZMQ;
import org.zeromq.ZMQException;
import zmq.ZError;

/** Opens sockets on one address. */
final class Binding {

    private static final int LINGER_MILLIS = 1_000;

    private final ZMQ.Context context;
    private final String ip;
    private final MessageLimits limits;

    Binding(ZMQ.Context context, String ip, MessageLimits limits) {
        this.context = context;
        this.ip = ip;
        this.limits = limits;
    }

    /**
     * A socket with these options that listens on the port, or on any free one when the port is 0.
     *
     * @throws BindingException when it cannot
     */
    ZMQ.Socket open(SocketType type, String channel, int port, Consumer<ZMQ.Socket> options) {
        ZMQ.Socket socket = context.socket(type);
        try {
            socket.setLinger(LINGER_MILLIS);
            socket.setMaxMsgSize(2 * limits.bytes());
            socket.setIPv6(ip.contains(":"));
            options.accept(socket);
            socket.bind(address(port));
            return socket;
        } catch (ZMQException | IllegalArgumentException e) {
            socket.close();
            throw new BindingException(reason(channel, port, e), e);
        }
    }

    /** The port on which the socket listens. */
    static int port(ZMQ.Socket socket) {
        String endpoint = socket.getLastEndpoint();
        return Integer.parseInt(endpoint.substring(endpoint.lastIndexOf(':') + 1));
    }

    private String address(int port) {
        String host = ip.contains(":") && !ip.startsWith("[") ? "[" + ip + "]" : ip;
        return "tcp://" + host + ":" + (port == 0 ? "*" : port);
    }

    private String reason(String channel, int port, RuntimeException e) {
        String where = "Port " + port + " (" + channel + ") on " + ip + ": ";
        if (e instanceof ZMQException zmq && zmq.getErrorCode() == ZError.EADDRINUSE) {
            return where + "already in use; start the kernel again with other ports.";
        }
        return where + "cannot listen there; check that the address is one of this machine and the port is allowed.";
    }
}
