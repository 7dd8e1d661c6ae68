package kingpost.kernel.evaluation;

import com.sun.jdi.ClassNotLoadedException;
import com.sun.jdi.ClassType;
import com.sun.jdi.IncompatibleThreadStateException;
import com.sun.jdi.InvalidTypeException;
import com.sun.jdi.ObjectCollectedException;
import com.sun.jdi.ObjectReference;
import com.sun.jdi.ReferenceType;
import com.sun.jdi.StackFrame;
import com.sun.jdi.ThreadReference;
import com.sun.jdi.VirtualMachine;
import java.io.IOException;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * Stops user code in the calc VM through the JDK's debug interface: throws the agent's stop error into the threads
 * that run it. The calc VM calls back to a loopback port; it opens none itself.
 */
final class ThreadStopper implements AutoCloseable {

    private static final String AGENT = "kingpost.kernel.agent.";
    private static final String STOP_TYPE = AGENT + "CellStopped";
    private static final String STOP_FIELD = "FROM_OUTSIDE";
    /** Not told by its name, which a cell may change. */
    private static final String CELL_THREAD = AGENT + "CellThread";
    private static final String BORDER = "userCode";
    /** Prefix of the classes that JShell makes of cells. */
    private static final String CELL_CODE = "REPL.$JShell$";
    /** Parts of the agent that may be left only by themselves; they heed a STOP frame. */
    private static final Set<String> UNTOUCHABLE = Set.of(AGENT + "Outbox", AGENT + "Questions", AGENT + "CellThread",
            AGENT + "CellInput", AGENT + "Cells");

    private final DebugLine line;

    private ThreadStopper(DebugLine line) {
        this.line = line;
    }

    static ThreadStopper listen() throws IOException {
        return new ThreadStopper(DebugLine.listen());
    }

    /** The VM flags that make the calc VM call here. */
    List<String> flags() {
        return line.flags();
    }

    void acceptInBackground() {
        line.acceptInBackground();
    }

    /**
     * Throws the stop error into the cell thread, and into pool threads that work for it, wherever they run user
     * code. Nothing happens when the VM is gone or the threads are inside the agent.
     */
    void stop() {
        visit(thread -> { });
    }

    /**
     * Stops as {@link #stop} does, and deals with what a thread cannot leave by itself: another of the user's
     * threads that owns the monitor it waits for is stopped as well; the stream or socket in whose native code it
     * waits is left to the agent, which closes it.
     */
    void stopHard() {
        visit(thread -> {
            ObjectReference monitor = thread.currentContendedMonitor();
            ThreadReference owner = monitor == null ? null : monitor.owningThread();
            if (owner != null) {
                stopSafely(owner, stopError(owner.virtualMachine()));
            }
            waitsIn(thread).ifPresent(ThreadStopper::handOver);
        });
    }

    /** Something to do with a thread that runs user code and is suspended meanwhile. */
    private interface Visit {
        void to(ThreadReference thread) throws IncompatibleThreadStateException, InvalidTypeException,
                ClassNotLoadedException;
    }

    private void visit(Visit more) {
        try {
            VirtualMachine vm = line.machine();
            ObjectReference stop = stopError(vm);
            for (ThreadReference thread : vm.allThreads()) {
                stopIfCandidate(thread, stop, more);
            }
        } catch (IOException | InvalidTypeException | ClassNotLoadedException | RuntimeException gone) {
            // the VM is gone or the thread has ended; the interrupter goes on until the cell has ended, too
        }
    }

    /** A thread that has ended since it was listed does not keep the others from being stopped. */
    private static void stopIfCandidate(ThreadReference thread, ObjectReference stop, Visit more)
            throws InvalidTypeException, ClassNotLoadedException {
        try {
            if (isCandidate(thread)) {
                stopSafely(thread, stop, more);
            }
        } catch (ObjectCollectedException | IllegalThreadStateException | IncompatibleThreadStateException ended) {
            // nothing is left to stop
        }
    }

    private static boolean isCandidate(ThreadReference thread) {
        return isCellThread(thread) || thread.name().startsWith("ForkJoinPool.commonPool-");
    }

    private static boolean isCellThread(ThreadReference thread) {
        return thread.referenceType().name().equals(CELL_THREAD);
    }

    private static ObjectReference stopError(VirtualMachine vm) {
        ReferenceType type = vm.classesByName(STOP_TYPE).get(0);
        return (ObjectReference) type.getValue(type.fieldByName(STOP_FIELD));
    }

    private static void stopSafely(ThreadReference thread, ObjectReference stop)
            throws InvalidTypeException, IncompatibleThreadStateException, ClassNotLoadedException {
        stopSafely(thread, stop, same -> { });
    }

    private static void stopSafely(ThreadReference thread, ObjectReference stop, Visit more)
            throws InvalidTypeException, IncompatibleThreadStateException, ClassNotLoadedException {
        thread.suspend();
        try {
            if (runsUserCode(thread)) {
                more.to(thread);
                thread.stop(stop);
            }
        } finally {
            thread.resume();
        }
    }

    /** The innermost object above the user's code that can be closed, if the thread is in native code. */
    private static Optional<ObjectReference> waitsIn(ThreadReference thread) throws IncompatibleThreadStateException {
        List<StackFrame> frames = thread.frames();
        if (frames.isEmpty() || !frames.get(0).location().method().isNative()) {
            return Optional.empty();
        }
        return frames.stream().takeWhile(frame -> !isCellCode(frame)).filter(frame -> !frame.location().method().isNative())
                .map(StackFrame::thisObject).filter(ThreadStopper::isCloseable).findFirst();
    }

    private static boolean isCellCode(StackFrame frame) {
        return frame.location().declaringType().name().startsWith(CELL_CODE);
    }

    private static boolean isCloseable(ObjectReference object) {
        return object != null && object.referenceType() instanceof ClassType type
                && type.allInterfaces().stream().anyMatch(i -> i.name().equals("java.lang.AutoCloseable"));
    }

    private static void handOver(ObjectReference blocker) {
        try {
            var type = (ClassType) blocker.virtualMachine().classesByName(AGENT + "Blocker").get(0);
            type.setValue(type.fieldByName("found"), blocker);
        } catch (InvalidTypeException | ClassNotLoadedException impossible) {
            throw new IllegalStateException(impossible);
        }
    }

    /** Whether the topmost frame that belongs to anybody belongs to the user. */
    private static boolean runsUserCode(ThreadReference thread) throws IncompatibleThreadStateException {
        boolean cellThread = isCellThread(thread);
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
        line.close();
    }
}
