package kingpost.kernel.evaluation;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import kingpost.kernel.display.MimeBundle;

/** Where output goes that belongs to no cell: nowhere. */
final class NoOutput implements CellOutput {

    static final NoOutput INSTANCE = new NoOutput();

    private NoOutput() {
    }

    @Override
    public void stream(String name, String text) {
    }

    @Override
    public void display(MimeBundle bundle, Optional<String> displayId) {
    }

    @Override
    public void update(MimeBundle bundle, String displayId) {
    }

    @Override
    public void clear(boolean wait) {
    }

    @Override
    public Optional<String> input(String prompt, boolean password) {
        return Optional.empty();
    }

    @Override
    public void comm(String type, Map<String, Object> content, Map<String, Object> metadata, List<byte[]> buffers) {
    }
}
