package kingpost.kernel.channels;

import java.util.function.Consumer;
import kingpost.kernel.transport.Intake;
import kingpost.kernel.transport.Place;
import kingpost.kernel.wire.ConnectionFile;
import org.zeromq.SocketType;
import org.zeromq.ZMQ;
import org.zeromq.ZMQException;
import zmq.ZError;

/** Opens sockets where the connection file says. */
final class Binding {

    private static final int LINGER_MILLIS = 1_000;
    private static final int HANDSHAKE_MILLIS = 10_000;

    private final GuardedContext context;
    private final ConnectionFile file;

    Binding(GuardedContext context, ConnectionFile file) {
        this.context = context;
        this.file = file;
    }

    /**
     * A socket with these options that listens on the port, or on any free one when the port is 0.
     *
     * @throws BindingException when it cannot
     */
    ZMQ.Socket open(SocketType type, String channel, int port, Intake intake, Consumer<ZMQ.Socket> options) {
        ZMQ.Socket socket = context.socket(type, place(), intake);
        try {
            socket.setLinger(LINGER_MILLIS);
            socket.setHandshakeIvl(HANDSHAKE_MILLIS);
            socket.setIPv6(isIpc() || file.ip().contains(":"));
            options.accept(socket);
            socket.bind(address(port));
            return socket;
        } catch (ZMQException | IllegalArgumentException | UnsupportedOperationException e) {
            socket.close();
            throw new BindingException(reason(channel, port, e), e);
        }
    }

    /** The port on which the socket listens. */
    static int port(ZMQ.Socket socket) {
        String endpoint = socket.getLastEndpoint();
        return Integer.parseInt(endpoint.substring(endpoint.lastIndexOf(':') + 1));
    }

    private boolean isIpc() {
        return file.transport() == ConnectionFile.Transport.IPC;
    }

    private Place place() {
        return isIpc() ? Place.unix(file.ip()) : Place.TCP;
    }

    private String address(int port) {
        String ip = isIpc() ? ConnectionFile.LOOPBACK : file.ip();
        String host = ip.contains(":") && !ip.startsWith("[") ? "[" + ip + "]" : ip;
        return "tcp://" + host + ":" + (port == 0 ? "*" : port);
    }

    private String reason(String channel, int port, RuntimeException e) {
        if (isIpc()) {
            return "Socket " + file.ip() + "-" + port + " (" + channel + "): cannot be made, or is in use; give a short"
                    + " path in a folder that can be written, or use transport tcp.";
        }
        String where = "Port " + port + " (" + channel + ") on " + file.ip() + ": ";
        if (e instanceof ZMQException zmq && zmq.getErrorCode() == ZError.EADDRINUSE) {
            return where + "already in use; start the kernel again with other ports.";
        }
        return where + "cannot listen there; check that the address is one of this machine and the port is allowed.";
    }
}
