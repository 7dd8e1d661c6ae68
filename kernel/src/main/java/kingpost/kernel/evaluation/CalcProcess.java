package kingpost.kernel.evaluation;

import java.io.File;
import java.io.IOException;
import java.io.InputStream;
import java.net.InetAddress;
import java.net.ServerSocket;
import java.net.Socket;
import java.net.SocketTimeoutException;
import java.nio.charset.StandardCharsets;
import java.security.SecureRandom;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HexFormat;
import java.util.List;
import java.util.concurrent.TimeUnit;
import java.util.function.BiConsumer;
import java.util.stream.Collectors;
import kingpost.kernel.pipe.ExitCode;
import kingpost.kernel.pipe.Frame;
import kingpost.kernel.pipe.Kind;
import kingpost.kernel.pipe.Pipe;

/**
 * One calc VM process and the pipe to it. It connects back to a loopback port that is open only until then, and
 * proves itself with a token that it got on its standard input. What it or its own children write to the process's
 * output goes to a listener and never mixes with frames.
 */
final class CalcProcess {

    /** The agent's main class; by name, as this package does not depend on the agent. */
    static final String MAIN = "kingpost.kernel.agent.CalcMain";

    /** Cells run in hidden classes, whose frames a stack trace would leave out. */
    private static final List<String> SHOW_CELL_FRAMES = List.of("-XX:+UnlockDiagnosticVMOptions", "-XX:+ShowHiddenFrames");
    private static final int START_MILLIS = 30_000;

    private final Process process;
    private final Pipe pipe;
    private final ThreadStopper stopper;
    private volatile String lastWords;

    private CalcProcess(Process process, Pipe pipe, ThreadStopper stopper) {
        this.process = process;
        this.pipe = pipe;
        this.stopper = stopper;
    }

    /**
     * Starts a calc VM and waits for its call.
     *
     * @param raw receives what is written past {@code System.out}: stream name and text
     * @throws IOException if the VM cannot be started or does not call
     */
    static CalcProcess start(CalcOptions options, BiConsumer<String, String> raw) throws IOException {
        var stopper = ThreadStopper.listen();
        try (var server = new ServerSocket(0, 5, InetAddress.getLoopbackAddress())) {
            server.setSoTimeout(200);
            Process process = new ProcessBuilder(command(options, stopper, server.getLocalPort())).start();
            stopper.acceptInBackground();
            pump(process.getInputStream(), "stdout", raw);
            pump(process.getErrorStream(), "stderr", raw);
            try {
                String token = newToken();
                process.getOutputStream().write((token + "\n").getBytes(StandardCharsets.US_ASCII));
                process.getOutputStream().flush();
                return new CalcProcess(process, accept(server, process, token), stopper).watched(options);
            } catch (IOException | RuntimeException failed) {
                process.destroyForcibly();
                stopper.close();
                throw failed;
            }
        }
    }

    private CalcProcess watched(CalcOptions options) {
        var threads = new ThreadCount(process, options.flags());
        threads.watch(() -> {
            lastWords(threads.sentence());
            destroy();
        });
        return this;
    }

    private static List<String> command(CalcOptions options, ThreadStopper stopper, int port) {
        var command = new ArrayList<String>();
        command.add(options.java().toString());
        command.addAll(options.flags());
        command.addAll(SHOW_CELL_FRAMES);
        command.addAll(stopper.flags());
        command.add("-cp");
        command.add(options.classPath().stream().map(Object::toString)
                .collect(Collectors.joining(File.pathSeparator)));
        command.add(MAIN);
        command.add(Integer.toString(port));
        return command;
    }

    private static String newToken() {
        byte[] token = new byte[24];
        new SecureRandom().nextBytes(token);
        return HexFormat.of().formatHex(token);
    }

    private static Pipe accept(ServerSocket server, Process process, String token) throws IOException {
        long deadline = System.nanoTime() + TimeUnit.MILLISECONDS.toNanos(START_MILLIS);
        while (System.nanoTime() < deadline) {
            if (!process.isAlive()) {
                throw new IOException("The calculation process ended while it started, with exit code "
                        + process.exitValue() + "; check its VM flags.");
            }
            try {
                Pipe pipe = proved(server.accept(), token);
                if (pipe != null) {
                    return pipe;
                }
            } catch (SocketTimeoutException notYet) {
                // look again whether the process lives
            }
        }
        throw new IOException("The calculation process did not answer within " + START_MILLIS / 1000 + " s.");
    }

    /** The pipe, or null for a stranger. */
    private static Pipe proved(Socket caller, String token) throws IOException {
        caller.setSoTimeout(5_000);
        Pipe pipe = new Pipe(caller);
        try {
            Frame hello = pipe.receive();
            if (hello.kind() == Kind.HELLO && Arrays.equals(hello.text(0).getBytes(StandardCharsets.US_ASCII),
                    token.getBytes(StandardCharsets.US_ASCII))) {
                caller.setSoTimeout(0);
                return pipe;
            }
        } catch (IOException | RuntimeException stranger) {
            // falls through: not ours
        }
        pipe.close();
        return null;
    }

    private static void pump(InputStream from, String name, BiConsumer<String, String> raw) {
        var thread = new Thread(() -> {
            byte[] buffer = new byte[8192];
            try (from) {
                for (int n = from.read(buffer); n >= 0; n = from.read(buffer)) {
                    raw.accept(name, new String(buffer, 0, n, StandardCharsets.UTF_8));
                }
            } catch (IOException closed) {
                // the process is gone
            }
        }, "calc " + name);
        thread.setDaemon(true);
        thread.start();
    }

    void send(Frame frame) throws CalcLost {
        try {
            pipe.send(frame);
        } catch (IOException broken) {
            throw new CalcLost(howItEnded());
        }
    }

    Frame receive() throws IOException {
        return pipe.receive();
    }

    ThreadStopper stopper() {
        return stopper;
    }

    boolean isAlive() {
        return process.isAlive();
    }

    /** What the agent said before it ended itself. */
    void lastWords(String reason) {
        lastWords = lastWords == null ? reason : lastWords;
    }

    /** How the process ended, in the reader's words. */
    String howItEnded() {
        try {
            if (!process.waitFor(2, TimeUnit.SECONDS)) {
                return lastWords != null ? lastWords : "it closed its connection";
            }
        } catch (InterruptedException interrupted) {
            Thread.currentThread().interrupt();
            return "it closed its connection";
        }
        return lastWords != null ? lastWords : exit(process.exitValue());
    }

    private static String exit(int code) {
        if (code == ExitCode.MEMORY_FULL) {
            return "its memory was full";
        }
        if (code == ExitCode.TOO_MANY_THREADS) {
            return "cells had started too many threads";
        }
        if (code == ExitCode.HOOK_WITHOUT_END) {
            return "it was told to exit, as by System.exit, and a shutdown hook did not end";
        }
        if (code == ExitCode.BROKEN) {
            return "it could not go on";
        }
        if (code > 128 && code < 160) {
            return "it was killed or crashed (signal " + (code - 128) + ")";
        }
        return "exit code " + code + ", as System.exit or Runtime.halt gives";
    }

    /** Ends the process, its children and the pipe now. */
    void destroy() {
        stopper.close();
        process.descendants().forEach(ProcessHandle::destroyForcibly);
        process.destroyForcibly();
        try {
            pipe.close();
        } catch (IOException alreadyClosed) {
            // nothing left to close
        }
    }
}
