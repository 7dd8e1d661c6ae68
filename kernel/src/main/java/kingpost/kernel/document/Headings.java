package kingpost.kernel.document;

import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Finds what a notebook is called. */
final class Headings {

    private static final Pattern FIRST = Pattern.compile("(?m)^ {0,3}#{1,3}[ \\t]+(.+?)[ \\t]*#*$");

    private Headings() {
    }

    /** The first heading of a markdown cell, without its marks. */
    static Optional<String> firstOf(Cell cell) {
        if (!(cell instanceof Cell.Markdown)) {
            return Optional.empty();
        }
        Matcher heading = FIRST.matcher(cell.source());
        return heading.find() ? Optional.of(heading.group(1).replaceAll("[*_`]", "")) : Optional.empty();
    }
}
