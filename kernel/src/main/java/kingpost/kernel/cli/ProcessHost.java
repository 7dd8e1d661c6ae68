package kingpost.kernel.cli;

import java.lang.System.Logger;
import java.lang.System.Logger.Level;
import java.lang.reflect.Proxy;
import java.util.List;
import java.util.Map;

/**
 * The operating system's side of a kernel that has a process of its own: SIGINT interrupts the cell and never ends
 * the process; when the process that started it is gone, the kernel ends; an end that takes too long is forced, and
 * no process that a cell has started outlives it.
 */
final class ProcessHost implements Host {

    private static final Logger LOG = System.getLogger("kingpost.process");
    private static final long END_MILLIS = 1_700;

    /** Made at once: the sooner, the more of its ancestors can be found. */
    private final ParentWatch parent;
    private volatile Runnable interrupt = () -> { };
    private volatile List<ProcessHandle> children = List.of();

    /** Watches the process that started this one, and keeps SIGINT from ending this one, from now on. */
    ProcessHost(Map<String, String> environment) {
        parent = ParentWatch.of(environment);
        onInterruptSignal(() -> interrupt.run());
    }

    @Override
    public void begins(Runnable interruptCell, Runnable end) {
        interrupt = interruptCell;
        parent.onEnd(() -> {
            LOG.log(Level.WARNING, "The process that started this kernel is gone; the kernel ends");
            end.run();
        });
        Runtime.getRuntime().addShutdownHook(new Thread(this::endChildren, "kingpost-exit"));
    }

    @Override
    public void ends(int status) {
        children = ProcessHandle.current().descendants().toList();
        Thread lastResort = new Thread(() -> force(status), "kingpost-last-resort");
        lastResort.setDaemon(true);
        lastResort.start();
    }

    @Override
    public void ended() {
        endChildren();
    }

    private void endChildren() {
        children.forEach(ProcessHandle::destroyForcibly);
        ProcessHandle.current().descendants().forEach(ProcessHandle::destroyForcibly);
    }

    private void force(int status) {
        try {
            Thread.sleep(END_MILLIS);
        } catch (InterruptedException e) {
            return;
        }
        endChildren();
        Runtime.getRuntime().halt(status);
    }

    /** Through reflection: the compiler warns of this class's use, and there is no other way to see a signal. */
    private static void onInterruptSignal(Runnable interrupt) {
        try {
            Class<?> signal = Class.forName("sun.misc.Signal");
            Class<?> handler = Class.forName("sun.misc.SignalHandler");
            Object handling = Proxy.newProxyInstance(ProcessHost.class.getClassLoader(), new Class<?>[] {handler},
                    (proxy, method, arguments) -> switch (method.getName()) {
                        case "handle" -> {
                            interrupt.run();
                            yield null;
                        }
                        case "equals" -> proxy == arguments[0];
                        case "hashCode" -> System.identityHashCode(proxy);
                        default -> "interrupts the cell";
                    });
            signal.getMethod("handle", signal, handler)
                    .invoke(null, signal.getConstructor(String.class).newInstance("INT"), handling);
        } catch (ReflectiveOperationException e) {
            LOG.log(Level.WARNING, "SIGINT cannot be caught here; use interrupt messages", e);
        }
    }
}
