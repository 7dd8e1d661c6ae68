package kingpost.kernel.evaluation;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.atomic.AtomicInteger;
import kingpost.kernel.display.MimeBundle;
import kingpost.kernel.pipe.Frame;

/**
 * Every cell that may still write, by the number the calc VM knows it by; output of a background thread reaches the
 * cell that started it, however late.
 */
final class CellOutputs {

    private final Map<Integer, CellOutput> byNumber = new ConcurrentHashMap<>();
    private final Map<Integer, List<Map<String, Object>>> payloads = new ConcurrentHashMap<>();
    private final Map<String, String> comms = new ConcurrentHashMap<>();
    private final AtomicInteger numbers = new AtomicInteger();
    private volatile int latest;

    /** A number for a new cell, which is the latest from now on. */
    int open(CellOutput output) {
        int number = numbers.incrementAndGet();
        byNumber.put(number, output);
        latest = number;
        return number;
    }

    /** The payloads that the cell handed over; asked once, at its end. */
    List<Map<String, Object>> takePayloads(int number) {
        var taken = payloads.remove(number);
        return taken == null ? List.of() : taken;
    }

    /** Open comms: id to target. */
    Map<String, String> comms() {
        return Map.copyOf(comms);
    }

    void commOpened(String id, String target) {
        comms.put(id, target);
    }

    void commClosed(String id) {
        comms.remove(id);
    }

    /** The calc VM is gone: nothing but the latest cell can get output. */
    void calcVmLost() {
        byNumber.keySet().removeIf(number -> number != latest);
        comms.clear();
    }

    CellOutput of(int number) {
        CellOutput output = byNumber.get(number);
        return output != null ? output : byNumber.getOrDefault(latest, NoOutput.INSTANCE);
    }

    /** Output that came past the calc VM's own streams: native code, or a child process. */
    void raw(String stream, String text) {
        of(latest).stream(stream, text);
    }

    /** Passes on a frame that carries output. */
    void take(Frame frame) {
        switch (frame.kind()) {
            case STREAM -> of(frame.number(0)).stream(frame.text(1), frame.text(2));
            case DISPLAY -> of(frame.number(0)).display(MimeBundle.of(frame.map(1)), frame.optionalText(2));
            case UPDATE -> of(frame.number(0)).update(MimeBundle.of(frame.map(1)), frame.text(2));
            case CLEAR -> of(frame.number(0)).clear(frame.flag(1));
            case PAYLOAD -> payloads.computeIfAbsent(frame.number(0), n -> new ArrayList<>()).add(frame.map(1));
            case COMM_OUT -> comm(frame);
            case FORGET -> forget(frame.number(0));
            default -> throw new IllegalArgumentException("Pipe: " + frame.kind() + " is no output.");
        }
    }

    private void comm(Frame frame) {
        Map<String, Object> content = frame.map(2);
        String id = String.valueOf(content.get("comm_id"));
        if (frame.text(1).equals("comm_open")) {
            commOpened(id, String.valueOf(content.get("target_name")));
        } else if (frame.text(1).equals("comm_close")) {
            commClosed(id);
        }
        of(frame.number(0)).comm(frame.text(1), content, frame.map(3), frame.buffers(4));
    }

    private void forget(int number) {
        if (number != latest) {
            byNumber.remove(number);
        }
    }
}
