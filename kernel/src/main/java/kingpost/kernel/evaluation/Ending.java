package kingpost.kernel.evaluation;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import kingpost.kernel.pipe.Frame;

/** How a call in the calc VM ended. */
sealed interface Ending {

    /** It returned; {@code forms} are the value's forms, if they were wanted. */
    record Returned(Optional<Map<String, Object>> forms) implements Ending { }

    /** It threw; the failure first, then its causes. */
    record Threw(List<Thrown> chain) implements Ending {
        public Threw {
            chain = List.copyOf(chain);
        }
    }

    /** It returned, but its value could not be shown; the failure first, then its causes. */
    record Unshown(List<Thrown> chain) implements Ending {
        public Unshown {
            chain = List.copyOf(chain);
        }
    }

    /** It called a method that refers to something not defined yet; {@code id} is JShell's number for the method. */
    record Unresolved(int id, StackTraceElement[] frames) implements Ending { }

    /** It was stopped. */
    record Stopped() implements Ending { }

    /**
     * One failure.
     *
     * @param type    its class name
     * @param message its message, or empty
     * @param ours    whether the calculation library made it, so that its message is all the reader needs
     * @param frames  its stack trace
     */
    record Thrown(String type, Optional<String> message, boolean ours, StackTraceElement[] frames) { }

    /** Reads an ENDED frame. */
    @SuppressWarnings("unchecked")
    static Ending of(Frame frame) {
        return switch (frame.text(1)) {
            case "returned" -> new Returned(Optional.ofNullable((Map<String, Object>) frame.fields().get(2)));
            case "threw" -> new Threw(chain(frame));
            case "unshown" -> new Unshown(chain(frame));
            case "unresolved" -> new Unresolved(((Number) frame.list(2).get(0)).intValue(),
                    frames((List<Object>) frame.list(2).get(1)));
            default -> new Stopped();
        };
    }

    @SuppressWarnings("unchecked")
    private static List<Thrown> chain(Frame frame) {
        return frame.list(2).stream().map(each -> thrown((Map<String, Object>) each)).toList();
    }

    @SuppressWarnings("unchecked")
    private static Thrown thrown(Map<String, Object> data) {
        return new Thrown((String) data.get("class"), Optional.ofNullable((String) data.get("message")),
                Boolean.TRUE.equals(data.get("ours")), frames((List<Object>) data.get("frames")));
    }

    private static StackTraceElement[] frames(List<Object> data) {
        var frames = new ArrayList<StackTraceElement>();
        for (Object each : data) {
            var parts = (List<?>) each;
            frames.add(new StackTraceElement((String) parts.get(0), (String) parts.get(1), (String) parts.get(2),
                    ((Number) parts.get(3)).intValue()));
        }
        return frames.toArray(StackTraceElement[]::new);
    }
}
