package kingpost.kernel.channels;

import java.lang.System.Logger;
import java.lang.System.Logger.Level;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Consumer;
import kingpost.kernel.message.Channel;
import kingpost.kernel.message.Inbox;
import kingpost.kernel.message.Message;
import kingpost.kernel.message.Outlet;
import kingpost.kernel.transport.Intake;
import kingpost.kernel.transport.PartialBudget;
import kingpost.kernel.transport.TransportRules;
import kingpost.kernel.wire.ConnectionFile;
import kingpost.kernel.wire.WireFormat;
import org.zeromq.SocketType;
import org.zeromq.ZMQ;

/**
 * The five bound sockets of a kernel and their threads. Bound as soon as it exists, so that clients may connect and
 * their messages wait; {@link #start} lets them in.
 */
public final class KernelSockets implements Outlet, AutoCloseable {

    private static final Logger LOG = System.getLogger("kingpost.channels");
    private static final long END_MILLIS = 1_000;
    /** A message this many times too large, or with so many times too many frames, ends its connection. */
    private static final long CUT_OFF_BYTES = 2;
    private static final long CUT_OFF_FRAMES = 10;
    /** Large messages that may be begun at once, by all clients, in sizes of the largest that is taken. */
    private static final long BEGUN_MESSAGES = 3;

    private final ZMQ.Context pollers = ZMQ.context(1);
    private final Breakdown breakdown = new Breakdown(LOG);
    private final GuardedContext context = new GuardedContext(LOG, breakdown);
    private final Refusals refusals = new Refusals(LOG);
    private final MessageLimits limits;
    private final WireFormat wire;
    private final List<Intake> intakes;
    private final List<ZMQ.Socket> sockets = new ArrayList<>();
    private final List<Thread> threads = new ArrayList<>();
    private final Heartbeat heartbeat;
    private final ConnectionFile.Ports ports;
    private RouterLoop shell;
    private RouterLoop control;
    private RouterLoop stdin;
    private PublisherLoop iopub;

    /**
     * @throws BindingException when one of the ports cannot be had; the others are free again then
     */
    public KernelSockets(ConnectionFile file, MessageLimits limits) {
        this.limits = limits;
        this.wire = new WireFormat(file.signer());
        ConnectionFile.Ports wanted = file.ports();
        PartialBudget budget = new PartialBudget(BEGUN_MESSAGES * limits.bytes());
        this.intakes = List.of(intake("shell", requestRules(), budget), intake("control", requestRules(), budget),
                intake("stdin", requestRules(), budget), intake("iopub", PublisherLoop.rules(), budget));
        try {
            Binding binding = new Binding(context, file);
            sockets.add(binding.open(SocketType.ROUTER, "shell", wanted.shell(), intakes.get(0),
                    KernelSockets::prepareRouter));
            sockets.add(binding.open(SocketType.ROUTER, "control", wanted.control(), intakes.get(1),
                    KernelSockets::prepareRouter));
            sockets.add(binding.open(SocketType.ROUTER, "stdin", wanted.stdin(), intakes.get(2),
                    KernelSockets::prepareRouter));
            sockets.add(binding.open(SocketType.XPUB, "iopub", wanted.iopub(), intakes.get(3),
                    PublisherLoop::prepare));
            this.heartbeat = new Heartbeat(file, refusals, LOG, breakdown);
        } catch (BindingException e) {
            sockets.forEach(ZMQ.Socket::close);
            endContexts();
            throw e;
        }
        this.ports = new ConnectionFile.Ports(Binding.port(sockets.get(0)), Binding.port(sockets.get(3)),
                Binding.port(sockets.get(2)), Binding.port(sockets.get(1)), heartbeat.port());
    }

    /** The ports on which the sockets listen. */
    public ConnectionFile.Ports ports() {
        return ports;
    }

    /** Hears in one line, at most once, that a thread has ended without which no client can be served. */
    public void whenBroken(Consumer<String> told) {
        breakdown.then(told);
    }

    /** Lets messages in; call once. */
    public void start(Inbox inbox) {
        shell = router(Channel.SHELL, 0, inbox);
        control = router(Channel.CONTROL, 1, inbox);
        stdin = router(Channel.STDIN, 2, inbox);
        iopub = new PublisherLoop(pollers, sockets.get(3), intakes.get(3), inbox, LOG);
        startThread("heartbeat", heartbeat);
        startThread("iopub", iopub);
        startThread("stdin", stdin);
        startThread("control", control);
        startThread("shell", shell);
    }

    @Override
    public void send(Channel channel, Message message) {
        List<byte[]> frames = wire.write(message);
        switch (channel) {
            case SHELL -> shell.send(frames);
            case CONTROL -> control.send(frames);
            case STDIN -> stdin.send(frames);
        }
    }

    @Override
    public void publish(Message message) {
        iopub.publish(wire.write(message));
    }

    /** Sends what is queued, for at most a second or two, and closes the sockets. */
    @Override
    public void close() {
        if (threads.isEmpty()) {
            sockets.forEach(ZMQ.Socket::close);
            heartbeat.closeUnstarted();
        } else {
            List.of(shell, control, stdin).forEach(RouterLoop::stop);
            iopub.stop();
            if (breakdown.hasHappened()) {
                return; // what is left of the transport would wait for the thread that is gone
            }
            heartbeat.close();
            threads.forEach(KernelSockets::join);
        }
        endContexts();
    }

    private void endContexts() {
        context.terminate();
        pollers.term();
    }

    private TransportRules requestRules() {
        return TransportRules.ofMessages(CUT_OFF_BYTES * limits.bytes(), CUT_OFF_FRAMES * limits.frames());
    }

    private Intake intake(String channel, TransportRules rules, PartialBudget budget) {
        return new Intake(rules, budget, limits.bytes(), why -> refusals.cut(channel, why));
    }

    private RouterLoop router(Channel channel, int index, Inbox inbox) {
        return new RouterLoop(channel, pollers, sockets.get(index), wire, inbox, limits, intakes.get(index), refusals,
                LOG);
    }

    private static void prepareRouter(ZMQ.Socket socket) {
        socket.setRouterHandover(true);
    }

    private void startThread(String name, Runnable loop) {
        Thread thread = new Thread(loop, "kingpost-" + name);
        thread.setDaemon(true);
        thread.setUncaughtExceptionHandler(breakdown);
        thread.start();
        threads.add(thread);
    }

    private static void join(Thread thread) {
        try {
            thread.join(END_MILLIS);
            if (thread.isAlive()) {
                LOG.log(Level.WARNING, thread.getName() + " has not ended in " + END_MILLIS + " ms");
            }
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        }
    }
}
