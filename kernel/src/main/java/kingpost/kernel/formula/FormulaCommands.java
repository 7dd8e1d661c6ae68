package kingpost.kernel.formula;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.regex.Pattern;

/** What commands mean, those with arguments included. */
final class FormulaCommands {

    private static final Pattern COLOUR = Pattern.compile("[A-Za-z]{1,30}|#[0-9A-Fa-f]{3,8}");
    private static final Map<String, String> TEXT_STYLES = Map.of("text", "", "textrm", "", "textnormal", "", "mbox", "",
            "textup", "", "textbf", "font-weight:bold", "textit", "font-style:italic", "texttt",
            "font-family:monospace", "textsf", "font-family:sans-serif", "emph", "font-style:italic");
    private static final Map<String, String> SIZES = Map.of("big", "1.2em", "Big", "1.8em", "bigg", "2.4em", "Bigg",
            "3em");
    private static final Pattern SIZED = Pattern.compile("(big|Big|bigg|Bigg)[lrm]?");
    private static final String STRUCK = "background:linear-gradient(to top right,transparent 47%,currentColor 48%,"
            + "currentColor 52%,transparent 53%)";

    private final FormulaParser parser;
    private final FormulaScanner scanner;

    FormulaCommands(FormulaParser parser) {
        this.parser = parser;
        this.scanner = parser.scanner();
    }

    /** What the command {@code name}, just taken, and its arguments amount to. */
    List<Node> read(String name, FormulaParser.Stop stop) {
        List<Node> symbol = symbol(name);
        if (symbol != null) {
            return symbol;
        }
        Face face = Face.byCommand(name);
        if (face != null) {
            return List.of(parser.argument(face));
        }
        if (TEXT_STYLES.containsKey(name)) {
            return List.of(text(scanner.takeRaw(), TEXT_STYLES.get(name)));
        }
        if (FormulaSymbols.ACCENTS.containsKey(name)) {
            return List.of(accented(name));
        }
        if (SIZED.matcher(name).matches()) {
            return List.of(sized(SIZES.get(name.replaceAll("[lrm]$", ""))));
        }
        return structure(name, stop);
    }

    private List<Node> symbol(String name) {
        if (FormulaSymbols.LETTERS.containsKey(name)) {
            String letter = FormulaSymbols.LETTERS.get(name);
            Node node = Node.text("mi", letter);
            boolean upright = !Character.isLetter(letter.codePointAt(0)) || Character.isUpperCase(letter.charAt(0));
            return List.of(upright ? node.with("mathvariant", "normal") : node);
        }
        if (FormulaSymbols.OPERATORS.containsKey(name)) {
            return List.of(Node.operator(FormulaSymbols.OPERATORS.get(name)));
        }
        if (FormulaSymbols.FUNCTIONS.contains(name) || FormulaSymbols.LIMIT_FUNCTIONS.contains(name)) {
            return List.of(Node.text("mi", name));
        }
        if (FormulaSymbols.SPACES.containsKey(name)) {
            return List.of(Node.space(FormulaSymbols.SPACES.get(name)));
        }
        return switch (name) {
            case "{", "}" -> List.of(Node.operator(name).with("stretchy", "false"));
            case "$", "%", "&", "#", "_" -> List.of(Node.text("mi", name).with("mathvariant", "normal"));
            case "|" -> List.of(Node.operator("\u2016"));
            case "-", "/" -> List.of();
            default -> null;
        };
    }

    private List<Node> structure(String name, FormulaParser.Stop stop) {
        return switch (name) {
            case "frac", "cfrac" -> List.of(fraction());
            case "tfrac" -> List.of(Node.of("mstyle", fraction()).with("displaystyle", "false"));
            case "dfrac" -> List.of(Node.of("mstyle", fraction()).with("displaystyle", "true"));
            case "binom" -> List.of(Node.of("mrow", Node.operator("("), fraction().with("linethickness", "0"),
                    Node.operator(")")));
            case "sqrt" -> List.of(root());
            case "left" -> List.of(fenced());
            case "middle" -> List.of(Node.operator(delimiter()).with("stretchy", "true"));
            case "overset", "stackrel" -> stacked("mover");
            case "underset" -> stacked("munder");
            case "begin" -> List.of(parser.tables().environment(scanner.takeRaw()));
            case "operatorname", "operatorname*" -> List.of(Node.text("mi", plain(scanner.takeRaw())));
            case "displaystyle" -> styled("displaystyle", "true", stop);
            case "textstyle" -> styled("displaystyle", "false", stop);
            default -> decoration(name, stop);
        };
    }

    private List<Node> decoration(String name, FormulaParser.Stop stop) {
        return switch (name) {
            case "boxed" -> List.of(Node.of("mrow", parser.argument()).with("style",
                    "border:1px solid;padding:0.25em 0.4em"));
            case "cancel" -> List.of(Node.of("mrow", parser.argument()).with("style", STRUCK));
            case "phantom" -> List.of(Node.of("mphantom", parser.argument()));
            case "not" -> List.of(Node.operator(text(parser.argument()) + "\u0338"));
            case "textcolor" -> {
                String colour = scanner.takeRaw();
                yield List.of(coloured(colour, List.of(parser.argument())));
            }
            case "color" -> {
                String colour = scanner.takeRaw();
                yield List.of(coloured(colour, parser.row(stop)));
            }
            case "hspace" -> List.of(Node.space(width(scanner.takeRaw())));
            case "tag", "tag*" -> {
                String label = plain(scanner.takeRaw());
                yield List.of(Node.space("2em"), Node.text("mtext", name.equals("tag") ? "(" + label + ")" : label));
            }
            case "label" -> {
                scanner.takeRaw();
                yield List.of();
            }
            case "end", "right", "nonumber", "notag", "hline", "\\", "cr", "limits", "nolimits", "" -> List.of();
            default -> List.of(Node.text("mtext", "\\" + name).with("class", "tex-source"));
        };
    }

    private Node fraction() {
        Node top = parser.argument();
        return Node.of("mfrac", top, parser.argument());
    }

    private Node root() {
        String degree = scanner.takeOption();
        Node radicand = parser.argument();
        return degree.isEmpty() ? Node.of("msqrt", radicand)
                : Node.of("mroot", radicand, Node.row(new FormulaParser(degree).formula()));
    }

    private Node fenced() {
        String open = delimiter();
        List<Node> row = new ArrayList<>(parser.row(FormulaParser.Stop.FENCE));
        String close = scanner.peekCommand().equals("right") ? closing() : "";
        if (!open.isEmpty()) {
            row.add(0, fence(open, "prefix"));
        }
        if (!close.isEmpty()) {
            row.add(fence(close, "postfix"));
        }
        return Node.of("mrow", row);
    }

    private static Node fence(String delimiter, String form) {
        return Node.operator(delimiter).with(Map.of("form", form, "stretchy", "true", "fence", "true"));
    }

    private String closing() {
        scanner.takeCommand();
        return delimiter();
    }

    private String delimiter() {
        scanner.skipSpace();
        if (scanner.peek() != '\\') {
            String c = scanner.atEnd() ? "" : scanner.take();
            return c.equals(".") ? "" : c;
        }
        String name = scanner.takeCommand();
        return switch (name) {
            case "{", "}" -> name;
            case "|" -> "\u2016";
            default -> FormulaSymbols.OPERATORS.getOrDefault(name, "");
        };
    }

    private Node sized(String size) {
        return Node.operator(delimiter()).with(Map.of("minsize", size, "maxsize", size, "stretchy", "true"));
    }

    private Node accented(String name) {
        String mark = FormulaSymbols.ACCENTS.get(name);
        boolean below = mark.startsWith("_");
        Node accent = Node.operator(below ? mark.substring(1) : mark)
                .with("stretchy", Boolean.toString(name.matches("over.*|under.*|wide.*")));
        Node node = Node.of(below ? "munder" : "mover", parser.argument(), accent)
                .with(below ? "accentunder" : "accent", "true");
        return name.endsWith("brace") ? node.with("data-brace", "true") : node;
    }

    private List<Node> stacked(String element) {
        Node mark = parser.argument();
        return List.of(Node.of(element, parser.argument(), mark));
    }

    private List<Node> styled(String attribute, String value, FormulaParser.Stop stop) {
        return List.of(Node.of("mstyle", parser.row(stop)).with(attribute, value));
    }

    private static Node coloured(String colour, List<Node> row) {
        Node style = Node.of("mstyle", row);
        return COLOUR.matcher(colour).matches() ? style.with("mathcolor", colour) : style;
    }

    private static String width(String raw) {
        return raw.matches("-?[0-9.]{1,6}(em|ex|px|pt|mm|cm)") ? raw : "0.5em";
    }

    private static String text(Node node) {
        StringBuilder all = new StringBuilder(node.text());
        node.children().forEach(child -> all.append(text(child)));
        return all.toString();
    }

    private static Node text(String raw, String style) {
        List<Node> pieces = new ArrayList<>();
        String[] parts = raw.split("(?<!\\\\)\\$", -1);
        for (int i = 0; i < parts.length; i++) {
            if (i % 2 == 1) {
                pieces.addAll(new FormulaParser(parts[i]).formula());
            } else if (!parts[i].isEmpty()) {
                Node piece = Node.text("mtext", plain(parts[i]));
                pieces.add(style.isEmpty() ? piece : piece.with("style", style));
            }
        }
        return Node.row(pieces);
    }

    /** Text without its commands: escaped signs stand for themselves, spaces are kept at both ends. */
    private static String plain(String raw) {
        String text = raw.replaceAll("\\\\([$%&#_{}])", "$1").replace("~", "\u00a0").replaceAll("\\\\[,;: ]", "\u00a0")
                .replaceAll("\\\\[A-Za-z]+\\s*", "").replaceAll("[{}](?=.|$)", "");
        return text.replaceAll("^\\s+", "\u00a0").replaceAll("\\s+$", "\u00a0");
    }
}
