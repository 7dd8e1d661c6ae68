package kingpost.kernel.formula;

import java.util.ArrayList;
import java.util.List;

/**
 * Reads a formula into MathML: rows of atoms, each with its scripts. What commands with arguments mean is in
 * {@link FormulaCommands}, environments and lines in {@link FormulaTable}.
 */
final class FormulaParser {

    /** What ends a row, besides the end of the formula. */
    enum Stop { NEVER, BRACE, CELL, FENCE }

    private static final int MAX_DEPTH = 60;

    private final FormulaScanner scanner;
    private final FormulaCommands commands;
    private final FormulaTable tables;
    private Face face = Face.ITALIC;
    private int depth;

    FormulaParser(String tex) {
        this.scanner = new FormulaScanner(tex);
        this.commands = new FormulaCommands(this);
        this.tables = new FormulaTable(this);
    }

    FormulaScanner scanner() {
        return scanner;
    }

    FormulaTable tables() {
        return tables;
    }

    /** The whole formula; several lines of it become a table. */
    List<Node> formula() {
        List<List<List<Node>>> lines = tables.cells(Stop.NEVER);
        if (lines.size() == 1 && lines.get(0).size() == 1) {
            return lines.get(0).get(0);
        }
        return List.of(tables.aligned(lines));
    }

    /** A row up to {@code stop}, which is left in place. */
    List<Node> row(Stop stop) {
        deeper();
        List<Node> row = new ArrayList<>();
        scanner.skipSpace();
        while (!scanner.atEnd() && !stops(stop)) {
            row.addAll(element(stop));
            scanner.skipSpace();
        }
        depth--;
        return Node.signed(row);
    }

    /** As {@link #row}, set in another face. */
    Node argument(Face in) {
        Face before = face;
        face = in;
        try {
            return argument();
        } finally {
            face = before;
        }
    }

    /** What a command takes as its argument: a group, a command, or one character. */
    Node argument() {
        scanner.skipSpace();
        if (scanner.atEnd() || scanner.peek() == '}') {
            return Node.of("mrow");
        }
        if (scanner.peek() == '{') {
            return group();
        }
        if (Character.isDigit(scanner.peek())) {
            return face.number(scanner.take());
        }
        deeper();
        List<Node> atom = atom(Stop.BRACE);
        depth--;
        return Node.row(atom);
    }

    /** A group in braces, or nothing if none comes next. */
    Node group() {
        if (!scanner.take("{")) {
            return Node.of("mrow");
        }
        List<Node> row = row(Stop.BRACE);
        scanner.take("}");
        return Node.row(row);
    }

    /** The base with the scripts that follow it. */
    Node scripted(Node base, boolean limits) {
        Node below = null;
        Node above = null;
        StringBuilder primes = new StringBuilder();
        boolean stacked = limits;
        while (true) {
            scanner.skipSpace();
            if (scanner.take("_")) {
                below = argument();
            } else if (scanner.take("^")) {
                above = argument();
            } else if (scanner.take("'")) {
                primes.append('\u2032');
            } else if (scanner.peekCommand().endsWith("limits")) {
                stacked = scanner.takeCommand().equals("limits");
            } else {
                return withScripts(base, below, raised(primes.toString(), above), stacked);
            }
        }
    }

    private boolean stops(Stop stop) {
        String command = scanner.peekCommand();
        boolean line = command.equals("\\") || command.equals("cr");
        return switch (stop) {
            case NEVER -> scanner.peek() == '&' || line;
            case BRACE -> scanner.peek() == '}';
            case CELL -> scanner.peek() == '&' || line || command.equals("end");
            case FENCE -> command.equals("right") || scanner.peek() == '}' || command.equals("end");
        };
    }

    private List<Node> element(Stop stop) {
        List<Node> atom = atom(stop);
        if (atom.size() != 1) {
            return atom;
        }
        Node base = atom.get(0);
        boolean function = isFunction(base);
        Node done = scripted(base, FormulaSymbols.LIMIT_OPERATORS.contains(base.text())
                || FormulaSymbols.LIMIT_FUNCTIONS.contains(base.text()) && function
                || base.attributes().containsKey("data-brace"));
        return function && wantsSpace() ? List.of(done, Node.space("0.167em")) : List.of(done);
    }

    private boolean isFunction(Node node) {
        return node.name().equals("mi")
                && (FormulaSymbols.FUNCTIONS.contains(node.text()) || FormulaSymbols.LIMIT_FUNCTIONS.contains(node.text()));
    }

    private boolean wantsSpace() {
        scanner.skipSpace();
        return !scanner.atEnd() && "([}&,=<>+-".indexOf(scanner.peek()) < 0 && !scanner.peekCommand().equals("left");
    }

    private List<Node> atom(Stop stop) {
        char c = scanner.peek();
        if (c == '{') {
            return List.of(group());
        }
        if (c == '\\') {
            return commands.read(scanner.takeCommand(), stop);
        }
        if (Character.isDigit(c)) {
            return List.of(face.number(scanner.takeNumber()));
        }
        if (c == '_' || c == '^' || c == '\'') {
            return List.of(Node.of("mrow"));
        }
        if (Character.isLetter(scanner.peekCodePoint())) {
            return List.of(face.identifier(letters()));
        }
        return character(scanner.take());
    }

    private String letters() {
        StringBuilder word = new StringBuilder(scanner.take());
        while (face.setsWords() && Character.isLetter(scanner.peekCodePoint())) {
            word.append(scanner.take());
        }
        return word.toString();
    }

    private static List<Node> character(String c) {
        return switch (c) {
            case "}", "&", "$", "%" -> List.of();
            case "-" -> List.of(Node.operator("\u2212"));
            case "*" -> List.of(Node.operator("\u2217"));
            case "~" -> List.of(Node.space("0.25em"));
            case "(", ")", "[", "]", "|", "/" -> List.of(Node.operator(c).with("stretchy", "false"));
            case "\u00b0" -> List.of(Node.text("mi", c));
            default -> List.of(Node.operator(c));
        };
    }

    private static Node raised(String primes, Node above) {
        if (primes.isEmpty()) {
            return above;
        }
        Node marks = Node.operator(primes);
        return above == null ? marks : Node.of("mrow", marks, above);
    }

    private static Node withScripts(Node base, Node below, Node above, boolean stacked) {
        if (below != null && above != null) {
            return Node.of(stacked ? "munderover" : "msubsup", base, below, above);
        }
        if (below != null) {
            return Node.of(stacked ? "munder" : "msub", base, below);
        }
        return above == null ? base : Node.of(stacked ? "mover" : "msup", base, above);
    }

    private void deeper() {
        if (++depth > MAX_DEPTH) {
            throw new FormulaTooDeep(MAX_DEPTH);
        }
    }
}
