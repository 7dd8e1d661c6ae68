package kingpost.diagram;

import kingpost.svg.Style;

/** Colours and lines. Every pair that must be told apart differs in form or lightness too, not in hue alone. */
final class Ink {

    static final String BLACK = "#1b1f24";
    static final String MEMBER = "#4a5058";
    static final String FAINT = "#9aa1a9";
    static final String ZERO = "#5f666e";
    static final String PALE = "#c9cdd2";
    static final String PAPER = "#ffffff";
    static final String TENSION = "#14579c";
    static final String COMPRESSION = "#a33d0c";
    static final String REACTION = "#19664f";
    static final String UNKNOWN = "#6a3d99";
    static final String MARKED = "#ffe08a";

    private Ink() {
    }

    static Style line(String colour, double width) {
        return Style.stroke(colour, width).rounded();
    }
}
