package kingpost.kernel.cli;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.AtomicMoveNotSupportedException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.Optional;

/**
 * Where a run's results go. A file is replaced only once its new content is complete.
 *
 * @param notebook the notebook with its outputs
 * @param page     the page
 */
record ResultFiles(Path notebook, Path page) {

    /**
     * Files for a run of {@code source}.
     *
     * @param inPlace the notebook is written to the source itself
     * @param out     folder asked for; without one: beside the source if in place, else {@code out} here
     */
    static ResultFiles of(Path source, boolean inPlace, Optional<Path> out) {
        Path absolute = source.toAbsolutePath().normalize();
        String name = absolute.getFileName().toString().replaceFirst("\\.ipynb$", "");
        Path folder = out.orElseGet(() -> inPlace ? absolute.getParent() : Path.of("out")).toAbsolutePath().normalize();
        Path notebook = inPlace ? absolute : folder.resolve(name + "-executed.ipynb");
        return new ResultFiles(notebook, folder.resolve(name + ".html"));
    }

    /**
     * Makes the folders and sees that they can be written to, before anything runs.
     *
     * @throws CommandProblem they cannot
     */
    void prepare() {
        prepare(page.getParent());
        prepare(notebook.getParent());
        if (Files.exists(notebook) && !Files.isWritable(notebook)) {
            throw new CommandProblem("Notebook " + notebook + ": cannot be written; change its permissions, or run without "
                    + "--in-place.");
        }
    }

    private static void prepare(Path folder) {
        try {
            Files.createDirectories(folder);
            Files.delete(Files.createTempFile(folder, ".kingpost", ".tmp"));
        } catch (IOException e) {
            throw new CommandProblem("Output folder " + folder + ": cannot be written (" + reason(e)
                    + "); choose another with --out DIR.", e);
        }
    }

    void writeNotebook(String text) {
        write(notebook, text);
    }

    void writePage(String text) {
        write(page, text);
    }

    private static void write(Path file, String text) {
        try {
            Path whole = Files.writeString(file.resolveSibling("." + file.getFileName() + ".new"), text,
                    StandardCharsets.UTF_8);
            move(whole, file);
        } catch (IOException e) {
            throw new CommandProblem("File " + file + ": cannot be written (" + reason(e)
                    + "); choose another folder with --out DIR.", e);
        }
    }

    private static void move(Path from, Path to) throws IOException {
        try {
            Files.move(from, to, StandardCopyOption.ATOMIC_MOVE, StandardCopyOption.REPLACE_EXISTING);
        } catch (AtomicMoveNotSupportedException e) {
            Files.move(from, to, StandardCopyOption.REPLACE_EXISTING);
        }
    }

    private static String reason(IOException e) {
        String kind = e.getClass().getSimpleName().replaceFirst("Exception$", "").replaceAll("(?<=[a-z])(?=[A-Z])", " ");
        return kind.toLowerCase(java.util.Locale.ROOT) + (e.getMessage() == null ? "" : ": " + e.getMessage());
    }
}
