package kingpost.kernel.transport;

import java.io.IOException;
import java.net.InetAddress;
import java.net.InetSocketAddress;
import java.net.Socket;
import java.net.SocketAddress;
import java.net.SocketOption;
import java.nio.ByteBuffer;
import java.nio.channels.SocketChannel;
import java.nio.channels.spi.SelectorProvider;
import java.util.Optional;
import java.util.Set;
import java.util.function.Consumer;

/**
 * A peer's connection whose bytes are scanned as they are read. At the first byte that is wrong the stream ends for
 * the reader, and nothing of what was read with it is handed on. A Unix socket looks like one of the loopback address.
 */
final class CheckedConnection extends SocketChannel {

    private final SocketChannel real;
    private final FrameScanner scanner;
    private final Intake intake;
    private final Consumer<CheckedConnection> onClose;
    private volatile boolean refused;

    CheckedConnection(SelectorProvider provider, SocketChannel real, Intake intake,
                      Consumer<CheckedConnection> onClose) {
        super(provider);
        this.real = real;
        this.intake = intake;
        this.scanner = new FrameScanner(intake);
        this.onClose = onClose;
    }

    SocketChannel real() {
        return real;
    }

    Intake intake() {
        return intake;
    }

    /** Whether the peer has shown that it speaks the protocol. */
    boolean isGreeted() {
        return scanner.isReady();
    }

    /** Ends the stream for the reader, who then closes the connection. */
    void hangUp() {
        refused = true;
        try {
            real.shutdownInput();
        } catch (IOException e) {
            // the peer is gone already, which the next read tells
        }
    }

    @Override
    public int read(ByteBuffer bytes) throws IOException {
        if (refused) {
            return -1;
        }
        int start = bytes.position();
        int count = real.read(bytes);
        if (count > 0) {
            Optional<String> fault = scanner.scan(bytes.duplicate().flip().position(start));
            if (fault.isPresent()) {
                bytes.position(start);
                refused = true;
                intake.refused(fault.get());
                return -1;
            }
        }
        return count;
    }

    /** One buffer at a time is all that the reader needs. */
    @Override
    public long read(ByteBuffer[] buffers, int offset, int length) throws IOException {
        throw new UnsupportedOperationException("scattering read");
    }

    @Override
    public int write(ByteBuffer bytes) throws IOException {
        return real.write(bytes);
    }

    @Override
    public long write(ByteBuffer[] buffers, int offset, int length) throws IOException {
        return real.write(buffers, offset, length);
    }

    @Override
    protected void implCloseSelectableChannel() throws IOException {
        scanner.end();
        onClose.accept(this);
        real.close();
    }

    @Override
    protected void implConfigureBlocking(boolean block) throws IOException {
        real.configureBlocking(block);
    }

    /** Options that this kind of connection lacks, or that come when the peer is gone already, do not matter. */
    @Override
    public <T> SocketChannel setOption(SocketOption<T> name, T value) {
        try {
            if (real.supportedOptions().contains(name)) {
                real.setOption(name, value);
            }
        } catch (IOException e) {
            // the next read tells that the peer is gone
        }
        return this;
    }

    @Override
    public <T> T getOption(SocketOption<T> name) throws IOException {
        return real.getOption(name);
    }

    @Override
    public Set<SocketOption<?>> supportedOptions() {
        return real.supportedOptions();
    }

    @Override
    public SocketAddress getRemoteAddress() throws IOException {
        return orLoopback(real.getRemoteAddress());
    }

    @Override
    public SocketAddress getLocalAddress() throws IOException {
        return orLoopback(real.getLocalAddress());
    }

    private static SocketAddress orLoopback(SocketAddress address) {
        return address instanceof InetSocketAddress ? address
                : new InetSocketAddress(InetAddress.getLoopbackAddress(), 0);
    }

    @Override
    public SocketChannel bind(SocketAddress local) {
        throw new UnsupportedOperationException("an accepted connection");
    }

    @Override
    public SocketChannel shutdownInput() throws IOException {
        real.shutdownInput();
        return this;
    }

    @Override
    public SocketChannel shutdownOutput() throws IOException {
        real.shutdownOutput();
        return this;
    }

    @Override
    public Socket socket() {
        return real.socket();
    }

    @Override
    public boolean isConnected() {
        return real.isConnected();
    }

    @Override
    public boolean isConnectionPending() {
        return false;
    }

    @Override
    public boolean connect(SocketAddress remote) {
        throw new UnsupportedOperationException("an accepted connection");
    }

    @Override
    public boolean finishConnect() {
        return true;
    }
}
