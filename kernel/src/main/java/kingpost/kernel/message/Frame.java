package kingpost.kernel.message;

import java.util.Arrays;
import java.util.List;
import java.util.Objects;

/** Bytes that cannot change: a routing identity or a binary buffer of a message. Two frames with equal bytes are equal. */
public final class Frame {

    private final byte[] bytes;

    private Frame(byte[] bytes) {
        this.bytes = bytes;
    }

    /** A frame with a copy of these bytes. */
    public static Frame of(byte[] bytes) {
        return new Frame(Objects.requireNonNull(bytes, "bytes").clone());
    }

    public static List<Frame> listOf(List<byte[]> frames) {
        return frames.stream().map(Frame::of).toList();
    }

    /** A copy of the bytes. */
    public byte[] bytes() {
        return bytes.clone();
    }

    public int size() {
        return bytes.length;
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof Frame frame && Arrays.equals(bytes, frame.bytes);
    }

    @Override
    public int hashCode() {
        return Arrays.hashCode(bytes);
    }

    /** The size only: what a frame holds is not for logs. */
    @Override
    public String toString() {
        return "Frame[" + bytes.length + " bytes]";
    }
}
