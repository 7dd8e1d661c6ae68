package kingpost.kernel.document;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalLong;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import kingpost.kernel.wire.Json;

/** Reads notebook files of format 4; older minor versions get what they lack (cell ids). */
public final class NotebookReader {

    private static final Pattern PLACE = Pattern.compile("line (\\d+) column (\\d+)");

    private static final int FORMAT = 4;
    private static final int FIRST_MINOR_WITH_IDS = 5;

    private final String file;
    private final Set<String> ids = new HashSet<>();

    private NotebookReader(String file) {
        this.file = file;
    }

    /**
     * The notebook in a file.
     *
     * @throws NotebookProblem the file is missing, unreadable, or no notebook of format 4
     */
    public static Notebook read(Path file) {
        if (Files.isDirectory(file)) {
            throw new NotebookProblem("Notebook " + file + ": is a folder; name one file.");
        }
        if (!Files.exists(file)) {
            throw new NotebookProblem("Notebook " + file + ": there is no such file; check the path.");
        }
        try {
            ByteBuffer bytes = ByteBuffer.wrap(Files.readAllBytes(file));
            String text = StandardCharsets.UTF_8.newDecoder().decode(bytes).toString();
            return parse(file.toString(), text);
        } catch (CharacterCodingException e) {
            throw new NotebookProblem("Notebook " + file + ": is not UTF-8 text; save it as a notebook again.", e);
        } catch (IOException e) {
            throw new NotebookProblem("Notebook " + file + ": cannot be read (" + e.getMessage()
                    + "); check the permissions.", e);
        }
    }

    /**
     * The notebook in a text.
     *
     * @param name what to call the text in messages
     * @throws NotebookProblem the text is no notebook of format 4
     */
    public static Notebook parse(String name, String text) {
        Object tree;
        try {
            tree = Json.read(text.startsWith("\ufeff") ? text.substring(1) : text);
        } catch (IllegalArgumentException e) {
            throw new NotebookProblem("Notebook " + name + ": is not JSON (" + place(e.getMessage())
                    + "); save it as a notebook again.", e);
        }
        return new NotebookReader(name).notebook(tree);
    }

    /** Where the fault is, without the reader's advice to its programmer. */
    private static String place(String message) {
        Matcher place = PLACE.matcher(String.valueOf(message));
        return place.find() ? "line " + place.group(1) + ", column " + place.group(2) : message;
    }

    private Notebook notebook(Object tree) {
        Map<String, Object> top = object(tree, "the file");
        if (!(top.get("nbformat") instanceof Long format) || !top.containsKey("cells") && format == FORMAT) {
            throw problem("is JSON but not a notebook (it lacks nbformat or cells); name a file that ends in .ipynb.");
        }
        if (format != FORMAT) {
            throw problem("has notebook format " + format + ", and only format 4 can be read; convert it with "
                    + "\"jupyter nbconvert --to notebook\".");
        }
        int minor = top.get("nbformat_minor") instanceof Long number ? number.intValue() : 0;
        List<Cell> cells = new ArrayList<>();
        for (Object cell : array(top.get("cells"), "cells")) {
            cells.add(cell(object(cell, "cell " + (cells.size() + 1)), cells.size() + 1));
        }
        Map<String, Object> metadata = Trees.without(optionalObject(top.get("metadata"), "metadata"), "orig_nbformat",
                "orig_nbformat_minor", "signature");
        return new Notebook(Math.max(minor, FIRST_MINOR_WITH_IDS), metadata, cells,
                Trees.without(top, "nbformat", "nbformat_minor", "metadata", "cells"));
    }

    private Cell cell(Map<String, Object> cell, int number) {
        String type = Trees.text(cell, "cell_type").orElse("");
        String source = source(cell, number);
        String id = ids(Trees.text(cell, "id").orElse(""), number, source);
        Map<String, Object> metadata = Trees.without(
                optionalObject(cell.get("metadata"), "the metadata of cell " + number), "trusted");
        Map<String, Object> extra = Trees.without(cell, "cell_type", "id", "metadata", "source", "outputs",
                "execution_count");
        if (extra.containsKey("attachments")) {
            extra.put("attachments", MultilineText.joinedAttachments(Trees.map(extra, "attachments")));
        }
        return switch (type) {
            case "code" -> new Cell.Code(id, metadata, source, count(cell), outputs(cell, number), extra);
            case "markdown" -> new Cell.Markdown(id, metadata, source, extra);
            case "raw" -> new Cell.Raw(id, metadata, source, extra);
            default -> throw problem("cell " + number + " has the type \"" + type
                    + "\"; code, markdown and raw are known.");
        };
    }

    private String source(Map<String, Object> cell, int number) {
        Object source = Trees.join(cell.getOrDefault("source", ""));
        if (source instanceof String text) {
            return text;
        }
        throw problem("the source of cell " + number + " is neither text nor a list of lines; repair or remove it.");
    }

    private String ids(String id, int number, String source) {
        String unique = id.matches("[A-Za-z0-9_-]{1,64}") ? id : madeId(number, source);
        while (!ids.add(unique)) {
            unique = madeId(number, unique + source);
        }
        return unique;
    }

    /** The same file gets the same ids each time, so that a run changes nothing but what ran. */
    private static String madeId(int number, String source) {
        return String.format("%04d-%08x", number, source.hashCode());
    }

    private static OptionalLong count(Map<String, Object> cell) {
        return cell.get("execution_count") instanceof Long count ? OptionalLong.of(count) : OptionalLong.empty();
    }

    private List<Map<String, Object>> outputs(Map<String, Object> cell, int number) {
        List<Map<String, Object>> outputs = new ArrayList<>();
        for (Object output : array(cell.getOrDefault("outputs", List.of()), "the outputs of cell " + number)) {
            outputs.add(MultilineText.joinedOutput(object(output, "an output of cell " + number)));
        }
        return outputs;
    }

    @SuppressWarnings("unchecked")
    private Map<String, Object> object(Object tree, String what) {
        if (tree instanceof Map<?, ?> map) {
            return new LinkedHashMap<>((Map<String, Object>) map);
        }
        throw problem(what + " should be a JSON object; name a file that ends in .ipynb, or repair it.");
    }

    private Map<String, Object> optionalObject(Object tree, String what) {
        return tree == null ? Map.of() : object(tree, what);
    }

    private List<?> array(Object tree, String what) {
        if (tree instanceof List<?> list) {
            return list;
        }
        throw problem(what + " should be a list; repair the file.");
    }

    private NotebookProblem problem(String rest) {
        return new NotebookProblem("Notebook " + file + ": " + rest);
    }
}
