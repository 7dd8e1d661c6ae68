package kingpost.notebook;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import kingpost.units.CalculationException;

/**
 * Files that were written.
 *
 * @param folder where
 * @param names  in the order written
 */
public record SavedFiles(Path folder, List<String> names) {

    private static final int FEW = 6;

    public SavedFiles {
        names = List.copyOf(names);
    }

    /** Writes texts by file name; makes the folder where there is none, and replaces files of the same name. */
    static SavedFiles into(Path folder, Map<String, String> texts) {
        List<String> names = new ArrayList<>();
        String name = "";
        try {
            Files.createDirectories(folder);
            for (Map.Entry<String, String> text : texts.entrySet()) {
                name = text.getKey();
                Files.writeString(folder.resolve(name), text.getValue());
                names.add(name);
            }
        } catch (IOException e) {
            throw new CalculationException((name.isEmpty() ? "Folder " + folder : "File " + folder.resolve(name))
                    + ": it cannot be written (" + e.getClass().getSimpleName() + "); name a folder that you may write to.", e);
        }
        return new SavedFiles(folder, names);
    }

    /** The folder of that name. */
    static Path folder(String name) {
        if (name == null || name.isBlank()) {
            throw new CalculationException("Folder: no name is given; name one to write to, as in save(\"week-3\").");
        }
        return Path.of(name);
    }

    /** A text as a part of a file's name: letters, digits and hyphens. */
    static String plain(String text) {
        String plain = text.strip().replaceAll("[^\\p{L}\\p{N}]+", "-").replaceAll("^-|-$", "");
        return plain.isEmpty() ? "unnamed" : plain.substring(0, Math.min(60, plain.length()));
    }

    @Override
    public String toString() {
        String where = folder.getFileName() == null ? folder.toString() : folder.getFileName().toString();
        String listed = String.join(", ", names.subList(0, Math.min(FEW, names.size())));
        return names.size() + (names.size() == 1 ? " file" : " files") + " in " + where + ": " + listed
                + (names.size() > FEW ? ", ... " + names.get(names.size() - 1) : "");
    }
}
