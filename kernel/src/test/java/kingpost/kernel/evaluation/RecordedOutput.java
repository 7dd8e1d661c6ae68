package kingpost.kernel.evaluation;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Deque;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import kingpost.kernel.display.MimeBundle;

/** Keeps what a cell puts out, in order, as short lines. */
final class RecordedOutput implements CellOutput {

    final List<String> events = Collections.synchronizedList(new ArrayList<>());
    final StringBuffer stdout = new StringBuffer();
    final StringBuffer stderr = new StringBuffer();
    final Deque<String> answers = new ArrayDeque<>();
    final List<MimeBundle> displays = Collections.synchronizedList(new ArrayList<>());

    @Override
    public void stream(String name, String text) {
        (name.equals("stdout") ? stdout : stderr).append(text);
        events.add(name + " " + text);
    }

    @Override
    public void display(MimeBundle bundle, Optional<String> displayId) {
        displays.add(bundle);
        events.add("display " + displayId.orElse("-") + " " + bundle.data().get(MimeBundle.PLAIN));
    }

    @Override
    public void update(MimeBundle bundle, String displayId) {
        events.add("update " + displayId + " " + bundle.data().get(MimeBundle.PLAIN));
    }

    @Override
    public void clear(boolean wait) {
        events.add("clear " + wait);
    }

    @Override
    public Optional<String> input(String prompt, boolean password) throws InterruptedException {
        events.add("input " + prompt + " " + password);
        if (answers.isEmpty()) {
            Thread.sleep(60_000);
        }
        return Optional.of(answers.remove());
    }

    @Override
    public void comm(String type, Map<String, Object> content, Map<String, Object> metadata, List<byte[]> buffers) {
        events.add(type + " " + content + " " + buffers.size());
    }
}
