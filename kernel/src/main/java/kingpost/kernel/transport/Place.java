package kingpost.kernel.transport;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.net.InetSocketAddress;
import java.net.ServerSocket;
import java.net.SocketAddress;
import java.net.StandardProtocolFamily;
import java.net.UnixDomainSocketAddress;
import java.nio.channels.ServerSocketChannel;
import java.nio.channels.SocketChannel;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.nio.file.attribute.BasicFileAttributes;
import java.nio.file.attribute.PosixFilePermissions;

/**
 * Where a socket listens. The library asks for a TCP address in any case; a Unix place takes that address's port for
 * the number at the end of its file's name.
 */
public interface Place {

    /** A TCP port: the one that the library asks for. */
    Place TCP = new Place() {
        @Override
        public ServerSocketChannel open() throws IOException {
            return ServerSocketChannel.open();
        }

        @Override
        public void bind(ServerSocketChannel channel, SocketAddress address, int backlog) throws IOException {
            channel.bind(address, backlog);
        }

        @Override
        public ServerSocket socket(ServerSocketChannel channel) {
            return channel.socket();
        }

        @Override
        public void closed() {
            // the port is free again
        }
    };

    ServerSocketChannel open() throws IOException;

    /**
     * Begins to listen.
     *
     * @throws IOException when it cannot, or somebody listens there already
     */
    void bind(ServerSocketChannel channel, SocketAddress address, int backlog) throws IOException;

    /** What the library binds, and asks for its port. */
    ServerSocket socket(ServerSocketChannel channel);

    /** Leaves nothing behind. */
    void closed();

    /** Unix sockets, each a file {@code prefix-number} for its owner only. */
    static Place unix(String prefix) {
        return new UnixPlace(prefix);
    }

    /** One Unix socket of a prefix. */
    final class UnixPlace implements Place {

        private static final int MOST_NUMBERS = 65_535;

        private final String prefix;
        private int number;
        private boolean listens;

        private UnixPlace(String prefix) {
            this.prefix = prefix;
        }

        @Override
        public ServerSocketChannel open() throws IOException {
            return ServerSocketChannel.open(StandardProtocolFamily.UNIX);
        }

        @Override
        public void bind(ServerSocketChannel channel, SocketAddress address, int backlog) throws IOException {
            int wanted = ((InetSocketAddress) address).getPort();
            number = wanted == 0 ? free() : wanted;
            removeIfLeftOver();
            channel.bind(UnixDomainSocketAddress.of(file()), backlog);
            listens = true;
            Files.setPosixFilePermissions(file(), PosixFilePermissions.fromString("rw-------"));
        }

        @Override
        public ServerSocket socket(ServerSocketChannel channel) {
            try {
                return new UnixServerSocket(this, channel);
            } catch (IOException e) {
                throw new UncheckedIOException(e);
            }
        }

        @Override
        public void closed() {
            if (listens) {
                file().toFile().delete();
            }
        }

        private Path file() {
            return Path.of(prefix + "-" + number);
        }

        private int free() {
            int candidate = 1;
            while (candidate < MOST_NUMBERS && exists(Path.of(prefix + "-" + candidate))) {
                candidate++;
            }
            return candidate;
        }

        /** A socket's file outlives a process that was killed; one that nobody answers at is removed. */
        private void removeIfLeftOver() throws IOException {
            boolean socket = exists(file()) && Files.readAttributes(file(), BasicFileAttributes.class,
                    LinkOption.NOFOLLOW_LINKS).isOther();
            if (socket && !isAnswered()) {
                Files.delete(file());
            }
        }

        private boolean isAnswered() {
            try (SocketChannel probe = SocketChannel.open(StandardProtocolFamily.UNIX)) {
                return probe.connect(UnixDomainSocketAddress.of(file()));
            } catch (IOException e) {
                return false;
            }
        }

        private static boolean exists(Path path) {
            return Files.exists(path, LinkOption.NOFOLLOW_LINKS);
        }
    }

    /** Looks like a TCP server socket to a library that binds one and asks for its port. */
    final class UnixServerSocket extends ServerSocket {

        private final UnixPlace place;
        private final ServerSocketChannel channel;

        private UnixServerSocket(UnixPlace place, ServerSocketChannel channel) throws IOException {
            this.place = place;
            this.channel = channel;
        }

        @Override
        public void bind(SocketAddress address, int backlog) throws IOException {
            place.bind(channel, address, backlog);
        }

        @Override
        public int getLocalPort() {
            return place.number;
        }
    }
}
