package kingpost.kernel.document;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalLong;

/**
 * Writes notebooks as the reference library of the format does: keys sorted, one space of indentation, texts in
 * lines, a line break at the end. The same notebook is always the same text.
 */
public final class NotebookWriter {

    private NotebookWriter() {
    }

    /** The text of the file. */
    public static String write(Notebook notebook) {
        Map<String, Object> top = new LinkedHashMap<>(notebook.extra());
        top.put("cells", notebook.cells().stream().map(cell -> cell.accept(new Fields())).toList());
        top.put("metadata", notebook.metadata());
        top.put("nbformat", 4);
        top.put("nbformat_minor", notebook.minor());
        return SortedJson.write(top) + "\n";
    }

    private static final class Fields implements Cell.Visitor<Map<String, Object>> {

        @Override
        public Map<String, Object> code(Cell.Code code) {
            Map<String, Object> fields = common("code", code);
            OptionalLong count = code.executionCount();
            fields.put("execution_count", count.isPresent() ? count.getAsLong() : null);
            List<Object> outputs = new ArrayList<>();
            code.outputs().forEach(output -> outputs.add(MultilineText.splitOutput(output)));
            fields.put("outputs", outputs);
            return fields;
        }

        @Override
        public Map<String, Object> markdown(Cell.Markdown markdown) {
            return common("markdown", markdown);
        }

        @Override
        public Map<String, Object> raw(Cell.Raw raw) {
            return common("raw", raw);
        }

        private static Map<String, Object> common(String type, Cell cell) {
            Map<String, Object> fields = new LinkedHashMap<>(cell.extra());
            if (fields.containsKey("attachments")) {
                fields.put("attachments", MultilineText.splitAttachments(Trees.map(fields, "attachments")));
            }
            fields.put("cell_type", type);
            fields.put("id", cell.id());
            fields.put("metadata", cell.metadata());
            fields.put("source", MultilineText.lines(cell.source()));
            return fields;
        }
    }
}
