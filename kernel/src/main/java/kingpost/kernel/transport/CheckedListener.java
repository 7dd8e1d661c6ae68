package kingpost.kernel.transport;

import java.io.IOException;
import java.net.ServerSocket;
import java.net.SocketAddress;
import java.net.SocketOption;
import java.nio.channels.ServerSocketChannel;
import java.nio.channels.SocketChannel;
import java.nio.channels.spi.SelectorProvider;
import java.util.LinkedHashSet;
import java.util.Optional;
import java.util.Set;

/**
 * Accepts connections at one place, checked ones, and not more than {@value #MOST_CONNECTIONS} at a time: when there
 * are so many, the oldest that has not said a word of the protocol makes room; when all have, the newcomer is sent
 * away.
 */
final class CheckedListener extends ServerSocketChannel {

    private static final int MOST_CONNECTIONS = 150;

    private final Place place;
    private final ServerSocketChannel real;
    private final Intake intake;
    private final Set<CheckedConnection> open = new LinkedHashSet<>();

    CheckedListener(SelectorProvider provider, Place place, Intake intake) throws IOException {
        super(provider);
        this.place = place;
        this.real = place.open();
        this.intake = intake;
    }

    ServerSocketChannel real() {
        return real;
    }

    @Override
    public SocketChannel accept() throws IOException {
        SocketChannel peer = real.accept();
        if (peer == null) {
            return null;
        }
        if (!makeRoom()) {
            peer.close();
            intake.refused("more than " + MOST_CONNECTIONS + " connections");
            return null;
        }
        CheckedConnection connection = new CheckedConnection(provider(), peer, intake, this::forget);
        synchronized (open) {
            open.add(connection);
        }
        return connection;
    }

    private boolean makeRoom() {
        Optional<CheckedConnection> silent;
        synchronized (open) {
            if (open.size() < MOST_CONNECTIONS) {
                return true;
            }
            silent = open.stream().filter(connection -> !connection.isGreeted()).findFirst();
        }
        silent.ifPresent(connection -> {
            connection.hangUp();
            forget(connection);
            intake.refused("silent while others wait");
        });
        return silent.isPresent();
    }

    private void forget(CheckedConnection connection) {
        synchronized (open) {
            open.remove(connection);
        }
    }

    @Override
    public ServerSocketChannel bind(SocketAddress local, int backlog) throws IOException {
        place.bind(real, local, backlog);
        return this;
    }

    @Override
    public ServerSocket socket() {
        return place.socket(real);
    }

    @Override
    protected void implCloseSelectableChannel() throws IOException {
        real.close();
        place.closed();
    }

    @Override
    protected void implConfigureBlocking(boolean block) throws IOException {
        real.configureBlocking(block);
    }

    /** Options that this kind of place lacks do not matter. */
    @Override
    public <T> ServerSocketChannel setOption(SocketOption<T> name, T value) throws IOException {
        if (real.supportedOptions().contains(name)) {
            real.setOption(name, value);
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
    public SocketAddress getLocalAddress() throws IOException {
        return real.getLocalAddress();
    }
}
