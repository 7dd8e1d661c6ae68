package kingpost.kernel.channels;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import kingpost.kernel.transport.Intake;
import org.zeromq.ZMQ;

/** Takes one whole message off a socket, and lets go of its frames as soon as there are too many. */
final class FrameReader {

    private final ZMQ.Socket socket;
    private final MessageLimits limits;
    private final Intake intake;

    FrameReader(ZMQ.Socket socket, MessageLimits limits, Intake intake) {
        this.socket = socket;
        this.limits = limits;
        this.intake = intake;
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
            intake.nothingWaits();
            return new Taken.Nothing();
        }
        List<byte[]> frames = new ArrayList<>();
        long bytes = 0;
        long overhead = 0;
        boolean tooLarge = false;
        for (Optional<byte[]> frame = Optional.of(first); frame.isPresent(); frame = next()) {
            bytes += frame.get().length;
            overhead += Intake.FRAME_OVERHEAD;
            tooLarge = tooLarge || bytes > limits.bytes() || frames.size() >= limits.frames();
            if (tooLarge) {
                frames.clear();
            } else {
                frames.add(frame.get());
            }
        }
        intake.taken(bytes + overhead);
        return tooLarge ? new Taken.TooLarge() : new Taken.Frames(frames);
    }

    private Optional<byte[]> next() {
        return socket.hasReceiveMore() ? Optional.ofNullable(socket.recv(0)) : Optional.empty();
    }
}
