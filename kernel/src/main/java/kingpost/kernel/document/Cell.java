package kingpost.kernel.document;

import java.util.List;
import java.util.Map;
import java.util.OptionalLong;

/** A cell of a notebook. */
public sealed interface Cell {

    /** A tag on a code cell that is not to be run. */
    String SKIP = "skip-execution";

    /** A tag on a code cell that is expected to fail. */
    String MAY_FAIL = "raises-exception";

    /** 1 to 64 letters, digits, hyphens and underscores; no two cells of a notebook share one. */
    String id();

    Map<String, Object> metadata();

    /** The text, with its line breaks. */
    String source();

    /** Fields that are not named here, such as attachments. */
    Map<String, Object> extra();

    <R> R accept(Visitor<R> visitor);

    /** The cell's tags. */
    default List<String> tags() {
        return Trees.list(metadata(), "tags").stream().filter(String.class::isInstance).map(String.class::cast).toList();
    }

    default boolean isTagged(String tag) {
        return tags().contains(tag);
    }

    /** Whether the front end hides the cell's text. */
    default boolean isSourceHidden() {
        return Trees.flag(Trees.map(metadata(), "jupyter"), "source_hidden");
    }

    /** Whether the front end hides what the cell shows. */
    default boolean isOutputHidden() {
        return Trees.flag(Trees.map(metadata(), "jupyter"), "outputs_hidden");
    }

    /** One case for each kind of cell. */
    interface Visitor<R> {
        R code(Code code);

        R markdown(Markdown markdown);

        R raw(Raw raw);
    }

    /**
     * A cell to run.
     *
     * @param executionCount the number it ran under; empty if it has not run
     * @param outputs        as the file stores them: {@code output_type} and its fields, texts in one piece
     */
    record Code(String id, Map<String, Object> metadata, String source, OptionalLong executionCount,
                List<Map<String, Object>> outputs, Map<String, Object> extra) implements Cell {
        public Code {
            metadata = Trees.copy(metadata);
            outputs = outputs.stream().map(Trees::copy).toList();
            extra = Trees.copy(extra);
        }

        public Code withRun(OptionalLong count, List<Map<String, Object>> shown) {
            return new Code(id, metadata, source, count, shown, extra);
        }

        public Code withSource(String other) {
            return new Code(id, metadata, other, executionCount, outputs, extra);
        }

        @Override
        public <R> R accept(Visitor<R> visitor) {
            return visitor.code(this);
        }
    }

    /** A cell of prose and mathematics. */
    record Markdown(String id, Map<String, Object> metadata, String source, Map<String, Object> extra)
            implements Cell {
        public Markdown {
            metadata = Trees.copy(metadata);
            extra = Trees.copy(extra);
        }

        @Override
        public <R> R accept(Visitor<R> visitor) {
            return visitor.markdown(this);
        }
    }

    /** A cell that is carried along unread. */
    record Raw(String id, Map<String, Object> metadata, String source, Map<String, Object> extra) implements Cell {
        public Raw {
            metadata = Trees.copy(metadata);
            extra = Trees.copy(extra);
        }

        @Override
        public <R> R accept(Visitor<R> visitor) {
            return visitor.raw(this);
        }
    }
}
