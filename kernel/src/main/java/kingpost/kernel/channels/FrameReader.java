package kingpost.kernel.channels;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.zeromq.ZMQ;

/** Takes one whole message off a socket, and lets go of its frames as soon as there are too many. */
final class FrameReader {

    private final ZMQ.Socket socket;
    private final MessageLimits limits;

    FrameReader(ZMQ.Socket socket, MessageLimits limits) {
        this.socket = socket;
        this.limits = limits;
    }

    /** What waited on the socket. */
    sealed interface Taken {
        record Nothing() implements Taken { }

        record TooLarge() implements Taken { }

        record Frames(List<byte[]> frames) implements Taken { }
    }

    Taken take() {
        byte[] first = socket.recv(ZMQ.DONTWAIT);
        if (first == null) {
            return new Taken.Nothing();
        }
        List<byte[]> frames = new ArrayList<>();
        long bytes = 0;
        boolean tooLarge = false;
        for (Optional<byte[]> frame = Optional.of(first); frame.isPresent(); frame = next()) {
            bytes += frame.get().length;
            tooLarge = tooLarge || bytes > limits.bytes() || frames.size() >= limits.frames();
            if (tooLarge) {
                frames.clear();
            } else {
                frames.add(frame.get());
            }
        }
        return tooLarge ? new Taken.TooLarge() : new Taken.Frames(frames);
    }

    private Optional<byte[]> next() {
        return socket.hasReceiveMore() ? Optional.ofNullable(socket.recv(0)) : Optional.empty();
    }
}
