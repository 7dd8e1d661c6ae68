package kingpost.derivation;

import static kingpost.derivation.Expressions.amount;
import static kingpost.derivation.Expressions.fraction;
import static kingpost.derivation.Expressions.minus;
import static kingpost.derivation.Expressions.negative;
import static kingpost.derivation.Expressions.number;
import static kingpost.derivation.Expressions.plus;
import static kingpost.derivation.Expressions.product;
import static kingpost.derivation.Expressions.sum;
import static kingpost.derivation.Expressions.symbol;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;

import kingpost.derivation.Expression.Parenthesised;
import kingpost.derivation.Expression.Product;
import kingpost.derivation.Expression.Sum;
import org.junit.jupiter.api.Test;

class ExpressionsTest {

    private static Expression second(Expression product) {
        return ((Product) product).factors().get(1);
    }

    @Test
    void putsParenthesesRoundANegativeFactorThatFollows() {
        assertInstanceOf(Parenthesised.class, second(product(fraction(3, 5), amount("-20", "kN"))));
        assertEquals(symbol("F", "AB"), second(product(fraction(3, 5), symbol("F", "AB"))));
    }

    @Test
    void keepsTwoNumbersFromReadingAsOne() {
        assertInstanceOf(Parenthesised.class, second(product(number("0.866"), amount("20", "kN"))));
    }

    @Test
    void putsParenthesesRoundASumInAProduct() {
        assertInstanceOf(Parenthesised.class,
                second(product(symbol("a"), sum(List.of(plus(symbol("b")), plus(symbol("c")))))));
    }

    @Test
    void putsParenthesesRoundANegativeTermAfterASign() {
        Sum sum = (Sum) sum(List.of(plus(symbol("A", "x")), minus(amount("-11.9", "kip"))));
        assertInstanceOf(Parenthesised.class, sum.terms().get(1).value());
    }

    @Test
    void leavesANegativeFirstTermBare() {
        Sum sum = (Sum) sum(List.of(plus(amount("-2", "kN")), plus(amount("2", "kN"))));
        assertEquals(amount("-2", "kN"), sum.terms().get(0).value());
    }

    @Test
    void writesTheEmptySumAsZero() {
        assertEquals(number(0), sum(List.of()));
        assertEquals(symbol("a"), sum(List.of(plus(symbol("a")))));
        assertEquals(negative(symbol("a")), sum(List.of(minus(symbol("a")))));
    }

    @Test
    void knowsGreekLettersByNameAndNoOthers() {
        assertEquals("θ", Expressions.greek("theta").name());
        IllegalArgumentException thrown = assertThrows(IllegalArgumentException.class,
                () -> Expressions.greek("thetta"));
        assertTrue(thrown.getMessage().startsWith("Greek letter \"thetta\": not known; use one of [Delta, "),
                thrown.getMessage());
    }

    @Test
    void takesNoTextForANumber() {
        assertThrows(IllegalArgumentException.class, () -> number("12,5"));
        assertThrows(IllegalArgumentException.class, () -> number("−3"));
    }
}
