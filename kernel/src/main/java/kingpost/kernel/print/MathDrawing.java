package kingpost.kernel.print;

import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.geom.AffineTransform;
import java.awt.geom.Rectangle2D;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Collectors;
import org.w3c.dom.Element;

/** Gives formulas their room on the page and draws them there, letters as text. */
final class MathDrawing extends Drawing {

    private static final double EDGE = 0.06;

    private final Map<Element, MathBox> boxes = new IdentityHashMap<>();
    private final double widest;

    /** @param widest widest formula in font sizes; a wider one is made smaller */
    MathDrawing(double widest) {
        this.widest = widest;
    }

    /** Lays the formula out and writes its room into its style. */
    void place(Element math) {
        MathBox laid = new MathLayout().of(math);
        MathBox box = laid.width() <= widest ? laid : laid.scaled(widest / laid.width());
        boxes.put(math, box);
        math.setAttribute("style", String.format(Locale.ROOT, "width:%.4fem;height:%.4fem;vertical-align:%.4fem",
                Math.max(box.width(), 0.01), box.height() + 2 * EDGE, -(box.descent() + EDGE)));
    }

    @Override
    void draw(Element math, Graphics2D graphics, double width, double height) {
        MathBox box = boxes.get(math);
        double em = height / (box.height() + 2 * EDGE);
        graphics.setColor(Color.BLACK);
        SaidText said = SaidText.on(graphics, em, canvas(height));
        box.marks().forEach(mark -> draw(mark, graphics, said, em, (box.ascent() + EDGE) * em));
    }

    private static void draw(Mark mark, Graphics2D graphics, SaidText text, double em, double baseline) {
        if (mark instanceof Mark.Said said) {
            double line = baseline + line(said.marks()) * em;
            text.begin(said.text(), said.x() * em, line);
            said.marks().forEach(each -> draw(each, graphics, text, em, baseline));
            text.end(said.right() * em, line);
        } else if (mark instanceof Mark.Letters letters) {
            letters(letters, graphics, em, baseline);
        } else if (mark instanceof Mark.Bar bar) {
            graphics.fill(new Rectangle2D.Double(bar.x() * em, baseline + bar.y() * em, bar.width() * em, bar.height() * em));
        }
    }

    /** Where most letters stand. */
    private static double line(List<Mark> marks) {
        Map<Double, Long> counted = marks.stream().filter(Mark.Letters.class::isInstance).map(Mark.Letters.class::cast)
                .collect(Collectors.groupingBy(Mark.Letters::y, TreeMap::new, Collectors.counting()));
        return counted.entrySet().stream().max(Map.Entry.comparingByValue()).map(Map.Entry::getKey).orElse(0.0);
    }

    private static void letters(Mark.Letters letters, Graphics2D graphics, double em, double baseline) {
        AffineTransform before = graphics.getTransform();
        graphics.translate(letters.x() * em, baseline + letters.y() * em);
        graphics.scale(1, letters.stretch());
        graphics.setFont(letters.font().drawn(letters.size() * em));
        graphics.drawString(letters.text(), 0, 0);
        graphics.setTransform(before);
    }
}
