package kingpost.kernel.cli;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.AtomicMoveNotSupportedException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.Optional;
import kingpost.kernel.document.Edition;

/**
 * Where a run's results go. A file is replaced only once its new content is complete.
 *
 * @param folder   of all files but a notebook that is run in place
 * @param name     what the files are called, without ending
 * @param notebook the notebook to be written over, when it is run in place
 */
record ResultFiles(Path folder, String name, Optional<Path> notebook) {

    /**
     * Files for a run of {@code source}.
     *
     * @param inPlace the solution's notebook is written to the source itself
     * @param out     folder asked for; without one: beside the source if in place, else {@code out} here
     */
    static ResultFiles of(Path source, boolean inPlace, Optional<Path> out) {
        Path absolute = source.toAbsolutePath().normalize();
        String name = absolute.getFileName().toString().replaceFirst("\\.ipynb$", "");
        Path folder = out.orElseGet(() -> inPlace ? absolute.getParent() : Path.of("out")).toAbsolutePath().normalize();
        return new ResultFiles(folder, name, inPlace ? Optional.of(absolute) : Optional.empty());
    }

    /** The same for one of several documents of the notebook. */
    ResultFiles named(String suffix) {
        return new ResultFiles(folder, name + "-" + suffix, Optional.empty());
    }

    /** The file of one form of one edition. */
    Path file(Form form, Edition edition) {
        boolean executed = form == Form.IPYNB && edition == Edition.SOLUTION;
        if (executed && notebook.isPresent()) {
            return notebook.get();
        }
        String suffix = edition != Edition.SOLUTION ? "-" + edition.word() : executed ? "-executed" : "";
        return folder.resolve(name + suffix + form.ending());
    }

    /** A file beside the documents. */
    Path beside(String suffix) {
        return folder.resolve(name + suffix);
    }

    /**
     * Makes the folders and sees that they can be written to, before anything runs.
     *
     * @throws CommandProblem they cannot
     */
    void prepare() {
        prepare(folder);
        notebook.ifPresent(file -> {
            prepare(file.getParent());
            if (Files.exists(file) && !Files.isWritable(file)) {
                throw new CommandProblem("Notebook " + file + ": cannot be written; change its permissions, or run without "
                        + "--in-place.");
            }
        });
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

    /**
     * Writes a file whole.
     *
     * @throws CommandProblem it cannot be written
     */
    static void write(Path file, byte[] content) {
        try {
            Path whole = Files.write(file.resolveSibling("." + file.getFileName() + ".new"), content);
            move(whole, file);
        } catch (IOException e) {
            throw new CommandProblem("File " + file + ": cannot be written (" + reason(e)
                    + "); choose another folder with --out DIR.", e);
        }
    }

    static void write(Path file, String text) {
        write(file, text.getBytes(StandardCharsets.UTF_8));
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
