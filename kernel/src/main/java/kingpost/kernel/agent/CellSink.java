package kingpost.kernel.agent;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import kingpost.kernel.library.Libraries;
import kingpost.kernel.library.LibraryProblem;
import kingpost.kernel.pipe.Frame;
import kingpost.kernel.pipe.Kind;
import kingpost.notebook.CellDisplay;
import kingpost.units.CalculationException;

/** What a cell shows, asks or hands over while it runs, as frames. */
final class CellSink implements CellDisplay.Sink {

    private final Cells cells;
    private final Outbox outbox;
    private final StopSign stop;
    private final Questions questions;

    CellSink(Cells cells, Outbox outbox, StopSign stop, Questions questions) {
        this.cells = cells;
        this.outbox = outbox;
        this.stop = stop;
        this.questions = questions;
    }

    @Override
    public void display(Object value, Optional<String> displayId) {
        ValueForms.of(value).ifPresent(forms ->
                send(Frame.of(Kind.DISPLAY, cells.current(), forms, displayId.orElse(null))));
    }

    @Override
    public void update(Object value, String displayId) {
        ValueForms.of(value).ifPresent(forms -> send(Frame.of(Kind.UPDATE, cells.current(), forms, displayId)));
    }

    @Override
    public void clear(boolean wait) {
        send(Frame.of(Kind.CLEAR, cells.current(), wait));
    }

    @Override
    public Optional<String> input(String prompt, boolean password) {
        return questions.ask(prompt, password);
    }

    @Override
    public void addLibrary(String coordinates) {
        questions.checkCellThread("Library " + coordinates);
        try {
            List<Path> jars = new Libraries(Path.of(System.getProperty("user.home", ".")), System.out::println)
                    .fetch(coordinates);
            questions.addToClassPath(jars.stream().map(Path::toString).toList());
            System.out.println("Added " + coordinates + (jars.size() == 1 ? "" : " and " + (jars.size() - 1) + " more"));
        } catch (LibraryProblem problem) {
            throw new CalculationException(problem.getMessage());
        }
    }

    @Override
    public void addClassPath(Path jarOrFolder) {
        questions.checkCellThread("Class path " + jarOrFolder);
        Path path = jarOrFolder.toAbsolutePath().normalize();
        if (!Files.exists(path)) {
            throw new CalculationException("Class path \"" + jarOrFolder + "\": there is no such jar or folder; "
                    + "give one that exists, from " + Path.of("").toAbsolutePath() + " or absolute.");
        }
        questions.addToClassPath(List.of(path.toString()));
    }

    @Override
    public void payload(Map<String, Object> payload) {
        send(Frame.of(Kind.PAYLOAD, cells.current(), payload));
    }

    @Override
    public void comm(String type, Map<String, Object> content, Map<String, Object> metadata, List<byte[]> buffers) {
        send(Frame.of(Kind.COMM_OUT, cells.current(), type, content, metadata, buffers));
    }

    private void send(Frame frame) {
        stop.check();
        outbox.largeFrame(frame, stop);
    }
}
