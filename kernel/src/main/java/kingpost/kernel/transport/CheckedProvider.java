package kingpost.kernel.transport;

import java.io.IOException;
import java.net.ProtocolFamily;
import java.nio.channels.DatagramChannel;
import java.nio.channels.Pipe;
import java.nio.channels.ServerSocketChannel;
import java.nio.channels.SocketChannel;
import java.nio.channels.spi.AbstractSelector;
import java.nio.channels.spi.SelectorProvider;

/** Makes the listener of one socket; everything that is not checked comes from the JDK's own provider. */
public final class CheckedProvider extends SelectorProvider {

    static final SelectorProvider OF_SELECTORS = new CheckedProvider(Place.TCP, null);

    private final SelectorProvider real = SelectorProvider.provider();
    private final Place place;
    private final Intake intake;

    /** For a socket that listens at this place. */
    public CheckedProvider(Place place, Intake intake) {
        this.place = place;
        this.intake = intake;
    }

    @Override
    public ServerSocketChannel openServerSocketChannel() throws IOException {
        return new CheckedListener(this, place, intake);
    }

    @Override
    public AbstractSelector openSelector() throws IOException {
        return CheckedSelector.open();
    }

    @Override
    public SocketChannel openSocketChannel() throws IOException {
        return real.openSocketChannel();
    }

    @Override
    public DatagramChannel openDatagramChannel() throws IOException {
        return real.openDatagramChannel();
    }

    @Override
    public DatagramChannel openDatagramChannel(ProtocolFamily family) throws IOException {
        return real.openDatagramChannel(family);
    }

    @Override
    public Pipe openPipe() throws IOException {
        return real.openPipe();
    }
}
