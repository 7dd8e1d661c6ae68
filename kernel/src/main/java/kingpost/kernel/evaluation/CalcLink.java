package kingpost.kernel.evaluation;

import java.io.IOException;
import java.util.Map;
import java.util.concurrent.BlockingQueue;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.LinkedBlockingQueue;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.TimeoutException;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.function.Consumer;
import kingpost.kernel.pipe.Frame;
import kingpost.kernel.pipe.Kind;

/** Requests to one calc VM and what comes back: answers, the end of calls, questions, output. */
final class CalcLink {

    private static final AtomicInteger IDS = new AtomicInteger();

    private final CalcProcess process;
    private final CellOutputs outputs;
    private final Map<Integer, CompletableFuture<Object>> answers = new ConcurrentHashMap<>();
    private final BlockingQueue<Frame> callEvents = new LinkedBlockingQueue<>();
    private final LifeSigns signs = new LifeSigns();
    private volatile int runningCall;
    private volatile String lost;

    private CalcLink(CalcProcess process, CellOutputs outputs) {
        this.process = process;
        this.outputs = outputs;
    }

    /** Starts a calc VM. */
    static CalcLink start(CalcOptions options, CellOutputs outputs) throws IOException {
        var link = new CalcLink(CalcProcess.start(options, outputs::raw), outputs);
        var reader = new Thread(link::read, "calc reader");
        reader.setDaemon(true);
        reader.start();
        return link;
    }

    private void read() {
        try {
            while (true) {
                Frame frame = process.receive();
                signs.begin();
                take(frame);
                signs.end();
            }
        } catch (IOException | RuntimeException ended) {
            lost = process.howItEnded();
            process.destroy();
            callEvents.add(Frame.of(Kind.DYING, lost));
            answers.values().forEach(answer -> answer.completeExceptionally(new CalcLost(lost)));
        }
    }

    private void take(Frame frame) {
        switch (frame.kind()) {
            case ANSWER -> {
                var answer = answers.remove(frame.number(0));
                if (answer != null) {
                    answer.complete(frame.fields().get(1));
                }
            }
            case ENDED, INPUT, CLASS_PATH -> callEvents.add(frame);
            case DYING -> process.lastWords(frame.text(0));
            default -> outputs.take(frame);
        }
    }

    /** Sends a request and waits for its answer. */
    Object request(Kind kind, long millis, Object... fields) throws CalcLost, TimeoutException {
        checkAlive();
        int id = IDS.incrementAndGet();
        var answer = new CompletableFuture<Object>();
        answers.put(id, answer);
        process.send(withId(kind, id, fields));
        checkAlive();
        try {
            return answer.get(millis, TimeUnit.MILLISECONDS);
        } catch (ExecutionException failed) {
            throw new CalcLost(failed.getCause().getMessage());
        } catch (InterruptedException interrupted) {
            Thread.currentThread().interrupt();
            throw new TimeoutException("interrupted");
        } finally {
            answers.remove(id);
        }
    }

    /**
     * Has the cell thread do something, and waits for its end without limit.
     *
     * @param events takes what the call asks meanwhile, on this thread
     */
    Ending call(Kind kind, Consumer<Frame> events, Object... fields) throws CalcLost {
        checkAlive();
        int id = IDS.incrementAndGet();
        runningCall = id;
        signs.reset();
        try {
            process.send(withId(kind, id, fields));
            while (true) {
                Frame event = takeUninterrupted();
                if (event.kind() == Kind.DYING) {
                    throw new CalcLost(event.text(0));
                } else if (event.kind() != Kind.ENDED) {
                    events.accept(event);
                } else if (event.number(0) == id) {
                    return Ending.of(event);
                }
            }
        } finally {
            runningCall = 0;
        }
    }

    /** The next event; the calc VM is replaced when it no longer answers. */
    private Frame takeUninterrupted() {
        boolean interrupted = false;
        while (true) {
            try {
                Frame event = callEvents.poll(LifeSigns.LOOK_MILLIS, TimeUnit.MILLISECONDS);
                if (event == null) {
                    askForLife();
                    continue;
                }
                if (interrupted) {
                    Thread.currentThread().interrupt();
                }
                return event;
            } catch (InterruptedException later) {
                interrupted = true;
            }
        }
    }

    private void askForLife() {
        if (signs.areMissing()) {
            destroy("it no longer answered, as when its memory is full");
        } else {
            tell(Kind.PING);
        }
    }

    void send(Frame frame) throws CalcLost {
        process.send(frame);
    }

    private static Frame withId(Kind kind, int id, Object... fields) {
        var all = new Object[fields.length + 1];
        all[0] = id;
        System.arraycopy(fields, 0, all, 1, fields.length);
        return Frame.of(kind, all);
    }

    private void checkAlive() throws CalcLost {
        if (lost != null) {
            throw new CalcLost(lost);
        }
    }

    /** Whether the cell thread has something to do. */
    boolean isCalling() {
        return runningCall != 0;
    }

    boolean isLost() {
        return lost != null;
    }

    /** How the calc VM ended. */
    String lossReason() {
        return lost == null ? "it does not answer" : lost;
    }

    /** First try to stop the running call: the agent's own waits, then the debug interface. */
    void stop() {
        if (runningCall != 0) {
            tell(Kind.STOP);
            process.stopper().stop();
        }
    }

    /** Second try: also what holds the thread up from outside, and its interrupt. */
    void stopHard() {
        if (runningCall != 0) {
            process.stopper().stopHard();
            tell(Kind.STOP_HARD);
        }
    }

    private void tell(Kind kind) {
        int call = runningCall;
        if (call != 0) {
            try {
                process.send(Frame.of(kind, call));
            } catch (CalcLost gone) {
                // then it has stopped
            }
        }
    }

    /** Ends the calc VM for this reason. */
    void destroy(String reason) {
        process.lastWords(reason);
        process.destroy();
    }
}
