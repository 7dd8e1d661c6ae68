package kingpost.kernel.channels;

import java.util.List;
import org.zeromq.ZMQ;

/** Sends the frames of one message as one. */
final class Multipart {

    private Multipart() { }

    /** False when the first frame could not be sent in the socket's send time; then none is sent. */
    static boolean send(ZMQ.Socket socket, List<byte[]> frames) {
        int last = frames.size() - 1;
        for (int i = 0; i <= last; i++) {
            if (!socket.send(frames.get(i), i < last ? ZMQ.SNDMORE : 0) && i == 0) {
                return false;
            }
        }
        return true;
    }
}
