package kingpost.kernel.document;

import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * A notebook: cells in order, and what the file says about itself. Nothing in the file is lost by reading and
 * writing, whether it is known here or not.
 *
 * @param minor    minor version of format 4; 5 or more, since reading brings older files up to date
 * @param metadata the notebook's metadata, as in the file
 * @param cells    in order
 * @param extra    other fields of the file
 */
public record Notebook(int minor, Map<String, Object> metadata, List<Cell> cells, Map<String, Object> extra) {

    /** The kernel's name in notebooks and kernel specs. */
    public static final String KERNEL = "kingpost";

    public Notebook {
        metadata = Trees.copy(metadata);
        cells = List.copyOf(cells);
        extra = Trees.copy(extra);
    }

    public Notebook withCells(List<Cell> other) {
        return new Notebook(minor, metadata, other, extra);
    }

    public Notebook withMetadata(String key, Object value) {
        return new Notebook(minor, Trees.with(metadata, key, value), cells, extra);
    }

    /** The title in the metadata, else the first heading of a markdown cell. */
    public Optional<String> title() {
        return Trees.text(metadata, "title").filter(title -> !title.isBlank())
                .or(() -> cells.stream().flatMap(cell -> Headings.firstOf(cell).stream()).findFirst());
    }

    /** The language that the file says it is written in, in lower case. */
    public Optional<String> language() {
        return Trees.text(Trees.map(metadata, "language_info"), "name")
                .or(() -> Trees.text(Trees.map(metadata, "kernelspec"), "language"))
                .map(name -> name.toLowerCase(java.util.Locale.ROOT));
    }

    /** The name of the kernel that the file asks for. */
    public Optional<String> kernel() {
        return Trees.text(Trees.map(metadata, "kernelspec"), "name");
    }
}
