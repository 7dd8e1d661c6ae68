package kingpost.kernel.evaluation;

import com.sun.jdi.Bootstrap;
import com.sun.jdi.IncompatibleThreadStateException;
import com.sun.jdi.InvalidTypeException;
import com.sun.jdi.ObjectReference;
import com.sun.jdi.ReferenceType;
import com.sun.jdi.StackFrame;
import com.sun.jdi.ThreadReference;
import com.sun.jdi.VMDisconnectedException;
import com.sun.jdi.VirtualMachine;
import com.sun.jdi.connect.Connector;
import com.sun.jdi.connect.IllegalConnectorArgumentsException;
import com.sun.jdi.connect.ListeningConnector;
import java.io.IOException;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.TimeUnit;

/**
 * Stops user code in the calc VM through the JDK's debug interface: throws the agent's stop error into the threads
 * that run it. The calc VM calls back to a loopback port; it opens none itself.
 */
final class ThreadStopper implements AutoCloseable {

    private static final String AGENT = "kingpost.kernel.agent.";
    private static final String STOP_TYPE = AGENT + "CellStopped";
    private static final String STOP_FIELD = "FROM_OUTSIDE";
    private static final String CELL_THREAD = "cell";
    private static final String BORDER = "userCode";
    /** Prefix of the classes that JShell makes of cells. */
    private static final String CELL_CODE = "REPL.$JShell$";
    /** Parts of the agent that may be left only by themselves; they heed a STOP frame. */
    private static final Set<String> UNTOUCHABLE = Set.of(AGENT + "Outbox", AGENT + "Questions", AGENT + "CellThread",
            AGENT + "CellInput", AGENT + "Cells");

    private final ListeningConnector connector;
    private final Map<String, Connector.Argument> arguments;
    private final String address;
    private final CompletableFuture<VirtualMachine> machine = new CompletableFuture<>();

    private ThreadStopper(ListeningConnector connector, Map<String, Connector.Argument> arguments, String address) {
        this.connector = connector;
        this.arguments = arguments;
        this.address = address;
    }

    static ThreadStopper listen() throws IOException {
        ListeningConnector connector = Bootstrap.virtualMachineManager().listeningConnectors().stream()
                .filter(c -> c.transport().name().equals("dt_socket")).findFirst()
                .orElseThrow(() -> new IOException("The JDK's debug interface has no socket transport; use a full JDK."));
        var arguments = connector.defaultArguments();
        arguments.get("localAddress").setValue("127.0.0.1");
        arguments.get("port").setValue("0");
        arguments.get("timeout").setValue("30000");
        try {
            return new ThreadStopper(connector, arguments, connector.startListening(arguments));
        } catch (IllegalConnectorArgumentsException impossible) {
            throw new IOException(impossible);
        }
    }

    /** The VM flags that make the calc VM call here. */
    List<String> flags() {
        String port = address.substring(address.lastIndexOf(':') + 1);
        return List.of("-agentlib:jdwp=transport=dt_socket,server=n,suspend=n,quiet=y,address=127.0.0.1:" + port);
    }

    void acceptInBackground() {
        var thread = new Thread(() -> {
            try {
                machine.complete(connector.accept(arguments));
            } catch (IOException | IllegalConnectorArgumentsException | RuntimeException failed) {
                machine.completeExceptionally(failed);
            } finally {
                stopListening();
            }
        }, "calc debug accept");
        thread.setDaemon(true);
        thread.start();
    }

    private void stopListening() {
        try {
            connector.stopListening(arguments);
        } catch (IOException | IllegalConnectorArgumentsException | RuntimeException done) {
            // it no longer listens
        }
    }

    /**
     * Throws the stop error into the cell thread, and into pool threads that work for it, wherever they run user
     * code.
     *
     * @return whether a thread was stopped; false also when the VM is gone or the thread is inside the agent
     */
    boolean stop() {
        try {
            VirtualMachine vm = machine.get(2, TimeUnit.SECONDS);
            ObjectReference stop = stopError(vm);
            boolean stopped = false;
            for (ThreadReference thread : vm.allThreads()) {
                if (isCandidate(thread)) {
                    stopped |= stopSafely(thread, stop);
                }
            }
            return stopped;
        } catch (InterruptedException interrupted) {
            Thread.currentThread().interrupt();
            return false;
        } catch (Exception gone) {
            return false;
        }
    }

    private static boolean isCandidate(ThreadReference thread) {
        String name = thread.name();
        return name.equals(CELL_THREAD) || name.startsWith("ForkJoinPool.commonPool-");
    }

    private static ObjectReference stopError(VirtualMachine vm) {
        ReferenceType type = vm.classesByName(STOP_TYPE).get(0);
        return (ObjectReference) type.getValue(type.fieldByName(STOP_FIELD));
    }

    private static boolean stopSafely(ThreadReference thread, ObjectReference stop)
            throws InvalidTypeException, IncompatibleThreadStateException {
        thread.suspend();
        try {
            if (runsUserCode(thread)) {
                thread.stop(stop);
                return true;
            }
            return false;
        } finally {
            thread.resume();
        }
    }

    /** Whether the topmost frame that belongs to anybody belongs to the user. */
    private static boolean runsUserCode(ThreadReference thread) throws IncompatibleThreadStateException {
        boolean cellThread = thread.name().equals(CELL_THREAD);
        for (StackFrame frame : thread.frames()) {
            String type = frame.location().declaringType().name();
            if (type.startsWith(CELL_CODE)) {
                return true;
            }
            if (cellThread && type.equals(AGENT + "CellThread") && frame.location().method().name().equals(BORDER)) {
                return true;
            }
            if (UNTOUCHABLE.contains(type)) {
                return false;
            }
        }
        return false;
    }

    @Override
    public void close() {
        stopListening();
        VirtualMachine vm = machine.getNow(null);
        if (vm != null) {
            try {
                vm.dispose();
            } catch (VMDisconnectedException gone) {
                // nothing left to dispose
            }
        }
    }
}
