package kingpost.kernel.agent;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.IdentityHashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Supplier;

/** A failure and its causes as plain data for the pipe. */
final class Thrown {

    private static final int MOST_CAUSES = 10;
    private static final int MOST_FRAMES = 1024;
    private static final int LONGEST_MESSAGE = 20_000;

    private Thrown() {
    }

    /**
     * One map for each failure in the chain, the outermost first: {@code class}, {@code message} (or null),
     * {@code ours} (true when its class belongs to the calculation library), {@code frames} (lists of class,
     * method, file, line).
     */
    static List<Map<String, Object>> chain(Throwable failure) {
        var chain = new ArrayList<Map<String, Object>>();
        var seen = Collections.newSetFromMap(new IdentityHashMap<Throwable, Boolean>());
        for (Throwable each = failure; each != null && seen.add(each) && chain.size() < MOST_CAUSES;
                each = causeOf(each)) {
            chain.add(data(each));
        }
        return chain;
    }

    private static Map<String, Object> data(Throwable failure) {
        var data = new LinkedHashMap<String, Object>();
        data.put("class", failure.getClass().getName());
        data.put("message", messageOf(failure));
        data.put("ours", isOurs(failure.getClass()));
        data.put("frames", frames(read(failure::getStackTrace).orElse(new StackTraceElement[0])));
        return data;
    }

    static List<Object> frames(StackTraceElement[] trace) {
        return Arrays.stream(trace).filter(f -> !isOfTheMachinery(f.getClassName())).limit(MOST_FRAMES)
                .<Object>map(f -> Arrays.asList(withoutAddress(f.getClassName()), f.getMethodName(), f.getFileName(),
                        f.getLineNumber()))
                .toList();
    }

    /** Frames that the VM itself leaves out when it is not told to show the frames of hidden classes. */
    private static boolean isOfTheMachinery(String className) {
        return className.startsWith("java.lang.invoke.LambdaForm$") || className.contains("$$Lambda")
                || className.startsWith("java.lang.invoke.") && className.endsWith("$Holder");
    }

    /** A hidden class has its name and an address, {@code REPL.$JShell$5/0x00007f...}. */
    private static String withoutAddress(String className) {
        int address = className.indexOf('/');
        return address < 0 ? className : className.substring(0, address);
    }

    private static boolean isOurs(Class<?> type) {
        for (Class<?> each = type; each != null; each = each.getSuperclass()) {
            if (each.getName().startsWith("kingpost.")) {
                return true;
            }
        }
        return false;
    }

    private static String messageOf(Throwable failure) {
        try {
            String message = failure.getLocalizedMessage();
            return message == null || message.length() <= LONGEST_MESSAGE ? message
                    : message.substring(0, LONGEST_MESSAGE) + " ...";
        } catch (CellStopped | OutOfMemoryError notItsOwn) {
            throw notItsOwn;
        } catch (Throwable broken) {
            return "(its message could not be read: " + broken.getClass().getName() + ")";
        }
    }

    private static Throwable causeOf(Throwable failure) {
        return read(failure::getCause).orElse(null);
    }

    /** What a getter of a failure gives; it is user code and may fail itself, or give nothing. */
    private static <T> Optional<T> read(Supplier<T> getter) {
        try {
            return Optional.ofNullable(getter.get());
        } catch (CellStopped | OutOfMemoryError notItsOwn) {
            throw notItsOwn;
        } catch (Throwable broken) {
            return Optional.empty();
        }
    }
}
