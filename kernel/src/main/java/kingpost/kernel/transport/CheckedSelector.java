package kingpost.kernel.transport;

import java.io.IOException;
import java.nio.channels.ClosedSelectorException;
import java.nio.channels.SelectableChannel;
import java.nio.channels.SelectionKey;
import java.nio.channels.Selector;
import java.nio.channels.spi.AbstractSelectableChannel;
import java.nio.channels.spi.AbstractSelectionKey;
import java.nio.channels.spi.AbstractSelector;
import java.nio.channels.spi.SelectorProvider;
import java.util.Collections;
import java.util.HashSet;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;

/**
 * Waits for checked connections and listeners as well as for ordinary channels, by the JDK's own selector behind it,
 * which knows the real channels only. A connection whose socket has no room is not waited for.
 */
public final class CheckedSelector extends AbstractSelector {

    private final Selector real;
    private final Set<Key> keys = ConcurrentHashMap.newKeySet();
    private final Set<SelectionKey> selected = new HashSet<>();

    private CheckedSelector(SelectorProvider provider, Selector real) {
        super(provider);
        this.real = real;
    }

    public static CheckedSelector open() throws IOException {
        return new CheckedSelector(CheckedProvider.OF_SELECTORS, Selector.open());
    }

    /** One wait, of some length. */
    @FunctionalInterface
    private interface Wait {
        int select() throws IOException;
    }

    @Override
    protected SelectionKey register(AbstractSelectableChannel channel, int operations, Object attachment) {
        Key key = new Key(channel);
        key.attach(attachment);
        try {
            key.behind = real(channel).register(real, 0, key);
        } catch (IOException e) {
            throw new IllegalStateException("the channel was closed while it was registered", e);
        }
        keys.add(key);
        key.interestOps(operations);
        if (channel instanceof CheckedConnection connection) {
            connection.intake().whenRoom(real::wakeup);
        }
        return key;
    }

    private static SelectableChannel real(AbstractSelectableChannel channel) {
        if (channel instanceof CheckedConnection connection) {
            return connection.real();
        }
        return channel instanceof CheckedListener listener ? listener.real() : channel;
    }

    @Override
    public int selectNow() throws IOException {
        return await(real::selectNow);
    }

    @Override
    public int select(long timeout) throws IOException {
        return await(() -> real.select(timeout));
    }

    @Override
    public int select() throws IOException {
        return await(() -> real.select());
    }

    private synchronized int await(Wait wait) throws IOException {
        if (!isOpen()) {
            throw new ClosedSelectorException();
        }
        dropCancelled();
        keys.forEach(Key::apply);
        int count = wait.select();
        real.selectedKeys().forEach(key -> selected.add((Key) key.attachment()));
        real.selectedKeys().clear();
        dropCancelled();
        return count;
    }

    private void dropCancelled() {
        Set<SelectionKey> cancelled = cancelledKeys();
        synchronized (cancelled) {
            cancelled.forEach(key -> drop((Key) key));
            cancelled.clear();
        }
    }

    private void drop(Key key) {
        key.behind.cancel();
        keys.remove(key);
        selected.remove(key);
        deregister(key);
    }

    @Override
    public Selector wakeup() {
        real.wakeup();
        return this;
    }

    @Override
    public Set<SelectionKey> keys() {
        return Collections.unmodifiableSet(keys);
    }

    @Override
    public Set<SelectionKey> selectedKeys() {
        return selected;
    }

    @Override
    protected void implCloseSelector() throws IOException {
        real.wakeup();
        synchronized (this) {
            for (Key key : keys) {
                key.cancel();
                deregister(key);
            }
            keys.clear();
            real.close();
        }
    }

    /** A channel's registration, and the one of the real channel behind it. */
    private final class Key extends AbstractSelectionKey {

        private final SelectableChannel channel;
        private SelectionKey behind;
        private volatile int wanted;

        private Key(SelectableChannel channel) {
            this.channel = channel;
        }

        /** Lets the real selector wait for what is wanted now. */
        private void apply() {
            boolean paused = channel instanceof CheckedConnection connection && !connection.intake().hasRoom();
            int now = paused ? wanted & ~OP_READ : wanted;
            if (behind.isValid() && behind.interestOps() != now) {
                behind.interestOps(now);
            }
        }

        @Override
        public SelectableChannel channel() {
            return channel;
        }

        @Override
        public Selector selector() {
            return CheckedSelector.this;
        }

        @Override
        public int interestOps() {
            return wanted;
        }

        @Override
        public SelectionKey interestOps(int operations) {
            wanted = operations;
            apply();
            return this;
        }

        @Override
        public int readyOps() {
            return behind.readyOps();
        }
    }
}
