package kingpost.kernel.session;

import java.util.Optional;
import kingpost.kernel.message.Output;

/**
 * Decides how much of a cell's text is sent: the head as it comes, then one notice, and at the cell's end how much
 * was left out and the last lines. Not safe for several threads.
 */
final class StreamCap {

    private static final int TAIL_CHARS = 2_000;

    private final int limit;
    private int admitted;
    private long dropped;
    private final StringBuilder tail = new StringBuilder();

    StreamCap(int limit) {
        this.limit = limit;
    }

    /** The part of the text that may be sent. */
    String admit(String text) {
        int room = limit - admitted;
        if (text.length() <= room) {
            admitted += text.length();
            return text;
        }
        int cut = dropped > 0 ? 0 : wholeCharacters(text, room);
        admitted = limit;
        drop(text, cut);
        return text.substring(0, cut);
    }

    /** Whether nothing more is let through. */
    boolean closed() {
        return dropped > 0;
    }

    /** The notice for the moment at which the cap closes. */
    Output.Stream notice() {
        return new Output.Stream("stderr", "\n[Output of this cell is longer than " + limit
                + " characters; the rest is left out but for its end. The limit is the system property "
                + OutputLimits.STREAM_PROPERTY + ".]\n");
    }

    /** What to send when the cell ends: the count of what was left out and its last characters; once. */
    Optional<Output.Stream> summary() {
        if (tail.length() == 0) {
            return Optional.empty();
        }
        long between = dropped - tail.length();
        String head = between > 0 ? "[" + between + " characters left out; the output ends:]\n" : "";
        Output.Stream last = new Output.Stream("stderr", head + tail);
        tail.setLength(0);
        return Optional.of(last);
    }

    private void drop(String text, int from) {
        dropped += text.length() - from;
        int start = Math.max(from, text.length() - TAIL_CHARS);
        tail.append(text, start, text.length());
        if (tail.length() > 2 * TAIL_CHARS) {
            tail.delete(0, tail.length() - TAIL_CHARS);
        }
        if (tail.length() > 0 && Character.isLowSurrogate(tail.charAt(0))) {
            tail.deleteCharAt(0);
        }
    }

    private static int wholeCharacters(String text, int length) {
        boolean splits = length > 0 && length < text.length() && Character.isHighSurrogate(text.charAt(length - 1))
                && Character.isLowSurrogate(text.charAt(length));
        return splits ? length - 1 : length;
    }
}
