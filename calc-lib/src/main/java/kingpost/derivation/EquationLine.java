package kingpost.derivation;

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

    public EquationLine ledBy(Expression which) {
        return new EquationLine(Optional.of(which), left, relator, right, remark);
    }

    public EquationLine remarked(String words) {
        return new EquationLine(lead, left, relator, right, words);
    }
}
