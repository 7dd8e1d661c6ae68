package kingpost.kernel.evaluation;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import jdk.jshell.Diag;

/** Compiler messages in the cell's own lines and columns, without the compiler's noise. */
final class CompileErrors {

    static final String NAME = "CompilationError";
    private static final int MOST = 10;
    private static final Pattern SYMBOL = Pattern.compile("symbol:\\s*(.*)");

    private final CellText cell;
    private final int snippetStart;
    private final NearMiss nearMiss;

    /**
     * @param cell         the whole cell
     * @param snippetStart where the failing statement begins in it
     * @param nearMiss     knows what could have been meant
     */
    CompileErrors(CellText cell, int snippetStart, NearMiss nearMiss) {
        this.cell = cell;
        this.snippetStart = snippetStart;
        this.nearMiss = nearMiss;
    }

    /** All errors of one statement as a failed outcome. */
    Outcome.Failed failed(List<Diag> diagnostics) {
        List<Diag> errors = diagnostics.stream().filter(Diag::isError).toList();
        var traceback = new ArrayList<String>();
        String first = "";
        int firstLine = 0;
        for (Diag error : errors.subList(0, Math.min(MOST, errors.size()))) {
            int at = snippetStart + (int) Math.max(0, error.getPosition());
            String sentence = sentence(error, at);
            if (first.isEmpty()) {
                first = sentence;
                firstLine = cell.lineOf(at);
            }
            traceback.add("Cell line " + cell.lineOf(at) + ": " + sentence);
            traceback.addAll(List.of(cell.withCaret(at).split("\n")));
        }
        if (errors.size() > MOST) {
            traceback.add("... and " + (errors.size() - MOST) + " more errors");
        }
        return new Outcome.Failed(Outcome.Kind.COMPILATION, NAME, first, traceback, firstLine);
    }

    private String sentence(Diag error, int at) {
        String[] lines = error.getMessage(Locale.ENGLISH).split("\n");
        String sentence = lines[0].strip();
        for (String line : lines) {
            Matcher symbol = SYMBOL.matcher(line.strip());
            if (symbol.matches() && sentence.startsWith("cannot find symbol")) {
                sentence = "cannot find " + symbol.group(1).strip().replaceAll("\\s+", " ");
            }
        }
        return sentence + nearMiss.hint(cell.text(), at, sentence);
    }
}
