package kingpost.kernel.agent;

import java.io.IOException;
import java.io.InputStream;
import java.lang.reflect.Method;
import java.util.List;
import kingpost.kernel.pipe.ExitCode;
import kingpost.kernel.pipe.Frame;
import kingpost.kernel.pipe.Kind;
import kingpost.kernel.pipe.Pipe;
import kingpost.notebook.CellDisplay;
import kingpost.notebook.Comm;
import kingpost.notebook.NamesInQuotes;

/** Serves the kernel's frames: the reading thread never runs user code. */
final class Agent {

    private final Pipe pipe;
    private final Outbox outbox = new Outbox();
    private final Cells cells = new Cells();
    private final CellLoader loader = new CellLoader(Agent.class.getClassLoader());
    private final Variables variables = new Variables(loader);
    private final CellThread thread = new CellThread(cells, outbox, loader);
    private final Questions questions = new Questions(thread, cells, outbox);

    Agent(Pipe pipe) {
        this.pipe = pipe;
    }

    /** Serves until the kernel is gone, and then ends this VM at once. */
    void serve() {
        LastResort.prepare();
        ExitLimit.prepare();
        watch(System.in);
        start("outbox", () -> outbox.sendTo(pipe));
        System.setOut(new CellPrintStream("stdout", cells, outbox, thread));
        System.setErr(new CellPrintStream("stderr", cells, outbox, thread));
        System.setIn(new CellInput(questions));
        CellDisplay.connect(new CellSink(cells, outbox, thread, questions));
        Thread.setDefaultUncaughtExceptionHandler(new LostThreads());
        new ThreadWatch(pipe).start();
        thread.start();
        start("reader", () -> {
            while (true) {
                take(pipe.receive());
            }
        });
    }

    private void watch(InputStream kernel) {
        start("kernel watch", () -> {
            while (kernel.read() >= 0) {
                // the kernel says nothing here; only the end counts
            }
        });
    }

    private interface Work {
        void run() throws IOException;
    }

    /** A thread without which this VM is of no use: when it ends, for whatever reason, the VM ends. */
    private static void start(String name, Work work) {
        var runner = new Thread(() -> {
            try {
                work.run();
            } catch (OutOfMemoryError full) {
                LastResort.halt(ExitCode.MEMORY_FULL);
            } catch (Throwable broken) {
                // nobody is left to tell
            } finally {
                end();
            }
        }, name);
        runner.setDaemon(!"reader".equals(name));
        runner.start();
    }

    private static void end() {
        try {
            Children.destroyAll();
        } finally {
            LastResort.halt(ExitCode.BROKEN);
        }
    }

    private void take(Frame frame) {
        switch (frame.kind()) {
            case LOAD -> load(frame);
            case INVOKE -> thread.submit(frame.number(0), frame.number(1), () -> invoke(frame));
            case ADD_PATH -> {
                frame.texts(1).forEach(loader::add);
                answer(frame, null);
            }
            case NAMES -> apart(() -> answer(frame, names(frame)));
            case RELEASE -> apart(() -> answer(frame, variables.release(frame.texts(1), frame.texts(2))));
            case COMM_IN -> thread.submit(frame.number(0), frame.number(1), () -> comm(frame));
            case STOP -> thread.stopRequested(frame.number(0));
            case STOP_HARD -> thread.stopHard(frame.number(0));
            case INPUT_ANSWER -> questions.answered(frame);
            case PING -> answer(frame, null);
            default -> throw new IllegalStateException("Agent: does not take " + frame.kind() + " frames.");
        }
    }

    /** For what may take long or run user code although a cell is running. */
    private static void apart(Runnable work) {
        var runner = new Thread(work, "question");
        runner.setDaemon(true);
        runner.start();
    }

    private List<String> names(Frame frame) {
        return variables.value(frame.text(1), frame.text(2)).filter(NamesInQuotes.class::isInstance)
                .map(value -> ((NamesInQuotes) value).names(frame.text(3))).orElse(List.of());
    }

    private static Object comm(Frame frame) {
        Comm.registry().received(frame.text(2), frame.map(3), frame.map(4), frame.buffers(5));
        return null;
    }

    private void load(Frame frame) {
        List<String> names = frame.texts(1);
        List<byte[]> bytes = frame.buffers(2);
        for (int i = 0; i < names.size(); i++) {
            loader.keep(names.get(i), bytes.get(i));
        }
        if (frame.number(0) != 0) {
            answer(frame, null);
        }
    }

    private Object invoke(Frame frame) throws Exception {
        String name = frame.text(2);
        Class<?> type = frame.flag(5) ? loader.loadForOnce(name) : loader.loadClass(name);
        Method method = type.getDeclaredMethod(frame.text(3));
        CellDisplay.statementBegins();
        method.setAccessible(true);
        Object value = method.invoke(null);
        return frame.flag(4) ? forms(value) : null;
    }

    private static Object forms(Object value) throws Unshown {
        try {
            return CellDisplay.isShown(value) ? null : ValueForms.of(value).orElse(null);
        } catch (Throwable failure) {
            throw new Unshown(failure);
        }
    }

    private void answer(Frame request, Object value) {
        outbox.frame(Frame.of(Kind.ANSWER, request.number(0), value));
    }
}
