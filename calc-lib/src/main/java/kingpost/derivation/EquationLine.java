package kingpost.derivation;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;

import kingpost.derivation.Expression.Relator;

/**
 * One line of a group of equations: {@code lead   left = right   remark}.
 *
 * @param lead   which equation this is, as in ΣF_x = 0; only on the line where it starts
 * @param remark words beside the line, may be empty
 */
public record EquationLine(Optional<Expression> lead, Expression left, Relator relator, Expression right,
                           String remark) {

    private static final int SIGN = 3;

    public EquationLine {
        Objects.requireNonNull(lead, "lead");
        Objects.requireNonNull(left, "left");
        Objects.requireNonNull(relator, "relator");
        Objects.requireNonNull(right, "right");
        remark = PlainText.line(remark);
    }

    public static EquationLine of(Expression left, Relator relator, Expression right) {
        return new EquationLine(Optional.empty(), left, relator, right, "");
    }

    /**
     * The terms added up and compared, on as many lines as it takes to keep each within about {@code width}
     * characters, all about equally long; a line breaks before a sign.
     */
    public static List<EquationLine> sum(List<Expression.Term> terms, Relator relator, Expression right, int width) {
        int whole = terms.stream().mapToInt(EquationLine::breadth).sum();
        int fair = whole / (whole / width + 1) + 1;
        List<EquationLine> lines = new ArrayList<>();
        List<Expression.Term> line = new ArrayList<>();
        int used = 0;
        for (Expression.Term term : terms) {
            boolean overhangs = used + breadth(term) > width || used + breadth(term) / 2 > fair;
            if (!line.isEmpty() && overhangs) {
                lines.add(goingOn(Expressions.sum(line, !lines.isEmpty())));
                line.clear();
                used = 0;
            }
            line.add(term);
            used += breadth(term);
        }
        lines.add(of(Expressions.sum(line, !lines.isEmpty()), relator, right));
        return lines;
    }

    private static int breadth(Expression.Term term) {
        return Breadth.of(term.value()) + SIGN;
    }

    /** A line whose left side goes on in the next one, which begins with a sign. */
    public static EquationLine goingOn(Expression left) {
        return of(left, Relator.GOES_ON, new Expression.Words(""));
    }

    public EquationLine ledBy(Expression which) {
        return new EquationLine(Optional.of(which), left, relator, right, remark);
    }

    public EquationLine remarked(String words) {
        return new EquationLine(lead, left, relator, right, words);
    }
}
