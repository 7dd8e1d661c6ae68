package kingpost.kernel.client;

import java.io.DataInputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.net.InetAddress;
import java.net.InetSocketAddress;
import java.net.SocketAddress;
import java.net.StandardSocketOptions;
import java.net.UnixDomainSocketAddress;
import java.nio.ByteBuffer;
import java.nio.channels.Channels;
import java.nio.channels.SocketChannel;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.locks.LockSupport;

/**
 * A connection that speaks the transport protocol byte by byte, well or badly, and never reconnects.
 *
 * <p>Source: ZMTP 3.0 (RFC 23), "Greeting", "Framing", "The NULL security mechanism".
 */
public final class RawPeer implements AutoCloseable {

    private final SocketChannel channel;

    private RawPeer(SocketAddress address) throws IOException {
        this.channel = SocketChannel.open(address);
        if (address instanceof InetSocketAddress) {
            channel.setOption(StandardSocketOptions.TCP_NODELAY, true);
        }
    }

    public static RawPeer tcp(long port) throws IOException {
        return new RawPeer(new InetSocketAddress(InetAddress.getLoopbackAddress(), (int) port));
    }

    public static RawPeer unix(Path path) throws IOException {
        return new RawPeer(UnixDomainSocketAddress.of(path));
    }

    /** The same once somebody listens there, within ten seconds. */
    public static RawPeer unixOnceItListens(Path path) throws IOException {
        long end = System.nanoTime() + 10_000_000_000L;
        while (true) {
            try {
                return unix(path);
            } catch (IOException notYet) {
                if (System.nanoTime() > end) {
                    throw notYet;
                }
                LockSupport.parkNanos(10_000_000);
            }
        }
    }

    /** Shakes hands as a socket of this type and waits for the other's half. */
    public RawPeer shakeHands(String type, String identity) throws IOException {
        send(greeting());
        send(ready(type, identity));
        DataInputStream in = in();
        in.readFully(new byte[64]);
        frame(in);
        return this;
    }

    /** Sends bytes; the other side may have closed already, which is not what is tested then. */
    public void send(byte[] bytes) {
        try {
            OutputStream out = Channels.newOutputStream(channel);
            out.write(bytes);
        } catch (IOException closed) {
            if (closed.getMessage() == null) {
                throw new IllegalStateException(closed);
            }
        }
    }

    public void sendMessage(List<byte[]> frames) {
        for (int i = 0; i < frames.size(); i++) {
            byte[] body = frames.get(i);
            int more = i < frames.size() - 1 ? 1 : 0;
            send(ByteBuffer.allocate(9).put((byte) (more | 2)).putLong(body.length).array());
            send(body);
        }
    }

    /** The next message's frames. */
    public List<byte[]> receive() throws IOException {
        List<byte[]> frames = new ArrayList<>();
        DataInputStream in = in();
        boolean more;
        do {
            int flags = in.readUnsignedByte();
            int length = (flags & 2) != 0 ? (int) in.readLong() : in.readUnsignedByte();
            frames.add(in.readNBytes(length));
            more = (flags & 1) != 0;
        } while (more);
        return frames;
    }

    /** Whether the other side has ended the connection, or does so within five seconds; what it has sent is read over. */
    public boolean isCutOff() throws IOException {
        channel.configureBlocking(false);
        ByteBuffer bytes = ByteBuffer.allocate(4_096);
        long end = System.nanoTime() + 5_000_000_000L;
        while (System.nanoTime() < end) {
            try {
                if (channel.read(bytes.clear()) < 0) {
                    return true;
                }
            } catch (IOException reset) {
                return true;
            }
            LockSupport.parkNanos(1_000_000);
        }
        return false;
    }

    public static byte[] greeting() {
        byte[] greeting = new byte[64];
        greeting[0] = (byte) 0xff;
        greeting[9] = 0x7f;
        greeting[10] = 3;
        System.arraycopy("NULL".getBytes(StandardCharsets.US_ASCII), 0, greeting, 12, 4);
        return greeting;
    }

    public static byte[] ready(String type, String identity) {
        ByteBuffer body = ByteBuffer.allocate(200);
        body.put((byte) 5).put("READY".getBytes(StandardCharsets.US_ASCII));
        property(body, "Socket-Type", type);
        property(body, "Identity", identity);
        byte[] command = new byte[body.position() + 2];
        command[0] = 4;
        command[1] = (byte) body.position();
        body.flip().get(command, 2, command.length - 2);
        return command;
    }

    @Override
    public void close() throws IOException {
        channel.close();
    }

    private DataInputStream in() {
        return new DataInputStream(Channels.newInputStream(channel));
    }

    private static void frame(DataInputStream in) throws IOException {
        in.readUnsignedByte();
        in.readNBytes(in.readUnsignedByte());
    }

    private static void property(ByteBuffer body, String name, String value) {
        body.put((byte) name.length()).put(name.getBytes(StandardCharsets.US_ASCII));
        body.putInt(value.length()).put(value.getBytes(StandardCharsets.US_ASCII));
    }
}
