package kingpost.kernel.agent;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.Optional;

/**
 * {@code System.in} of the calc VM: when nothing is left to read, the user is asked for a line. Only the cell
 * thread may ask; for every other thread the input has ended.
 */
final class CellInput extends InputStream {

    private final Questions questions;
    private byte[] line = {};
    private int next;

    CellInput(Questions questions) {
        this.questions = questions;
    }

    @Override
    public synchronized int read() throws IOException {
        return fill() ? line[next++] & 0xff : -1;
    }

    @Override
    public synchronized int read(byte[] into, int offset, int length) throws IOException {
        if (length == 0) {
            return 0;
        }
        if (!fill()) {
            return -1;
        }
        int count = Math.min(length, line.length - next);
        System.arraycopy(line, next, into, offset, count);
        next += count;
        return count;
    }

    @Override
    public synchronized int available() {
        return line.length - next;
    }

    private boolean fill() {
        if (next < line.length) {
            return true;
        }
        Optional<String> answer = questions.ask("", false);
        answer.ifPresent(text -> {
            line = (text + "\n").getBytes(StandardCharsets.UTF_8);
            next = 0;
        });
        return answer.isPresent();
    }
}
