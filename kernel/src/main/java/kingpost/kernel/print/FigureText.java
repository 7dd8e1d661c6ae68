package kingpost.kernel.print;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.font.FontRenderContext;
import java.awt.geom.AffineTransform;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.w3c.dom.Element;
import org.w3c.dom.Node;

/**
 * Words on a figure, drawn as text that can be selected, with the halo that keeps them off the lines. Lengths in the
 * figure's own units, y down.
 *
 * @param x      where the words begin, end or have their middle, as {@code anchor} says
 * @param turned degrees clockwise about that place
 * @param halo   width of the halo's line, 0 for none
 */
record FigureText(List<Piece> pieces, double x, double y, String anchor, double turned, Color colour, Color halo,
                  double haloWidth) {

    private static final Pattern ROTATION = Pattern.compile(
            "rotate\\(\\s*(-?[\\d.]+)(?:[\\s,]+(-?[\\d.]+)[\\s,]+(-?[\\d.]+))?\\s*\\)");

    /**
     * Letters of one size on one line.
     *
     * @param drop how far below the line the piece stands
     */
    record Piece(String text, PrintFont font, double size, double drop) {
        double width() {
            return MathLetters.of(text, font).width() * size;
        }
    }

    /** The words of a {@code text} element; empty for one that is placed in a way not known here. */
    static Optional<FigureText> of(Element text) {
        Matcher rotation = ROTATION.matcher(text.getAttribute("transform"));
        boolean turned = rotation.matches();
        boolean plain = (turned || text.getAttribute("transform").isEmpty()) && isUnmoved(text.getParentNode())
                && text.getElementsByTagName("textPath").getLength() == 0 && number(text, "x").isPresent()
                && number(text, "y").isPresent() && number(text, "font-size").isPresent();
        if (!plain) {
            return Optional.empty();
        }
        double x = number(text, "x").get();
        double y = number(text, "y").get();
        if (turned && rotation.group(2) != null && (Math.abs(Double.parseDouble(rotation.group(2)) - x) > 0.01
                || Math.abs(Double.parseDouble(rotation.group(3)) - y) > 0.01)) {
            return Optional.empty();
        }
        List<Piece> pieces = new ArrayList<>();
        double size = number(text, "font-size").get();
        if (!pieces(text, font(text), size, pieces)) {
            return Optional.empty();
        }
        double halo = text.getAttribute("stroke").isEmpty() ? 0 : number(text, "stroke-width").orElse(1.0);
        return Optional.of(new FigureText(List.copyOf(pieces), x, y, text.getAttribute("text-anchor"),
                turned ? Double.parseDouble(rotation.group(1)) : 0, colour(inherited(text, "fill"), Color.BLACK),
                colour(text.getAttribute("stroke"), Color.WHITE), halo));
    }

    private static boolean pieces(Element text, PrintFont font, double size, List<Piece> pieces) {
        double drop = 0;
        for (Node child = text.getFirstChild(); child != null; child = child.getNextSibling()) {
            if (child.getNodeType() == Node.TEXT_NODE) {
                pieces.add(new Piece(child.getTextContent(), font, size, drop));
            } else if (child instanceof Element span && span.getNodeName().equals("tspan") && !span.hasAttribute("x")
                    && !span.hasAttribute("y") && span.getElementsByTagName("*").getLength() == 0) {
                drop += number(span, "dy").orElse(0.0);
                pieces.add(new Piece(span.getTextContent(), font, number(span, "font-size").orElse(size), drop));
            } else if (child instanceof Element) {
                return false;
            }
        }
        return true;
    }

    private static PrintFont font(Element text) {
        String weight = inherited(text, "font-weight");
        boolean bold = weight.equals("bold") || weight.matches("[6-9]00");
        return bold ? PrintFont.SANS_BOLD : PrintFont.SANS;
    }

    private static boolean isUnmoved(Node parent) {
        for (Node node = parent; node instanceof Element element; node = node.getParentNode()) {
            if (element.getNodeName().equals("svg")) {
                return true;
            }
            if (element.hasAttribute("transform") || element.hasAttribute("opacity") || element.hasAttribute("clip-path")
                    || !element.getNodeName().equals("g")) {
                return false;
            }
        }
        return false;
    }

    private static String inherited(Element element, String attribute) {
        for (Node node = element; node instanceof Element here; node = node.getParentNode()) {
            if (here.hasAttribute(attribute)) {
                return here.getAttribute(attribute);
            }
        }
        return "";
    }

    private static Optional<Double> number(Element element, String attribute) {
        String text = attribute.equals("font-size") && !element.getNodeName().equals("tspan")
                ? inherited(element, attribute) : element.getAttribute(attribute);
        return text.matches("-?[\\d.]+(px)?") ? Optional.of(Double.parseDouble(text.replace("px", ""))) : Optional.empty();
    }

    private static Color colour(String text, Color otherwise) {
        if (text.matches("#[0-9a-fA-F]{6}")) {
            return new Color(Integer.parseInt(text.substring(1), 16));
        }
        if (text.matches("#[0-9a-fA-F]{3}")) {
            return new Color(Integer.parseInt(text.replaceAll("[^#]", "$0$0").substring(1), 16));
        }
        return otherwise;
    }

    /** Draws the words; {@code unit} pixels a unit, the figure's origin at {@code left}, {@code top}. */
    void draw(Graphics2D graphics, double unit, double left, double top) {
        AffineTransform before = graphics.getTransform();
        graphics.translate(left + x * unit, top + y * unit);
        graphics.rotate(Math.toRadians(turned));
        double width = pieces.stream().mapToDouble(Piece::width).sum();
        double start = anchor.equals("middle") ? -width / 2 : anchor.equals("end") ? -width : 0;
        if (haloWidth > 0) {
            graphics.setColor(halo);
            graphics.setStroke(new BasicStroke((float) (haloWidth * unit), BasicStroke.CAP_ROUND, BasicStroke.JOIN_ROUND));
            each(start, (piece, font, text, at) -> graphics.draw(font.drawn(piece.size * unit)
                    .createGlyphVector(new FontRenderContext(null, true, true), text)
                    .getOutline((float) (at * unit), (float) (piece.drop * unit))));
        }
        graphics.setColor(colour);
        each(start, (piece, font, text, at) -> {
            graphics.setFont(font.drawn(piece.size * unit));
            graphics.drawString(text, (float) (at * unit), (float) (piece.drop * unit));
        });
        graphics.setTransform(before);
    }

    private interface Setter {
        void set(Piece piece, PrintFont font, String text, double at);
    }

    private void each(double start, Setter setter) {
        double at = start;
        for (Piece piece : pieces) {
            for (Mark mark : MathLetters.of(piece.text, piece.font).marks()) {
                Mark.Letters letters = (Mark.Letters) mark;
                setter.set(piece, letters.font(), letters.text(), at + letters.x() * piece.size);
            }
            at += piece.width();
        }
    }
}
