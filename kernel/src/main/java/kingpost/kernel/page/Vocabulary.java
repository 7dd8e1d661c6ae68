package kingpost.kernel.page;

import org.jsoup.safety.Safelist;

/**
 * What a notebook may put on the page: text, tables, pictures and formulas.
 *
 * <p>Source: HTML (WHATWG), SVG 2 and MathML Core (W3C): elements without behaviour.
 */
final class Vocabulary {

    /** Elements whose content goes with them. */
    static final String DROPPED_WHOLE = "script, style, template, noscript, iframe, frame, frameset, noframes, noembed,"
            + " object, embed, applet, audio, video, canvas, textarea, select, input, button, xmp, plaintext, listing,"
            + " base, link, meta, foreignObject, annotation, annotation-xml, mglyph, malignmark, set, animate,"
            + " animateMotion, animateTransform, feImage, portal";

    private static final String HTML = "a abbr b bdi bdo blockquote br caption center cite code col colgroup dd del"
            + " details dfn div dl dt em figcaption figure h1 h2 h3 h4 h5 h6 hr i img ins kbd li mark ol p pre q s samp"
            + " section article aside header footer small span strike strong sub summary sup table tbody td tfoot th"
            + " thead tr tt u ul var wbr";
    private static final String SVG = "svg g defs symbol use title desc path line polyline polygon rect circle ellipse"
            + " text tspan textPath marker linearGradient radialGradient stop clipPath mask pattern";
    private static final String MATHML = "math mrow mi mn mo ms mtext mspace mfrac msqrt mroot mstyle merror mpadded"
            + " mphantom mfenced menclose msub msup msubsup munder mover munderover mmultiscripts mprescripts mtable mtr"
            + " mtd none";
    private static final String ANYWHERE = "id class style title lang dir role aria-label aria-labelledby"
            + " aria-describedby aria-hidden";
    private static final String SVG_ATTRIBUTES = "xmlns width height viewBox preserveAspectRatio x y x1 y1 x2 y2 cx cy r"
            + " rx ry d points dx dy rotate transform fill fill-opacity fill-rule stroke stroke-width stroke-opacity"
            + " stroke-linecap stroke-linejoin stroke-miterlimit stroke-dasharray stroke-dashoffset opacity color display"
            + " visibility vector-effect paint-order font-family font-size font-style font-weight text-anchor"
            + " dominant-baseline alignment-baseline baseline-shift letter-spacing textLength lengthAdjust href"
            + " xlink:href marker-start marker-mid marker-end markerWidth markerHeight markerUnits orient refX refY"
            + " offset stop-color stop-opacity gradientUnits gradientTransform spreadMethod fx fy clip-path clip-rule"
            + " clipPathUnits mask maskUnits maskContentUnits patternUnits patternContentUnits patternTransform"
            + " shape-rendering text-rendering startOffset";
    private static final String MATHML_ATTRIBUTES = "xmlns display displaystyle scriptlevel mathvariant mathcolor"
            + " mathbackground mathsize form fence separator stretchy symmetric minsize maxsize largeop movablelimits"
            + " lspace rspace accent accentunder linethickness width height depth voffset columnalign rowalign"
            + " columnspacing rowspacing columnspan rowspan notation open close separators intent arg";

    private Vocabulary() {
    }

    static Safelist safelist() {
        Safelist list = new Safelist().addTags(words(HTML)).addTags(words(SVG)).addTags(words(MATHML))
                .addAttributes(":all", words(ANYWHERE))
                .addAttributes("a", "href").addAttributes("img", "src", "alt", "width", "height")
                .addAttributes("ol", "start", "type", "reversed").addAttributes("li", "value")
                .addAttributes("td", "colspan", "rowspan", "headers", "align", "valign")
                .addAttributes("th", "colspan", "rowspan", "headers", "scope", "abbr", "align", "valign")
                .addAttributes("col", "span").addAttributes("colgroup", "span").addAttributes("details", "open");
        for (String element : words(SVG)) {
            list.addAttributes(element, words(SVG_ATTRIBUTES));
        }
        for (String element : words(MATHML)) {
            list.addAttributes(element, words(MATHML_ATTRIBUTES));
        }
        return list.preserveRelativeLinks(true);
    }

    private static String[] words(String list) {
        return list.split(" ");
    }
}
