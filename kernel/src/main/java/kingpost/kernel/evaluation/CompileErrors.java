package kingpost.kernel.evaluation;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Pattern;
import jdk.jshell.Diag;
import kingpost.kernel.evaluation.CompileMessage.Missing;

/** Compiler messages in the cell's own lines and columns, without the compiler's noise. */
final class CompileErrors {

    static final String NAME = "CompilationError";
    private static final int MOST = 10;
    /** The compiler's codes for what it cannot even read. */
    private static final Pattern SYNTAX = Pattern.compile(
            "compiler\\.err\\.((?:dot\\.class\\.)?expected.*|illegal\\..*|unclosed\\..*|empty\\.char\\.lit|int\\.number\\.too\\.large|premature\\.eof|not\\.stmt|malformed\\..*)");

    private final CellText cell;
    private final int snippetStart;
    private final NearMiss nearMiss;
    private final Slips slips;
    private final Habits habits;

    /**
     * @param cell         the whole cell
     * @param snippetStart where the failing statement begins in it
     * @param nearMiss     knows what could have been meant
     */
    CompileErrors(CellText cell, int snippetStart, NearMiss nearMiss) {
        this.cell = cell;
        this.snippetStart = snippetStart;
        this.nearMiss = nearMiss;
        this.slips = new Slips(cell.text());
        this.habits = new Habits(cell.text());
    }

    private record Error(int offset, String sentence) { }

    /** All errors of one statement as a failed outcome. */
    Outcome.Failed failed(List<Diag> diagnostics) {
        List<Diag> all = worthTelling(diagnostics.stream().filter(Diag::isError).toList());
        return outcome(all.stream().limit(MOST).map(this::error).distinct().toList(), all.size());
    }

    /** Of an error of syntax the rest mostly follows; and JShell's own wrapping makes a complaint of a missing return. */
    private static List<Diag> worthTelling(List<Diag> errors) {
        if (!errors.isEmpty() && isOfSyntax(errors.get(0))) {
            return errors.subList(0, 1);
        }
        List<Diag> others = errors.stream().filter(each -> !each.getCode().endsWith("missing.ret.stmt")).toList();
        return others.isEmpty() ? errors : others;
    }

    private static boolean isOfSyntax(Diag error) {
        return SYNTAX.matcher(error.getCode()).matches();
    }

    /** A declaration that needs what is not there. */
    Outcome.Failed failed(List<Missing> missing, int offset) {
        return outcome(missing.stream().map(each -> {
            int name = Math.max(offset, cell.text().indexOf(each.name(), offset));
            return new Error(name, "cannot find " + each.sort().word() + " " + each.name()
                    + nearMiss.hint(each, cell.text().substring(0, name)));
        }).toList(), missing.size());
    }

    /** One failure that the compiler does not tell. */
    Outcome.Failed failed(int offset, String sentence) {
        return outcome(List.of(new Error(offset, sentence)), 1);
    }

    private Outcome.Failed outcome(List<Error> found, int count) {
        List<Error> errors = found;
        if (errors.isEmpty()) {
            errors = List.of(new Error(snippetStart, "this cannot be compiled"));
        }
        var traceback = new ArrayList<String>();
        for (Error error : errors) {
            traceback.add("Cell line " + cell.lineOf(error.offset) + ": " + error.sentence);
            traceback.addAll(cell.withCaret(error.offset));
        }
        if (count > MOST) {
            traceback.add("... and " + (count - MOST) + " more errors");
        }
        return new Outcome.Failed(Outcome.Kind.COMPILATION, NAME, errors.get(0).sentence, traceback,
                cell.lineOf(errors.get(0).offset));
    }

    private Error error(Diag diagnostic) {
        int at = snippetStart + (int) Math.max(0, diagnostic.getPosition());
        var message = CompileMessage.of(diagnostic.getMessage(Locale.ENGLISH));
        Optional<Slips.Slip> slip = isOfSyntax(diagnostic) ? slips.at(at, message.sentence()) : Optional.empty();
        Optional<Error> known = slip.or(() -> habits.at(at, message.sentence()))
                .map(found -> new Error(found.offset(), found.sentence()));
        if (known.isPresent()) {
            return known.get();
        }
        if (message.sentence().startsWith("reached end of file")) {
            return openBracket().orElse(new Error(at, "the cell ends in the middle of a statement"));
        }
        if (message.missing().isEmpty()) {
            return new Error(at, message.sentence());
        }
        int name = cell.text().indexOf(message.missing().get().name(), at);
        int where = name < 0 ? at : name;
        return new Error(where, message.sentence() + nearMiss.hint(message.missing().get(),
                cell.text().substring(0, where)));
    }

    /** The innermost bracket that is never closed. */
    private Optional<Error> openBracket() {
        var open = new ArrayList<Tokens.Token>();
        for (Tokens.Token token : Tokens.withoutComments(cell.text())) {
            if (token.is('{') || token.is('(') || token.is('[')) {
                open.add(token);
            } else if ((token.is('}') || token.is(')') || token.is(']')) && !open.isEmpty()) {
                open.remove(open.size() - 1);
            }
        }
        return open.isEmpty() ? Optional.empty() : Optional.of(
                new Error(open.get(open.size() - 1).start(), "the cell ends before this "
                        + open.get(open.size() - 1).text() + " is closed"));
    }
}
