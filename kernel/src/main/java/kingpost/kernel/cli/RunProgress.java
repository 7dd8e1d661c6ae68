package kingpost.kernel.cli;

import java.io.PrintWriter;
import java.time.Duration;
import java.util.Locale;
import kingpost.kernel.document.RunEvent;

/** Prints one line for each cell as it runs. */
final class RunProgress implements RunEvent.Listener, RunEvent.Visitor<String> {

    private static final int WIDTH = 56;

    private final PrintWriter console;

    RunProgress(PrintWriter console) {
        this.console = console;
    }

    @Override
    public void on(RunEvent event) {
        console.print(event.accept(this));
        console.flush();
    }

    @Override
    public String started(RunEvent.Started started) {
        return line(started.place());
    }

    @Override
    public String ended(RunEvent.Ended ended) {
        return seconds(ended.took()) + System.lineSeparator();
    }

    @Override
    public String failed(RunEvent.Failed failed) {
        return seconds(failed.took()) + (failed.expected() ? "  failed, as its tag allows" : "  FAILED")
                + System.lineSeparator();
    }

    @Override
    public String skipped(RunEvent.Skipped skipped) {
        return line(skipped.place()) + switch (skipped.reason()) {
            case TAGGED -> "skipped, as its tag says";
            case BLANK -> "blank";
            case AFTER_FAILURE -> "not run";
        } + System.lineSeparator();
    }

    private static String line(RunEvent.Place place) {
        int digits = Integer.toString(place.of()).length();
        String first = place.firstLine();
        String shown = first.codePointCount(0, first.length()) <= WIDTH ? first
                : first.substring(0, first.offsetByCodePoints(0, WIDTH - 3)) + "...";
        return String.format("  [%" + digits + "d/%d] %-" + WIDTH + "s  ", place.number(), place.of(), shown);
    }

    private static String seconds(Duration took) {
        return String.format(Locale.ROOT, "%.2f s", took.toMillis() / 1000.0);
    }
}
