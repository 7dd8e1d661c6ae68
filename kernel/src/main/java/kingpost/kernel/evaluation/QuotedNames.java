package kingpost.kernel.evaluation;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import kingpost.kernel.evaluation.Tokens.Sort;
import kingpost.kernel.evaluation.Tokens.Token;

/**
 * A cursor inside a text literal that is an argument of a method call.
 *
 * @param root   the first word of the call chain: {@code canopy} in {@code canopy.solve().force("A}
 * @param method the method whose argument it is: {@code force}
 * @param start  where the word at the cursor begins
 * @param typed  the word as far as it is typed
 */
record QuotedNames(String root, String method, int start, String typed) {

    /** The situation before the cursor, if it is one. */
    static Optional<QuotedNames> at(String beforeCursor) {
        List<Token> tokens = Tokens.withoutComments(beforeCursor);
        if (tokens.isEmpty()) {
            return Optional.empty();
        }
        Token last = tokens.get(tokens.size() - 1);
        if (last.sort() != Sort.LITERAL || !last.open() || last.end() != beforeCursor.length()
                || !last.text().startsWith("\"") || last.text().startsWith("\"\"\"")) {
            return Optional.empty();
        }
        int open = openParenthesis(tokens);
        if (open < 1 || !tokens.get(open - 1).isWord()) {
            return Optional.empty();
        }
        int start = wordStart(beforeCursor, last.start() + 1);
        return Optional.of(new QuotedNames(root(tokens, open - 1), tokens.get(open - 1).text(), start,
                beforeCursor.substring(start)));
    }

    /** A text may hold several names, as in {@code "AB BC"}. */
    private static int wordStart(String text, int from) {
        int start = text.length();
        while (start > from && " ,;".indexOf(text.charAt(start - 1)) < 0) {
            start--;
        }
        return start;
    }

    /** Index of the parenthesis whose arguments hold the last token; -1 when there is none. */
    private static int openParenthesis(List<Token> tokens) {
        int depth = 0;
        for (int i = tokens.size() - 2; i >= 0; i--) {
            Token token = tokens.get(i);
            if (token.is(')')) {
                depth++;
            } else if (token.is('(') && depth-- == 0) {
                return i;
            } else if (token.is(';') || token.is('{') || token.is('}')) {
                return -1;
            }
        }
        return -1;
    }

    /** The first word of the chain that ends with the method at this index. */
    private static String root(List<Token> tokens, int method) {
        int at = method;
        while (at >= 2 && tokens.get(at - 1).is('.')) {
            at -= 2;
            int depth = 0;
            while (at > 0 && (tokens.get(at).is(')') || depth > 0)) {
                depth += tokens.get(at).is(')') ? 1 : tokens.get(at).is('(') ? -1 : 0;
                at--;
            }
        }
        return tokens.get(at).text();
    }

    /** Joints that the code itself names, for a truss that is still being written down. */
    static List<String> jointsIn(String code) {
        Set<String> names = new LinkedHashSet<>();
        List<Token> tokens = Tokens.withoutComments(code);
        for (int i = 0; i + 2 < tokens.size(); i++) {
            Token text = tokens.get(i + 2);
            if (tokens.get(i).text().equals("joint") && tokens.get(i + 1).is('(') && text.sort() == Sort.LITERAL
                    && !text.open()) {
                names.add(text.text().substring(1, text.text().length() - 1));
            }
        }
        return new ArrayList<>(names);
    }
}
