package kingpost.kernel.print;

import com.github.weisj.jsvg.SVGDocument;
import com.github.weisj.jsvg.parser.LoaderContext;
import com.github.weisj.jsvg.parser.SVGLoader;
import com.github.weisj.jsvg.renderer.NullPlatformSupport;
import com.github.weisj.jsvg.view.ViewBox;
import java.awt.Graphics2D;
import java.io.ByteArrayInputStream;
import java.io.StringWriter;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import javax.xml.transform.OutputKeys;
import javax.xml.transform.Transformer;
import javax.xml.transform.TransformerException;
import javax.xml.transform.TransformerFactory;
import javax.xml.transform.dom.DOMSource;
import javax.xml.transform.stream.StreamResult;
import org.w3c.dom.Element;
import org.w3c.dom.NodeList;

/** Gives figures their room on the page and draws them there: shapes through the SVG library, words as text. */
final class FigureDrawing extends Drawing {

    private static final String NAMESPACE = "http://www.w3.org/2000/svg";
    private static final double TALLEST = 820;

    private final Map<Element, Figure> figures = new IdentityHashMap<>();
    private final double widest;
    private final double scale;

    /**
     * @param widest widest figure in pixels; a wider one is made smaller
     * @param scale  size on paper over the size that the figure asks for
     */
    FigureDrawing(double widest, double scale) {
        this.widest = widest;
        this.scale = scale;
    }

    /** A figure's shapes and the words on it, in its own units. */
    private record Figure(SVGDocument shapes, List<FigureText> words, double[] view) { }

    /** Reads the figure and writes its room into its style. */
    void place(Element svg) {
        double[] view = view(svg);
        double width = size(svg.getAttribute("width"), view[2]);
        double height = size(svg.getAttribute("height"), view[3]);
        double fit = Math.min(scale, Math.min(widest / width, TALLEST / height));
        svg.setAttribute("style", String.format(Locale.ROOT, "width:%.2fpx;height:%.2fpx", width * fit, height * fit));
        svg.setAttribute("xmlns", NAMESPACE);
        List<FigureText> words = new ArrayList<>();
        List<Element> drawn = new ArrayList<>();
        NodeList texts = svg.getElementsByTagName("text");
        for (int i = 0; i < texts.getLength(); i++) {
            Element text = (Element) texts.item(i);
            FigureText.of(text).ifPresent(read -> {
                words.add(read);
                drawn.add(text);
            });
        }
        drawn.forEach(text -> text.getParentNode().removeChild(text));
        figures.put(svg, new Figure(read(svg), List.copyOf(words), view));
    }

    @Override
    void draw(Element svg, Graphics2D graphics, double width, double height) {
        Figure figure = figures.get(svg);
        if (figure == null || figure.shapes == null) {
            return;
        }
        figure.shapes.renderWithPlatform(NullPlatformSupport.INSTANCE, graphics, new ViewBox(0, 0, (float) width, (float) height));
        double unit = Math.min(width / figure.view[2], height / figure.view[3]);
        for (FigureText text : figure.words) {
            text.draw(graphics, unit, (width - figure.view[2] * unit) / 2 - figure.view[0] * unit,
                    (height - figure.view[3] * unit) / 2 - figure.view[1] * unit);
        }
    }

    private static SVGDocument read(Element svg) {
        try {
            Transformer writer = TransformerFactory.newInstance().newTransformer();
            writer.setOutputProperty(OutputKeys.OMIT_XML_DECLARATION, "yes");
            StringWriter text = new StringWriter();
            writer.transform(new DOMSource(svg), new StreamResult(text));
            return new SVGLoader().load(new ByteArrayInputStream(text.toString().getBytes(StandardCharsets.UTF_8)), null,
                    LoaderContext.createDefault());
        } catch (TransformerException e) {
            throw new IllegalStateException("a figure cannot be written as text", e);
        }
    }

    private static double[] view(Element svg) {
        String[] parts = svg.getAttribute("viewBox").strip().split("[\\s,]+");
        if (parts.length == 4 && List.of(parts).stream().allMatch(part -> part.matches("-?[\\d.]+(e-?\\d+)?"))) {
            double[] view = List.of(parts).stream().mapToDouble(Double::parseDouble).toArray();
            if (view[2] > 0 && view[3] > 0) {
                return view;
            }
        }
        return new double[] {0, 0, size(svg.getAttribute("width"), 300), size(svg.getAttribute("height"), 150)};
    }

    private static double size(String attribute, double otherwise) {
        String number = attribute.strip().replaceFirst("px$", "");
        double value = number.matches("[\\d.]+") ? Double.parseDouble(number) : otherwise;
        return value > 0 ? value : otherwise;
    }
}
