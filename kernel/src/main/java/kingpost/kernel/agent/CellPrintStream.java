package kingpost.kernel.agent;

import java.io.OutputStream;
import java.io.PrintStream;
import java.nio.ByteBuffer;
import java.nio.CharBuffer;
import java.nio.charset.CharsetDecoder;
import java.nio.charset.CodingErrorAction;
import java.nio.charset.StandardCharsets;

/**
 * {@code System.out} and {@code System.err} of the calc VM: text goes to the cell that the printing thread works
 * for. Text stays text; only bytes written as bytes are decoded, as UTF-8.
 */
final class CellPrintStream extends PrintStream {

    private final String name;
    private final Cells cells;
    private final Outbox outbox;
    private final StopSign stop;
    private final CharsetDecoder decoder = StandardCharsets.UTF_8.newDecoder()
            .onMalformedInput(CodingErrorAction.REPLACE).onUnmappableCharacter(CodingErrorAction.REPLACE);
    private ByteBuffer undecoded = ByteBuffer.allocate(8).limit(0);

    CellPrintStream(String name, Cells cells, Outbox outbox, StopSign stop) {
        super(OutputStream.nullOutputStream(), false, StandardCharsets.UTF_8);
        this.name = name;
        this.cells = cells;
        this.outbox = outbox;
        this.stop = stop;
    }

    private void emit(CharSequence text) {
        stop.check();
        outbox.text(cells.current(), name, text, stop);
    }

    private void emitLine(String text) {
        if (text.length() < Outbox.PIECE) {
            emit(text + "\n");
        } else {
            emit(text);
            emit("\n");
        }
    }

    @Override
    public void write(int value) {
        write(new byte[] {(byte) value}, 0, 1);
    }

    @Override
    public void write(byte[] bytes) {
        write(bytes, 0, bytes.length);
    }

    @Override
    public void write(byte[] bytes, int offset, int length) {
        emit(decoded(bytes, offset, length));
    }

    private synchronized String decoded(byte[] bytes, int offset, int length) {
        var in = ByteBuffer.allocate(undecoded.remaining() + length).put(undecoded).put(bytes, offset, length).flip();
        var out = CharBuffer.allocate(in.remaining() + 1);
        decoder.decode(in, out, false);
        undecoded = in.compact().flip();
        return out.flip().toString();
    }

    @Override
    public void print(boolean value) {
        emit(String.valueOf(value));
    }

    @Override
    public void print(char value) {
        emit(String.valueOf(value));
    }

    @Override
    public void print(int value) {
        emit(String.valueOf(value));
    }

    @Override
    public void print(long value) {
        emit(String.valueOf(value));
    }

    @Override
    public void print(float value) {
        emit(String.valueOf(value));
    }

    @Override
    public void print(double value) {
        emit(String.valueOf(value));
    }

    @Override
    public void print(char[] value) {
        emit(String.valueOf(value));
    }

    @Override
    public void print(String value) {
        emit(String.valueOf(value));
    }

    @Override
    public void print(Object value) {
        emit(String.valueOf(value));
    }

    @Override
    public void println() {
        emit("\n");
    }

    @Override
    public void println(boolean value) {
        emitLine(String.valueOf(value));
    }

    @Override
    public void println(char value) {
        emitLine(String.valueOf(value));
    }

    @Override
    public void println(int value) {
        emitLine(String.valueOf(value));
    }

    @Override
    public void println(long value) {
        emitLine(String.valueOf(value));
    }

    @Override
    public void println(float value) {
        emitLine(String.valueOf(value));
    }

    @Override
    public void println(double value) {
        emitLine(String.valueOf(value));
    }

    @Override
    public void println(char[] value) {
        emitLine(String.valueOf(value));
    }

    @Override
    public void println(String value) {
        emitLine(String.valueOf(value));
    }

    @Override
    public void println(Object value) {
        emitLine(String.valueOf(value));
    }

    @Override
    public PrintStream append(CharSequence text) {
        emit(String.valueOf(text));
        return this;
    }

    @Override
    public PrintStream append(CharSequence text, int start, int end) {
        emit(String.valueOf(text).subSequence(start, end));
        return this;
    }

    @Override
    public PrintStream append(char value) {
        emit(String.valueOf(value));
        return this;
    }

    @Override
    public PrintStream printf(String format, Object... values) {
        emit(String.format(format, values));
        return this;
    }

    @Override
    public PrintStream printf(java.util.Locale locale, String format, Object... values) {
        emit(String.format(locale, format, values));
        return this;
    }

    @Override
    public PrintStream format(String format, Object... values) {
        return printf(format, values);
    }

    @Override
    public PrintStream format(java.util.Locale locale, String format, Object... values) {
        return printf(locale, format, values);
    }

    @Override
    public void flush() {
    }

    @Override
    public void close() {
    }
}
