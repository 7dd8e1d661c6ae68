package kingpost.kernel.wire;

import java.nio.ByteBuffer;
import java.util.Arrays;
import java.util.Iterator;
import java.util.LinkedHashSet;
import java.util.Set;

/**
 * The signatures of the last messages that were accepted, to refuse a message that somebody sends again. Only good
 * signatures are remembered, so that forged ones cannot push them out. Safe for several threads: a message must not
 * be repeated on another channel either.
 */
final class SeenSignatures {

    static final int DEFAULT_CAPACITY = 65_536;

    private final int capacity;
    private final Set<Digest> seen = new LinkedHashSet<>();

    /** The first 128 bits of a signature, which is random to anyone without the key. */
    private record Digest(long high, long low) { }

    SeenSignatures(int capacity) {
        this.capacity = capacity;
    }

    /** Remembers the signature; false when it was there already. */
    synchronized boolean add(byte[] hexSignature) {
        if (!seen.add(digest(hexSignature))) {
            return false;
        }
        if (seen.size() > capacity) {
            Iterator<Digest> oldest = seen.iterator();
            oldest.next();
            oldest.remove();
        }
        return true;
    }

    synchronized int size() {
        return seen.size();
    }

    private static Digest digest(byte[] hexSignature) {
        ByteBuffer bytes = ByteBuffer.wrap(Arrays.copyOf(hexSignature, 32));
        return new Digest(pack(bytes), pack(bytes));
    }

    private static long pack(ByteBuffer hex) {
        long packed = 0;
        for (int i = 0; i < 16; i++) {
            packed = packed << 4 | Math.max(0, Character.digit(hex.get(), 16));
        }
        return packed;
    }
}
