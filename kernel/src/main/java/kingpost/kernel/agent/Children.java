package kingpost.kernel.agent;

import java.time.Instant;

/** Processes that cells started. */
final class Children {

    private Children() {
    }

    /** Ends those that were started since a moment; process starts are known to the second only. */
    static void destroySince(Instant moment) {
        Instant from = moment.minusSeconds(1);
        ProcessHandle.current().descendants()
                .filter(child -> child.info().startInstant().map(start -> !start.isBefore(from)).orElse(true))
                .forEach(ProcessHandle::destroyForcibly);
    }

    static void destroyAll() {
        ProcessHandle.current().descendants().forEach(ProcessHandle::destroyForcibly);
    }
}
