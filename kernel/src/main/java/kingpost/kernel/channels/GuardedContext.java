package kingpost.kernel.channels;

import java.io.IOException;
import java.lang.System.Logger;
import java.lang.System.Logger.Level;
import java.nio.channels.Selector;
import kingpost.kernel.transport.CheckedProvider;
import kingpost.kernel.transport.CheckedSelector;
import kingpost.kernel.transport.Intake;
import kingpost.kernel.transport.Place;
import org.zeromq.SocketType;
import org.zeromq.ZMQ;
import zmq.Ctx;
import zmq.SocketBase;
import zmq.ZError;

/**
 * JeroMQ with sockets that listen through checked connections: what a peer sends reaches JeroMQ only when it is sound
 * transport protocol within bounds. JeroMQ itself is not changed; it offers to choose the makers of channels
 * ({@link ZMQ.Socket#setSelectorChooser}), and of selectors by a method that may be overridden.
 */
final class GuardedContext extends Ctx {

    GuardedContext(Logger log, Breakdown breakdown) {
        set(zmq.ZMQ.ZMQ_IO_THREADS, 1);
        setNotificationExceptionHandler((thread, problem) ->
                log.log(Level.ERROR, "The transport stumbled and goes on", problem));
        setUncaughtExceptionHandler(breakdown);
    }

    /** A socket that listens at this place once it is bound; bind it to a TCP address in any case. */
    ZMQ.Socket socket(SocketType type, Place place, Intake intake) {
        ZMQ.Socket socket = new GuardedSocket(createSocket(type.type()));
        socket.setSelectorChooser((address, options) -> new CheckedProvider(place, intake));
        return socket;
    }

    /** Called by the constructor of the class above already. */
    @Override
    public Selector createSelector() {
        try {
            return CheckedSelector.open();
        } catch (IOException e) {
            throw new ZError.IOException(e);
        }
    }

    @Override
    public boolean closeSelector(Selector selector) {
        try {
            selector.close();
            return true;
        } catch (IOException e) {
            throw new ZError.IOException(e);
        }
    }

    /** A socket as the rest of JeroMQ's interface knows it. */
    private static final class GuardedSocket extends ZMQ.Socket {
        GuardedSocket(SocketBase base) {
            super(base);
        }
    }
}
