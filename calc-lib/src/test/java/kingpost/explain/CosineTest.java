package kingpost.explain;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import kingpost.derivation.Block.Prose;
import kingpost.derivation.Expression;
import kingpost.derivation.Phrase;
import kingpost.render.PlainRenderer;
import kingpost.statics.Vector;
import org.junit.jupiter.api.Test;

class CosineTest {

    private static String written(Expression expression) {
        return new PlainRenderer().render(new Prose(Phrase.of(expression))).strip();
    }

    @Test
    void writesAFractionWhereTheHypotenuseIsWhole() {
        Vector slope = new Vector(3, -2.25, 0);
        assertEquals("4/5", written(Cosine.of(slope, Vector.X, true).symbolic()));
        assertEquals("3/5", written(Cosine.of(slope, Vector.Y, false).symbolic()));
    }

    @Test
    void writesCosineAndSineOfOneAngleElsewhere() {
        Vector slope = new Vector(-2, 1, 0);
        assertEquals("cos 26.57°", written(Cosine.of(slope, Vector.X, true).symbolic()));
        assertEquals("sin 26.57°", written(Cosine.of(slope, Vector.Y, false).symbolic()));
        assertEquals("0.8944", written(Cosine.of(slope, Vector.X, true).numeric()));
    }

    @Test
    void readsAnAngleBackFromAUnitVector() {
        Vector direction = new Vector(Math.cos(Math.toRadians(225)), Math.sin(Math.toRadians(225)), 0);
        assertEquals("cos 45°", written(Cosine.of(direction, Vector.X, true).symbolic()));
    }

    @Test
    void isWholeAlongItsOwnDirection() {
        Vector slope = new Vector(1.7, 3, 0);
        assertTrue(Cosine.of(slope, slope.times(-2), true).isWhole());
    }

    /** Thirds of a span are rounded, so that members drawn in line are so to fifteen figures. */
    @Test
    void isWholeAlongADirectionThatDiffersByRounding() {
        Vector slope = new Vector(2, 0.6666666666666667, 0);
        assertTrue(Cosine.of(slope, new Vector(2, 0.6666666666666665, 0), true).isWhole());
        assertEquals("sin 0.0001146°", written(Cosine.of(new Vector(2, 4e-6, 0), Vector.Y, false).symbolic()));
    }

    @Test
    void findsTheFractionBetweenTwoSlopes() {
        assertEquals("7/25", written(Cosine.of(new Vector(3, -2.25, 0), new Vector(3, 2.25, 0), true).symbolic()));
    }
}
