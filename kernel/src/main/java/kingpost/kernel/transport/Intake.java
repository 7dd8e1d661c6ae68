package kingpost.kernel.transport;

import java.util.function.Consumer;

/**
 * What comes in for one socket: the bytes of complete messages that wait to be taken. While too many wait, nothing
 * more is read from its peers. Safe for several threads.
 */
public final class Intake {

    /** What a frame takes beside its bytes. */
    public static final int FRAME_OVERHEAD = 64;

    private final TransportRules rules;
    private final PartialBudget budget;
    private final long room;
    private final Consumer<String> refusals;
    private long waiting;
    private Runnable wake = () -> { };

    /**
     * @param room     bytes that may wait before reading pauses
     * @param refusals hears why a connection was cut, once for each
     */
    public Intake(TransportRules rules, PartialBudget budget, long room, Consumer<String> refusals) {
        this.rules = rules;
        this.budget = budget;
        this.room = room;
        this.refusals = refusals;
    }

    /** A message was taken off the socket. */
    public void taken(long bytes) {
        leave(Math.max(0, waiting() - bytes));
    }

    /** Nothing waits at the socket; what was counted and has been lost since, with its connection, is forgotten. */
    public void nothingWaits() {
        leave(0);
    }

    /** Bytes that wait to be taken. */
    public synchronized long waiting() {
        return waiting;
    }

    TransportRules rules() {
        return rules;
    }

    PartialBudget budget() {
        return budget;
    }

    synchronized void arrived(long bytes) {
        waiting += bytes;
    }

    synchronized boolean hasRoom() {
        return waiting <= room;
    }

    synchronized void whenRoom(Runnable wakeUp) {
        wake = wakeUp;
    }

    void refused(String why) {
        refusals.accept(why);
    }

    private void leave(long bytes) {
        Runnable waker;
        synchronized (this) {
            boolean wasFull = waiting > room;
            waiting = bytes;
            waker = wasFull && bytes <= room ? wake : () -> { };
        }
        waker.run();
    }
}
