package kingpost.kernel.pipe;

import java.io.BufferedInputStream;
import java.io.BufferedOutputStream;
import java.io.Closeable;
import java.io.DataInputStream;
import java.io.DataOutputStream;
import java.io.IOException;
import java.net.ProtocolException;
import java.net.Socket;

/**
 * The two-way connection between the VMs: each frame is its length in four bytes, then its content. One thread
 * receives; any thread may send. What is sent leaves at once unless more is announced.
 */
public final class Pipe implements Closeable {

    /** The longest frame accepted, in bytes; the agent cuts longer values before they are sent. */
    public static final int LONGEST = 64 << 20;

    private final Socket socket;
    private final DataInputStream in;
    private final DataOutputStream out;

    public Pipe(Socket socket) throws IOException {
        this.socket = socket;
        socket.setTcpNoDelay(true);
        in = new DataInputStream(new BufferedInputStream(socket.getInputStream(), 1 << 16));
        out = new DataOutputStream(new BufferedOutputStream(socket.getOutputStream(), 1 << 16));
    }

    /** Sends a frame at once. */
    public void send(Frame frame) throws IOException {
        send(frame, false);
    }

    /**
     * Sends a frame.
     *
     * @param more true: another frame follows directly, so that the bytes may wait for it
     * @throws IOException if the other VM is gone, or the frame is longer than {@link #LONGEST}
     */
    public void send(Frame frame, boolean more) throws IOException {
        byte[] bytes = FrameCodec.encode(frame);
        if (bytes.length > LONGEST) {
            throw new ProtocolException("Pipe: a frame of " + bytes.length + " bytes is too long; the limit is "
                    + LONGEST + ".");
        }
        synchronized (out) {
            out.writeInt(bytes.length);
            out.write(bytes);
            if (!more) {
                out.flush();
            }
        }
    }

    /**
     * Waits for the next frame.
     *
     * @throws java.io.EOFException when the other VM has closed the pipe or is gone
     */
    public Frame receive() throws IOException {
        int length = in.readInt();
        if (length < 1 || length > LONGEST) {
            throw new ProtocolException("Pipe: a frame of " + length + " bytes is not acceptable.");
        }
        byte[] bytes = new byte[length];
        in.readFully(bytes);
        return FrameCodec.decode(bytes);
    }

    @Override
    public void close() throws IOException {
        socket.close();
    }
}
