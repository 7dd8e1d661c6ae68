package kingpost.kernel.formula;

import java.util.Map;

/** The faces that letters can be set in. */
enum Face {

    ITALIC("", false),
    UPRIGHT("", true),
    BOLD("font-weight:bold", true),
    SANS("font-family:sans-serif", true),
    MONO("font-family:monospace", true),
    SCRIPT("", false) {
        @Override
        String glyphs(String letters) {
            return mapped(letters, 0x1d49c, "B\u212cE\u2130F\u2131H\u210bI\u2110L\u2112M\u2133R\u211b");
        }
    },
    DOUBLE("", false) {
        @Override
        String glyphs(String letters) {
            return mapped(letters, 0x1d538, "C\u2102H\u210dN\u2115P\u2119Q\u211aR\u211dZ\u2124");
        }
    };

    private static final Map<String, Face> BY_COMMAND = Map.ofEntries(Map.entry("mathrm", UPRIGHT),
            Map.entry("mathup", UPRIGHT), Map.entry("mathbf", BOLD), Map.entry("boldsymbol", BOLD),
            Map.entry("bm", BOLD), Map.entry("mathit", ITALIC), Map.entry("mathsf", SANS), Map.entry("mathtt", MONO),
            Map.entry("mathcal", SCRIPT), Map.entry("mathscr", SCRIPT), Map.entry("mathbb", DOUBLE));

    private final String css;
    private final boolean upright;

    Face(String css, boolean upright) {
        this.css = css;
        this.upright = upright;
    }

    /** The face that a command such as {@code mathrm} chooses, or null. */
    static Face byCommand(String command) {
        return BY_COMMAND.get(command);
    }

    /** True: a word is one identifier; false: each letter is one. */
    boolean setsWords() {
        return upright;
    }

    String glyphs(String letters) {
        return letters;
    }

    /** An identifier in this face. */
    Node identifier(String letters) {
        Node node = Node.text("mi", glyphs(letters));
        if (upright && letters.codePointCount(0, letters.length()) == 1) {
            node = node.with("mathvariant", "normal");
        }
        return css.isEmpty() ? node : node.with("style", css);
    }

    /** A number in this face. */
    Node number(String digits) {
        Node node = Node.text("mn", digits);
        return css.isEmpty() ? node : node.with("style", css);
    }

    private static String mapped(String letters, int capitalA, String exceptions) {
        StringBuilder out = new StringBuilder();
        letters.codePoints().forEach(c -> {
            int exception = exceptions.indexOf(c);
            if (exception >= 0) {
                out.append(exceptions.charAt(exception + 1));
            } else {
                out.appendCodePoint(c >= 'A' && c <= 'Z' ? capitalA + c - 'A' : c);
            }
        });
        return out.toString();
    }
}
