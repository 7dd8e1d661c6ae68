package kingpost.kernel.print;

import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.IntStream;
import org.w3c.dom.Element;
import org.w3c.dom.Node;

/**
 * Lays out a formula written in MathML Core: fractions, roots, subscripts, tables lined up at their relation.
 *
 * <p><b>Units</b>: all lengths in sizes of the font around the formula. What it does not know it sets as a row.
 *
 * <p>Source: W3C, MathML Core, for what the elements mean; proportions by eye.
 */
final class MathLayout {

    private static final double AXIS = 0.26;
    private static final double BAR = 0.05;
    private static final double SCRIPT = 0.71;
    private static final double IN_LINE_FRACTION = 0.78;
    private static final double LARGE_SIGN = 1.4;
    private static final String RELATIONS = "=\u2248<>\u2264\u2265\u2260\u2192\u21d2\u2261\u226a\u226b\u221d\u2208:\u2190\u21d4\u27f9\u27f6\u2a7d\u2a7e\u2254";
    private static final String SUMS = "+\u2212-\u00b1\u2213\u00b7\u00d7\u00f7\u22c5\u2217";
    private static final String FENCES = "()[]{}|\u2016\u2308\u2309\u230a\u230b\u27e8\u27e9";
    private static final String LARGE = "\u2211\u220f\u222b\u222e\u22c2\u22c3";
    private static final Set<String> ACCENTS = Set.of("^", "~", "\u02d9", "\u00a8", "\u00af", "\u203e", "\u2192", "\u02c6",
            "\u02dc", "\u20d7", "_");

    /** The formula, laid out. */
    MathBox of(Element math) {
        boolean display = math.getAttribute("display").equals("block")
                || math.getAttribute("displaystyle").equals("true");
        MathBox box = row(children(math), display, false);
        return isTable(math) ? box : box.saying(MathWords.of(math));
    }

    /** Whether lines under each other are all there is: each is then read as a line. */
    private static boolean isTable(Element element) {
        List<Element> parts = children(element);
        return element.getNodeName().equals("mtable") || parts.size() == 1 && isTable(parts.get(0));
    }

    private MathBox node(Element element, boolean display, boolean script) {
        List<Element> parts = children(element);
        return switch (element.getNodeName().toLowerCase(java.util.Locale.ROOT)) {
            case "mi", "mn", "mtext", "ms", "mo" -> MathLetters.of(text(element), font(element));
            case "mspace" -> MathBox.space(length(element.getAttribute("width")));
            case "mfrac" -> parts.size() < 2 ? row(parts, display, script)
                    : fraction(part(parts, 0, false, script), part(parts, 1, false, script),
                            display ? 1 : IN_LINE_FRACTION);
            case "msqrt" -> root(row(parts, display, script));
            case "mroot" -> indexed(root(part(parts, 0, display, script)), part(parts, 1, false, true));
            case "msub" -> scripts(parts, display, script, 1, 0);
            case "msup" -> scripts(parts, display, script, 0, 1);
            case "msubsup" -> scripts(parts, display, script, 1, 2);
            case "munder" -> stacked(parts, display, script, 1, 0);
            case "mover" -> stacked(parts, display, script, 0, 1);
            case "munderover" -> stacked(parts, display, script, 1, 2);
            case "mtable" -> new MathTable(parts.stream().map(line -> children(line)).toList())
                    .box(cell -> row(children(cell), display || element.getAttribute("displaystyle").equals("true"), script),
                            AXIS);
            case "mfenced" -> fenced(row(parts, display, script));
            case "mphantom" -> hidden(row(parts, display, script));
            case "mstyle" -> row(parts, element.hasAttribute("displaystyle")
                    ? element.getAttribute("displaystyle").equals("true") : display, script);
            case "none", "mprescripts" -> MathBox.EMPTY;
            default -> row(parts, display, script);
        };
    }

    private MathBox part(List<Element> parts, int index, boolean display, boolean script) {
        return index < parts.size() ? node(parts.get(index), display, script) : MathBox.EMPTY;
    }

    /** Parts side by side: signs get their room, brackets the height of what they enclose. */
    private MathBox row(List<Element> parts, boolean display, boolean script) {
        List<MathBox> boxes = new ArrayList<>();
        for (int i = 0; i < parts.size(); i++) {
            Element part = parts.get(i);
            MathBox box = node(part, display, script);
            boolean sign = part.getNodeName().equals("mo");
            if (sign && display && text(part).length() == 1 && LARGE.contains(text(part))) {
                box = large(box);
            }
            double room = sign && !script ? room(part, i == 0 || isOpening(parts.get(i - 1))) : 0;
            boxes.add(box.padded(text(part).equals(",") || room == 0 ? 0 : room, room, 0, 0));
        }
        return MathBox.row(withTallFences(parts, boxes));
    }

    /** A sign after a relation or a bracket belongs to what follows it. */
    private static boolean isOpening(Element before) {
        return before.getNodeName().equals("mo") && (RELATIONS + "([{,").contains(text(before))
                && !text(before).isEmpty();
    }

    private static double room(Element sign, boolean first) {
        String text = text(sign);
        boolean prefix = sign.getAttribute("form").equals("prefix") || first && !sign.getAttribute("form").equals("infix");
        if (text.isEmpty()) {
            return 0;
        }
        return RELATIONS.contains(text) ? 0.28 : SUMS.contains(text) && !prefix ? 0.22 : text.equals(",") ? 0.2 : 0;
    }

    private static List<MathBox> withTallFences(List<Element> parts, List<MathBox> boxes) {
        double up = 0.7;
        double down = 0.2;
        for (MathBox box : boxes) {
            up = Math.max(up, box.ascent());
            down = Math.max(down, box.descent());
        }
        if (up <= 0.95 && down <= 0.3) {
            return boxes;
        }
        double half = Math.max(up - AXIS, down + AXIS) + 0.05;
        List<MathBox> all = new ArrayList<>(boxes);
        for (int i = 0; i < parts.size(); i++) {
            String text = text(parts.get(i));
            boolean stretches = parts.get(i).getNodeName().equals("mo") && text.length() == 1 && FENCES.contains(text)
                    && !parts.get(i).getAttribute("stretchy").equals("false");
            if (stretches) {
                all.set(i, MathLetters.stretched(text, half + AXIS, half - AXIS));
            }
        }
        return all;
    }

    private static MathBox large(MathBox sign) {
        MathBox large = sign.scaled(LARGE_SIGN);
        return MathBox.space(large.width()).with(large, 0, 0.15);
    }

    private static MathBox fenced(MathBox content) {
        double half = Math.max(0.45, Math.max(content.ascent() - AXIS, content.descent() + AXIS) + 0.05);
        return MathBox.row(List.of(MathLetters.stretched("(", half + AXIS, half - AXIS), content,
                MathLetters.stretched(")", half + AXIS, half - AXIS)));
    }

    private static MathBox hidden(MathBox box) {
        return new MathBox(box.width(), box.ascent(), box.descent(), List.of());
    }

    private static MathBox fraction(MathBox above, MathBox below, double scale) {
        MathBox top = above.scaled(scale);
        MathBox bottom = below.scaled(scale);
        double gap = 0.19 * scale;
        double width = Math.max(top.width(), bottom.width()) + 0.16;
        MathBox room = MathBox.space(width + 0.12);
        return room.with(top, 0.06 + (width - top.width()) / 2, -(AXIS + BAR / 2 + gap + top.descent()))
                .with(bottom, 0.06 + (width - bottom.width()) / 2, -AXIS + BAR / 2 + gap + bottom.ascent())
                .drawn(new Mark.Bar(0.06, -AXIS - BAR / 2, width, BAR));
    }

    private static MathBox root(MathBox content) {
        double up = Math.max(content.ascent(), 0.62) + 0.15;
        double down = content.descent() + 0.06;
        MathBox sign = MathLetters.stretched("\u221a", up, down);
        PrintFont font = PrintFont.SERIF.with(0x221a);
        Rectangle2D ink = font.ink(0x221a);
        double start = ink.getMaxX() - 0.02;
        return sign.with(content, start + 0.05, 0).with(MathBox.space(start + content.width() + 0.14), 0, 0)
                .drawn(new Mark.Bar(start - 0.02, -up, content.width() + 0.12, BAR));
    }

    private static MathBox indexed(MathBox root, MathBox index) {
        MathBox small = index.scaled(0.6);
        double out = Math.max(0, small.width() - 0.25);
        return MathBox.space(0).with(root, out, 0).with(small, Math.max(0, 0.25 - small.width()), -0.45);
    }

    private MathBox scripts(List<Element> parts, boolean display, boolean script, int below, int above) {
        MathBox base = part(parts, 0, display, script);
        boolean slanted = !parts.isEmpty() && font(parts.get(0)) == PrintFont.SERIF_ITALIC
                && parts.get(0).getNodeName().equals("mi");
        MathBox box = base;
        if (below > 0) {
            MathBox sub = part(parts, below, false, true).scaled(SCRIPT);
            double drop = base.descent() > 0.3 ? base.descent() : 0.19;
            box = box.with(sub, base.width() - (slanted ? 0.03 : 0), drop);
        }
        if (above > 0 && above < parts.size()) {
            boolean prime = parts.get(above).getNodeName().equals("mo") && text(parts.get(above)).startsWith("\u2032");
            MathBox sup = part(parts, above, false, true).scaled(prime ? 0.9 : SCRIPT);
            double raise = prime ? 0.06 : base.ascent() > 0.9 ? base.ascent() - 0.28 : 0.38;
            box = box.with(sup, base.width() + (slanted ? 0.06 : 0.02), -raise);
        }
        return box.padded(0, 0.04, 0, 0);
    }

    private MathBox stacked(List<Element> parts, boolean display, boolean script, int below, int above) {
        boolean sign = !parts.isEmpty() && LARGE.contains(text(parts.get(0))) && !text(parts.get(0)).isEmpty();
        if (sign && !display) {
            return scripts(parts, false, script, below, above);
        }
        MathBox base = sign ? large(part(parts, 0, true, script)) : part(parts, 0, display, script);
        Optional<MathBox> under = below == 0 ? Optional.empty() : Optional.of(part(parts, below, false, true).scaled(SCRIPT));
        boolean accent = above > 0 && above < parts.size() && ACCENTS.contains(text(parts.get(above)));
        Optional<MathBox> over = above == 0 ? Optional.empty()
                : Optional.of(part(parts, above, false, true).scaled(accent ? 0.8 : SCRIPT));
        double width = Math.max(base.width(), Math.max(under.map(MathBox::width).orElse(0.0),
                accent ? 0 : over.map(MathBox::width).orElse(0.0)));
        MathBox box = MathBox.space(width).with(base, (width - base.width()) / 2, 0);
        if (under.isPresent()) {
            box = box.with(under.get(), (width - under.get().width()) / 2, base.descent() + 0.12 + under.get().ascent());
        }
        if (over.isPresent()) {
            double up = accent ? base.ascent() - 0.28 : base.ascent() + 0.12 + over.get().descent();
            box = box.with(over.get(), (width - over.get().width()) / 2 + (accent ? 0.06 : 0), -up);
        }
        return box;
    }

    private static PrintFont font(Element element) {
        String variant = element.getAttribute("mathvariant");
        boolean variable = element.getNodeName().equals("mi") && text(element).codePointCount(0, text(element).length()) == 1;
        boolean italic = variant.contains("italic") || variable && variant.isEmpty();
        boolean bold = variant.contains("bold");
        return bold && italic ? PrintFont.SERIF_BOLD_ITALIC : bold ? PrintFont.SERIF_BOLD
                : variant.equals("monospace") ? PrintFont.MONO : italic ? PrintFont.SERIF_ITALIC : PrintFont.SERIF;
    }

    private static String text(Element element) {
        String text = element.getTextContent();
        return element.getNodeName().equals("mtext") || element.getNodeName().equals("ms")
                ? text.replaceAll("[ \\t\\r\\n]+", " ") : text.strip().replaceAll("[\u2060-\u2064]", "");
    }

    /** A length in font sizes; none where it is written in another unit. */
    static double length(String text) {
        String value = text.strip();
        return value.matches("-?[\\d.]+em") ? Double.parseDouble(value.substring(0, value.length() - 2)) : 0;
    }

    static List<Element> children(Node node) {
        return IntStream.range(0, node.getChildNodes().getLength()).mapToObj(node.getChildNodes()::item)
                .filter(Element.class::isInstance).map(Element.class::cast).toList();
    }
}
