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
        ignoreInterruptSignal();
        Pipe pipe = new Pipe(new Socket(InetAddress.getLoopbackAddress(), Integer.parseInt(args[0])));
        pipe.send(Frame.of(Kind.HELLO, token()));
        new Agent(pipe).serve();
    }

    /**
     * A front end that interrupts by signal reaches every process of the kernel's group. The kernel stops the cell;
     * this VM must not end of it. Through reflection, as the compiler warns of these classes' use.
     */
    private static void ignoreInterruptSignal() {
        try {
            Class<?> signal = Class.forName("sun.misc.Signal");
            Class<?> handler = Class.forName("sun.misc.SignalHandler");
            signal.getMethod("handle", signal, handler).invoke(null,
                    signal.getConstructor(String.class).newInstance("INT"), handler.getField("SIG_IGN").get(null));
        } catch (ReflectiveOperationException e) {
            // not to be had on this system: then only interrupt messages stop a cell without loss
        }
    }

    private static String token() throws IOException {
        var line = new StringBuilder();
        for (int c = System.in.read(); c >= 0 && c != '\n'; c = System.in.read()) {
            line.append((char) c);
        }
        return new String(line.toString().getBytes(StandardCharsets.ISO_8859_1), StandardCharsets.US_ASCII);
    }
}
