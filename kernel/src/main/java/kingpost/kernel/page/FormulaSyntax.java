package kingpost.kernel.page;

import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.commonmark.node.Block;
import org.commonmark.node.CustomBlock;
import org.commonmark.node.CustomNode;
import org.commonmark.parser.Parser;
import org.commonmark.parser.SourceLine;
import org.commonmark.parser.beta.InlineContentParser;
import org.commonmark.parser.beta.InlineContentParserFactory;
import org.commonmark.parser.beta.InlineParserState;
import org.commonmark.parser.beta.ParsedInline;
import org.commonmark.parser.beta.Position;
import org.commonmark.parser.beta.Scanner;
import org.commonmark.parser.block.AbstractBlockParser;
import org.commonmark.parser.block.AbstractBlockParserFactory;
import org.commonmark.parser.block.BlockContinue;
import org.commonmark.parser.block.BlockStart;
import org.commonmark.parser.block.MatchedBlockParser;
import org.commonmark.parser.block.ParserState;

/**
 * Mathematics in Markdown: {@code $...$} within a line, {@code $$...$$} and LaTeX environments on lines of their own.
 * A dollar sign is an amount of money where what follows cannot be a formula: {@code $5 and $10}.
 */
final class FormulaSyntax {

    private FormulaSyntax() {
    }

    static Parser.Builder addTo(Parser.Builder parser) {
        return parser.customBlockParserFactory(new BlockFactory()).customInlineContentParserFactory(new InlineFactory());
    }

    /** A formula within a line. */
    static final class InlineFormula extends CustomNode {
        final String tex;
        final boolean display;

        InlineFormula(String tex, boolean display) {
            this.tex = tex;
            this.display = display;
        }
    }

    /** A formula on lines of its own; a blank line ends it even if its closing mark was forgotten. */
    static final class FormulaBlock extends CustomBlock {
        String tex = "";
    }

    private static final class InlineFactory implements InlineContentParserFactory {
        @Override
        public Set<Character> getTriggerCharacters() {
            return Set.of('$');
        }

        @Override
        public InlineContentParser create() {
            return FormulaSyntax::inline;
        }
    }

    private static ParsedInline inline(InlineParserState state) {
        Scanner scanner = state.scanner();
        boolean display = scanner.matchMultiple('$') == 2;
        Position start = scanner.position();
        boolean spaceFirst = Character.isWhitespace(scanner.peek());
        while (scanner.find('$') >= 0) {
            boolean escaped = isEscaped(scanner.getSource(start, scanner.position()).getContent());
            boolean spaceLast = Character.isWhitespace(scanner.peekPreviousCodePoint());
            Position end = scanner.position();
            int signs = scanner.matchMultiple('$');
            String tex = scanner.getSource(start, end).getContent();
            boolean money = !display && (spaceFirst != spaceLast || Character.isDigit(scanner.peek()));
            if (!escaped && signs == (display ? 2 : 1) && !tex.isBlank()) {
                return money ? ParsedInline.none()
                        : ParsedInline.of(new InlineFormula(tex, display), scanner.position());
            }
        }
        return ParsedInline.none();
    }

    private static boolean isEscaped(String before) {
        int backslashes = 0;
        while (backslashes < before.length() && before.charAt(before.length() - 1 - backslashes) == '\\') {
            backslashes++;
        }
        return backslashes % 2 == 1;
    }

    private static final class BlockFactory extends AbstractBlockParserFactory {

        private static final Pattern START = Pattern.compile(
                "\\$\\$(?!\\$).*|\\\\begin\\{(align|aligned|equation|eqnarray|gather|multline)\\*?}.*");

        @Override
        public BlockStart tryStart(ParserState state, MatchedBlockParser matched) {
            CharSequence line = state.getLine().getContent();
            String rest = line.subSequence(state.getNextNonSpaceIndex(), line.length()).toString();
            if (state.getIndent() >= 4 || !START.matcher(rest).matches()) {
                return BlockStart.none();
            }
            boolean dollars = rest.startsWith("$$");
            int close = rest.indexOf("$$", 2);
            if (dollars && close >= 0 && !rest.substring(close + 2).isBlank()) {
                return BlockStart.none();
            }
            return BlockStart.of(new FormulaBlockParser(dollars ? "$$" : closing(rest)))
                    .atIndex(state.getNextNonSpaceIndex());
        }

        private static String closing(String rest) {
            Matcher begin = Pattern.compile("\\\\begin\\{([a-z*]+)}").matcher(rest);
            begin.find();
            return "\\end{" + begin.group(1) + "}";
        }
    }

    private static final class FormulaBlockParser extends AbstractBlockParser {

        private final FormulaBlock block = new FormulaBlock();
        private final StringBuilder text = new StringBuilder();
        private final String closing;
        private boolean closed;

        FormulaBlockParser(String closing) {
            this.closing = closing;
        }

        @Override
        public Block getBlock() {
            return block;
        }

        @Override
        public BlockContinue tryContinue(ParserState state) {
            return closed || state.isBlank() ? BlockContinue.none() : BlockContinue.atIndex(state.getIndex());
        }

        @Override
        public void addLine(SourceLine line) {
            text.append(text.length() == 0 ? "" : "\n").append(line.getContent());
            int from = closing.equals("$$") ? 2 : 0;
            closed = text.length() >= from && text.indexOf(closing, from) >= 0;
        }

        @Override
        public void closeBlock() {
            String all = text.toString().strip();
            block.tex = closing.equals("$$") ? all.replaceAll("^\\$\\$|\\$\\$\\s*$", "") : all;
        }
    }
}
