package kingpost.kernel.session;

import java.lang.System.Logger;
import java.lang.System.Logger.Level;
import java.time.Clock;
import java.util.EnumSet;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.BlockingDeque;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.LinkedBlockingDeque;
import java.util.concurrent.ScheduledThreadPoolExecutor;
import java.util.concurrent.TimeUnit;
import java.util.function.Supplier;
import kingpost.kernel.evaluation.Evaluator;
import kingpost.kernel.message.Announcement;
import kingpost.kernel.message.Channel;
import kingpost.kernel.message.Inbox;
import kingpost.kernel.message.Message;
import kingpost.kernel.message.Outlet;
import kingpost.kernel.message.Replies;
import kingpost.kernel.message.Reply;
import kingpost.kernel.message.Request;

/**
 * A running kernel, without its sockets: takes requests, serves them in three lines (shell in order; control beside
 * it; questions about code beside a running cell), and ends when a client says so.
 *
 * <p>The order of what goes out for one request, whatever happens: busy, for a cell its input and its outputs, the
 * reply, idle.
 */
public final class KernelSession implements Inbox, AutoCloseable {

    private static final Logger LOG = System.getLogger("kingpost.session");
    private static final Set<String> BESIDE_CELLS = Set.of("complete_request", "inspect_request",
            "is_complete_request");
    private static final Set<String> URGENT = Set.of("shutdown_request", "interrupt_request");
    private static final long FLUSH_MILLIS = 50;
    private static final long PURSUE_MILLIS = 20;

    private final Outlet outlet;
    private final Envelopes envelopes = new Envelopes(Clock.systemUTC());
    private final Activity activity = new Activity();
    private final ShellQueue shell = new ShellQueue();
    private final BlockingDeque<Exchange> control = new LinkedBlockingDeque<>();
    private final BlockingDeque<Exchange> questionsBeside = new LinkedBlockingDeque<>();
    private final InputDesk input = new InputDesk();
    private final EvaluatorSlot evaluator;
    private final CellStop stop;
    private final Questions questions;
    private final HistoryStore history;
    private final Service service;
    private final ScheduledThreadPoolExecutor timer = new ScheduledThreadPoolExecutor(1, KernelSession::timerThread);
    private final CompletableFuture<Boolean> end = new CompletableFuture<>();

    /**
     * @param maker   makes the evaluator, on another thread; the session closes it
     * @param history closed with the session
     */
    public KernelSession(KernelDescription description, Supplier<? extends Evaluator> maker, HistoryStore history,
                         Outlet outlet, OutputLimits limits) {
        this.outlet = outlet;
        this.history = history;
        this.evaluator = new EvaluatorSlot(maker);
        this.stop = new CellStop(shell, evaluator, input);
        this.questions = new Questions(evaluator, limits);
        timer.setRemoveOnCancelPolicy(true);
        CellDesk cells = new CellDesk(evaluator, input, stop, shell, history, limits, this::planFlush);
        this.service = new Service(table(description, cells), envelopes);
    }

    /** Says that the kernel is starting, and begins to serve. */
    public void start() {
        outlet.publish(envelopes.published(Optional.empty(), Announcement.Status.STARTING));
        line("kingpost-cells", this::serveShell);
        line("kingpost-orders", this::serveControl);
        line("kingpost-questions", this::serveQuestion);
    }

    @Override
    public void received(Channel channel, Message message) {
        if (channel == Channel.STDIN) {
            input.received(message);
            return;
        }
        boolean ordered = channel == Channel.SHELL && !URGENT.contains(message.type());
        boolean beside = ordered && BESIDE_CELLS.contains(message.type())
                && (activity.isRunningCell() || shell.holdsCells());
        Exchange exchange = new Exchange(channel, message, ordered ? shell.nextArrival() : 0, envelopes, outlet);
        if (!ordered) {
            control.add(exchange);
        } else if (beside) {
            questionsBeside.add(exchange);
        } else {
            shell.add(exchange);
        }
    }

    @Override
    public void subscribed(String topic) {
        outlet.publish(envelopes.published(topic, new Announcement.Welcome(topic)));
    }

    @Override
    public boolean hasRoom() {
        return shell.hasRoom();
    }

    /** Stops the running cell, or the cells that wait for their turn; harmless when there are none. */
    public void interrupt() {
        stop.order();
        pursue();
    }

    private void pursue() {
        if (stop.pursue() && !timer.isShutdown()) {
            timer.schedule(this::pursue, PURSUE_MILLIS, TimeUnit.MILLISECONDS);
        }
    }

    /** Waits until a client has shut the kernel down or {@link #end} was called; true for a restart. */
    public boolean awaitEnd() {
        return end.join();
    }

    /** Ends the session without a client's request. */
    public void end() {
        end.complete(false);
    }

    /** Ends the evaluator and keeps the history; what the sockets still hold is not waited for. */
    @Override
    public void close() {
        input.cancel();
        evaluator.close();
        questions.close();
        timer.shutdownNow();
        history.close();
    }

    private Map<String, Handler> table(KernelDescription description, CellDesk cells) {
        Map<String, Handler> table = new HashMap<>();
        Set<Channel> shellOnly = EnumSet.of(Channel.SHELL);
        Set<Channel> controlOnly = EnumSet.of(Channel.CONTROL);
        Set<Channel> both = EnumSet.of(Channel.SHELL, Channel.CONTROL);
        CommDesk comms = new CommDesk(evaluator, cells);
        answering(table, "execute", shellOnly, cells::execute);
        answering(table, "complete", both, questions::complete);
        answering(table, "inspect", both, questions::inspect);
        answering(table, "is_complete", both, questions::isComplete);
        answering(table, "history", both, new HistoryDesk(history)::answer);
        answering(table, "comm_info", both, comms::info);
        answering(table, "kernel_info", both, exchange -> Optional.of(description.info()));
        answering(table, "connect", both, exchange -> Optional.of(Replies.connect(description.ports())));
        answering(table, "interrupt", both, this::interrupt);
        answering(table, "shutdown", both, this::shutdown);
        answering(table, "usage", both, new KernelUsage()::answer);
        answering(table, "debug", controlOnly, KernelSession::refuseDebugger);
        for (String type : new String[] {"comm_open", "comm_msg", "comm_close"}) {
            table.put(type, new Handler(shellOnly, Optional.empty(), comms::message));
        }
        return table;
    }

    private static void answering(Map<String, Handler> table, String name, Set<Channel> channels,
                                  Handler.Answer answer) {
        table.put(name + "_request", new Handler(channels, Optional.of(name + "_reply"), answer));
    }

    private Optional<Reply> interrupt(Exchange exchange) {
        interrupt();
        return Optional.of(Replies.interrupt());
    }

    private Optional<Reply> shutdown(Exchange exchange) {
        boolean restart = Request.Shutdown.of(exchange.fields()).restart();
        exchange.publish(new Announcement.ShuttingDown(restart));
        return Optional.of(Replies.shutdown(restart));
    }

    private static Optional<Reply> refuseDebugger(Exchange exchange) {
        return Optional.of(Replies.debugRefused(Request.Debug.of(exchange.fields()),
                "this kernel has no debugger"));
    }

    private void serveShell() throws InterruptedException {
        Exchange exchange = shell.take();
        if (exchange.type().equals("execute_request")) {
            stop.begins(exchange);
        }
        activity.beginInOrder(exchange);
        try {
            if (!shell.isOvertaken(exchange)) {
                service.serve(exchange);
            }
        } finally {
            stop.ends();
            activity.endInOrder(exchange);
        }
    }

    private void serveControl() throws InterruptedException {
        Exchange exchange = control.take();
        activity.beginBeside(exchange);
        try {
            service.serve(exchange);
        } finally {
            activity.endBeside(exchange);
        }
        if (exchange.type().equals("shutdown_request")) {
            end.complete(Boolean.TRUE.equals(exchange.request().content().get("restart")));
        }
    }

    private void serveQuestion() throws InterruptedException {
        Exchange exchange = questionsBeside.take();
        activity.beginBeside(exchange);
        try {
            if (isSuperseded(exchange)) {
                exchange.reply(Questions.nothingToComplete(exchange), Map.of());
            } else {
                service.serve(exchange);
            }
        } finally {
            activity.endBeside(exchange);
        }
    }

    /** Whether the same client has asked for another completion since. */
    private boolean isSuperseded(Exchange exchange) {
        String client = exchange.request().header().session();
        return exchange.type().equals("complete_request") && questionsBeside.stream()
                .anyMatch(later -> later.type().equals("complete_request")
                        && later.request().header().session().equals(client));
    }

    private void planFlush(Runnable flush) {
        if (!timer.isShutdown()) {
            timer.schedule(flush, FLUSH_MILLIS, TimeUnit.MILLISECONDS);
        }
    }

    /** One step of a line of service. */
    @FunctionalInterface
    private interface Step {
        void serveNext() throws InterruptedException;
    }

    private void line(String name, Step step) {
        Thread thread = new Thread(() -> repeat(step), name);
        thread.setDaemon(true);
        thread.start();
    }

    private void repeat(Step step) {
        while (!end.isDone()) {
            try {
                Thread.interrupted(); // what was meant for the step before must not stop the next
                step.serveNext();
            } catch (InterruptedException e) {
                LOG.log(Level.DEBUG, "A stray interrupt was ignored");
            } catch (RuntimeException | Error e) {
                Trouble.log(LOG, "A request could not be served", e);
            }
        }
    }

    private static Thread timerThread(Runnable task) {
        Thread thread = new Thread(task, "kingpost-output");
        thread.setDaemon(true);
        return thread;
    }
}
