package kingpost.kernel.channels;

import java.lang.System.Logger;
import java.lang.System.Logger.Level;
import java.util.EnumMap;
import java.util.Map;
import java.util.concurrent.atomic.AtomicLong;
import kingpost.kernel.wire.Reading.Reason;

/**
 * Logs messages that were dropped and connections that were closed: one line each, with channel and reason, never
 * with content. After {@value #LINES} lines for one reason only every hundredth is logged, with the count, so that a flood of forged
 * messages does not fill the disk. Safe for several threads.
 */
final class Refusals {

    static final int LINES = 1_000;
    private static final int STEP = 100;

    private final Logger log;
    private final AtomicLong connections = new AtomicLong();
    private final Map<Reason, Long> counts = new EnumMap<>(Reason.class);

    Refusals(Logger log) {
        this.log = log;
    }

    void dropped(String channel, Reason reason) {
        long count = count(reason);
        if (count <= LINES) {
            log.log(Level.WARNING, "A message on " + channel + " was dropped: " + reason.words());
        } else if (count % STEP == 0) {
            log.log(Level.WARNING, count + " messages were dropped so far: " + reason.words());
        }
    }

    /** A connection was closed for what its peer did below the level of messages. */
    void cut(String channel, String why) {
        long count = connections.incrementAndGet();
        if (count <= LINES) {
            log.log(Level.WARNING, "A connection on " + channel + " was closed: " + why);
        } else if (count % STEP == 0) {
            log.log(Level.WARNING, count + " connections were closed so far; the last: " + why);
        }
    }

    private synchronized long count(Reason reason) {
        return counts.merge(reason, 1L, Long::sum);
    }
}
