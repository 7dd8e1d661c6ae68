package kingpost.render;

/**
 * LaTeX and Markdown in one text, each read as if the other were not there.
 *
 * <p>Converters to PDF want {@code text/latex}, and with it draw the figures. A front end that shows
 * {@code text/latex} by its Markdown viewer, in preference to {@code text/markdown}, would print sections and tables as
 * their commands. So the LaTeX stands in an HTML comment, which Markdown leaves out, and the Markdown in a conditional
 * that is false, which LaTeX skips. The first line opens the comment: LaTeX reads an empty formula there, begun on
 * this line and ended on the next; Markdown reads an empty formula, then the comment.
 */
final class PortableLatex {

    private static final String OPEN = "$\\relax%$<!--\n$\\unskip\n";
    private static final String BETWEEN = "\n\\iffalse\n% -->\n\n";
    private static final String CLOSE = "\n\n<!--\n\\fi\n% -->\n";

    private PortableLatex() {
    }

    /**
     * Both in one.
     *
     * @param latex    without two hyphens in a row, which could end a comment
     * @param markdown of the same content
     */
    static String of(String latex, String markdown) {
        String oneParagraph = latex.strip().replaceAll("\n\\s*\n", "\n\\\\par\n");
        return OPEN + oneParagraph + BETWEEN + markdown.strip() + CLOSE;
    }
}
