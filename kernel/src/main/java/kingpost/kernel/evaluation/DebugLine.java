package kingpost.kernel.evaluation;

import com.sun.jdi.Bootstrap;
import com.sun.jdi.VirtualMachine;
import com.sun.jdi.connect.spi.Connection;
import java.io.Closeable;
import java.io.DataInputStream;
import java.io.EOFException;
import java.io.IOException;
import java.net.InetAddress;
import java.net.ServerSocket;
import java.net.Socket;
import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.List;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.TimeoutException;

/**
 * The debug connection of a calc VM. The VM calls a loopback port that is open only until then; the line then rests,
 * without any debugger behind it, until it is needed for the first time. A session that is never interrupted pays
 * nothing for it.
 *
 * <p><b>Source:</b> Java Debug Wire Protocol specification (JDK documentation): handshake, and packets that begin
 * with their length in four bytes, those four included; then an identifier, flags, command set and command.
 */
final class DebugLine implements Closeable {

    private static final byte[] HANDSHAKE = "JDWP-Handshake".getBytes(StandardCharsets.US_ASCII);
    private static final int ACCEPT_MILLIS = 30_000;
    private static final int LONGEST_PACKET = 16 << 20;

    private final ServerSocket server;
    private final CompletableFuture<Socket> called = new CompletableFuture<>();
    private VirtualMachine machine;

    private DebugLine(ServerSocket server) {
        this.server = server;
    }

    static DebugLine listen() throws IOException {
        var server = new ServerSocket(0, 1, InetAddress.getLoopbackAddress());
        server.setSoTimeout(ACCEPT_MILLIS);
        return new DebugLine(server);
    }

    /** The VM flags that make the calc VM call here. */
    List<String> flags() {
        return List.of("-agentlib:jdwp=transport=dt_socket,server=n,suspend=n,quiet=y,address=127.0.0.1:"
                + server.getLocalPort());
    }

    void acceptInBackground() {
        var thread = new Thread(() -> {
            try (server) {
                Socket caller = server.accept();
                shakeHands(caller);
                called.complete(caller);
            } catch (IOException failed) {
                called.completeExceptionally(failed);
            }
        }, "calc debug accept");
        thread.setDaemon(true);
        thread.start();
    }

    private static void shakeHands(Socket caller) throws IOException {
        caller.setTcpNoDelay(true);
        caller.setSoTimeout(ACCEPT_MILLIS);
        caller.getOutputStream().write(HANDSHAKE);
        byte[] answer = caller.getInputStream().readNBytes(HANDSHAKE.length);
        if (!Arrays.equals(answer, HANDSHAKE)) {
            caller.close();
            throw new IOException("Debug connection: the caller does not speak the protocol.");
        }
        caller.setSoTimeout(0);
    }

    /** The VM at the other end of the line. */
    synchronized VirtualMachine machine() throws IOException {
        if (machine == null) {
            machine = Bootstrap.virtualMachineManager().createVirtualMachine(new Packets(socket()));
        }
        return machine;
    }

    private Socket socket() throws IOException {
        try {
            return called.get(2, TimeUnit.SECONDS);
        } catch (ExecutionException | TimeoutException | InterruptedException absent) {
            throw new IOException("Debug connection: the calc VM has not called.", absent);
        }
    }

    @Override
    public void close() {
        called.thenAccept(DebugLine::closeQuietly);
        closeQuietly(server);
    }

    private static void closeQuietly(Closeable open) {
        try {
            open.close();
        } catch (IOException alreadyClosed) {
            // nothing left to close
        }
    }

    /**
     * Packets over a socket, as the debug interface wants them, without those that tell of events. Nobody here asks for
     * events. The interface itself does, for each class that is loaded: it would keep a record of every cell, and writes
     * to the log when the class of a cell is forgotten before its event is read.
     */
    private static final class Packets extends Connection {
        /** Where a packet's flags and its command set stand. */
        private static final int FLAGS = 8;
        private static final int COMMAND_SET = 9;
        private static final int REPLY = 0x80;
        private static final int EVENTS = 64;

        private final Socket socket;
        private final DataInputStream in;

        private Packets(Socket socket) throws IOException {
            this.socket = socket;
            in = new DataInputStream(socket.getInputStream());
        }

        @Override
        public byte[] readPacket() throws IOException {
            byte[] packet = nextPacket();
            while (packet.length > 0 && isEvent(packet)) {
                packet = nextPacket();
            }
            return packet;
        }

        private static boolean isEvent(byte[] packet) {
            return (packet[FLAGS] & REPLY) == 0 && packet[COMMAND_SET] == EVENTS;
        }

        /** The next packet of any kind; empty at the end. */
        private byte[] nextPacket() throws IOException {
            int length;
            try {
                length = in.readInt();
            } catch (EOFException closed) {
                return new byte[0];
            }
            if (length < 11 || length > LONGEST_PACKET) {
                throw new IOException("Debug connection: a packet of " + length + " bytes.");
            }
            byte[] packet = new byte[length];
            ByteBuffer.wrap(packet).putInt(length);
            in.readFully(packet, 4, length - 4);
            return packet;
        }

        @Override
        public void writePacket(byte[] packet) throws IOException {
            synchronized (socket) {
                socket.getOutputStream().write(packet);
            }
        }

        @Override
        public void close() throws IOException {
            socket.close();
        }

        @Override
        public boolean isOpen() {
            return !socket.isClosed();
        }
    }
}
