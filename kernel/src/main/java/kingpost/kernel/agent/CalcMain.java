package kingpost.kernel.agent;

import java.io.IOException;
import java.net.InetAddress;
import java.net.Socket;
import java.nio.charset.StandardCharsets;
import kingpost.kernel.pipe.Frame;
import kingpost.kernel.pipe.Kind;
import kingpost.kernel.pipe.Pipe;

/**
 * The calc VM's main class. The kernel passes a port as the only argument and a token on the standard input, which
 * stays open as long as the kernel lives.
 */
public final class CalcMain {

    private CalcMain() {
    }

    public static void main(String[] args) throws IOException {
        Pipe pipe = new Pipe(new Socket(InetAddress.getLoopbackAddress(), Integer.parseInt(args[0])));
        pipe.send(Frame.of(Kind.HELLO, token()));
        new Agent(pipe).serve();
    }

    private static String token() throws IOException {
        var line = new StringBuilder();
        for (int c = System.in.read(); c >= 0 && c != '\n'; c = System.in.read()) {
            line.append((char) c);
        }
        return new String(line.toString().getBytes(StandardCharsets.ISO_8859_1), StandardCharsets.US_ASCII);
    }
}
