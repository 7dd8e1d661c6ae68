package kingpost.render;

import static kingpost.derivation.Expressions.amount;
import static kingpost.derivation.Expressions.atan;
import static kingpost.derivation.Expressions.call;
import static kingpost.derivation.Expressions.cos;
import static kingpost.derivation.Expressions.equal;
import static kingpost.derivation.Expressions.fraction;
import static kingpost.derivation.Expressions.greek;
import static kingpost.derivation.Expressions.minus;
import static kingpost.derivation.Expressions.negative;
import static kingpost.derivation.Expressions.number;
import static kingpost.derivation.Expressions.plus;
import static kingpost.derivation.Expressions.power;
import static kingpost.derivation.Expressions.product;
import static kingpost.derivation.Expressions.relation;
import static kingpost.derivation.Expressions.root;
import static kingpost.derivation.Expressions.sigma;
import static kingpost.derivation.Expressions.sin;
import static kingpost.derivation.Expressions.sum;
import static kingpost.derivation.Expressions.symbol;
import static kingpost.derivation.Expressions.tan;
import static kingpost.derivation.Expressions.then;
import static kingpost.derivation.Expressions.words;

import java.util.List;

import kingpost.derivation.Block;
import kingpost.derivation.Block.Equation;
import kingpost.derivation.Block.Equations;
import kingpost.derivation.Block.Listing;
import kingpost.derivation.Block.Prose;
import kingpost.derivation.Block.Section;
import kingpost.derivation.Derivation;
import kingpost.derivation.EquationLine;
import kingpost.derivation.Expression;
import kingpost.derivation.Expression.Relator;
import kingpost.derivation.Expression.Sense;
import kingpost.derivation.Expression.Symbol;
import kingpost.derivation.Expression.Times;
import kingpost.derivation.Figure;
import kingpost.derivation.Phrase;
import kingpost.derivation.Table;
import kingpost.svg.Arrow;
import kingpost.svg.Box;
import kingpost.svg.Element;
import kingpost.svg.Element.Anchor;
import kingpost.svg.Element.Text;
import kingpost.svg.Outline;
import kingpost.svg.Point;
import kingpost.svg.Span;
import kingpost.svg.Style;
import kingpost.svg.Svg;

/** Derivations for the tests of every renderer. */
final class SampleDerivations {

    /** Each character or sequence that means something in one of the formats. */
    static final List<String> HOSTILE = List.of(
            "<script>alert(1)</script>", "a & b &lt; c", "$x^2$ and $y$", "$$", "\\input{secret}", "\\(z\\)",
            "a_b*c*_d_", "`code`", "# head\n\n- item", "1. first", "](http://example.org)", "\"quoted\" 'single'",
            "100% {of} ~it|", "\\end{aligned}", "--> <!-- ", "@@0@@", "![x](y)", "^up^", "\u202Eturned", "<b>&#36;");

    private SampleDerivations() {
    }

    /** Each kind of block, inline piece and expression once. */
    static Derivation everyNode() {
        return Derivation.of("Every kind of node",
                new Prose(Phrase.of("A paragraph with ").emphasis("emphasis").text(", ").strong("stress")
                        .text(" and a formula ").math(equal(force("AB"), amount("-12.5", "kN"))).text(".")),
                new Equation(equal(greek("theta"), atan(fraction(3, 4)), amount("36.9", "°")), "from the slope"),
                new Equation(then(relation(root(number(2)), Relator.ABOUT, number("1.41")), Relator.AT_MOST,
                        number("1.2e-3")), ""),
                equilibrium(), otherExpressions(), longSum(), figure("A beam.", "A line with an arrow at its end."),
                table("Forces", "AB", "−12.5"),
                new Listing(false, List.of(Phrase.of("first point"), Phrase.of("second point"))),
                new Listing(true, List.of(Phrase.of("first step"), Phrase.of("second step"))),
                Section.of("A section", List.of(Prose.of("Its text."),
                        Section.of("A part of it", List.of(Prose.of("Text of the part."))))));
    }

    /** A derivation whose every text is {@code text}. */
    static Derivation saying(String text) {
        Phrase phrase = Phrase.of(text).emphasis(text).strong(text).math(symbol(text, text)).text(text);
        return Derivation.of(text, new Prose(phrase),
                new Equation(equal(symbol("F", text), words(text)), text),
                new Equations(List.of(EquationLine.of(symbol("F", text), Relator.EQUAL, number(1)).remarked(text))),
                figure(text, text), table(text, text, text),
                new Listing(false, List.of(phrase)), new Section(phrase, List.of(new Prose(phrase))));
    }

    private static Symbol force(String member) {
        return symbol("F", member);
    }

    private static Block equilibrium() {
        return new Equations(List.of(
                EquationLine.of(sum(List.of(plus(symbol("A", "x")), plus(product(fraction(4, 5), force("AD"))),
                                minus(product(force("AB"), cos(amount("30", "°")))))), Relator.EQUAL, number(0))
                        .ledBy(equal(product(Sense.RIGHT, sigma(symbol("F", "x"))), number(0))),
                EquationLine.of(sum(List.of(plus(number(0)), plus(product(fraction(4, 5), amount("-10", "kN"))),
                                minus(product(force("AB"), number("0.866"))))), Relator.EQUAL, number(0)),
                EquationLine.of(force("AB"), Relator.EQUAL, amount("-9.24", "kN")).remarked("compression")));
    }

    private static Block otherExpressions() {
        Expression turned = new Symbol("F", "x′", 0);
        return new Equations(List.of(
                EquationLine.of(new Symbol("x", "", 1), Relator.NOT_EQUAL, negative(power(symbol("b"), number(2)))),
                EquationLine.of(turned, Relator.LESS, sin(sum(List.of(plus(greek("alpha")), minus(greek("beta")))))),
                EquationLine.of(tan(greek("phi")), Relator.GREATER,
                        fraction(sum(List.of(plus(symbol("h")), plus(number(1)))), product(number(2), symbol("L")))),
                EquationLine.of(symbol("M", "A"), Relator.AT_LEAST,
                        product(Times.CROSS, amount("3", "m"), amount("-2", "kN"))).remarked("about A"),
                EquationLine.of(symbol("q"), Relator.EQUAL,
                        product(Times.DOT, amount("1.5", "kN/m²"), amount("4", "kip·ft"), words("as given"))),
                EquationLine.of(symbol("d"), Relator.EQUAL,
                        call("min", symbol("b"), product(number(2), call("ln", symbol("h")))))));
    }

    private static Block longSum() {
        return new Equations(EquationLine.sum(List.of(plus(symbol("a")), plus(amount("12", "kN")), minus(symbol("b")),
                plus(amount("-3", "kN"))), Relator.EQUAL, number(0), 14));
    }

    private static Figure figure(String caption, String description) {
        Element ink = Element.Group.of(List.of(
                new Element.Line(new Point(20, 60), new Point(160, 60), Style.none()),
                new Element.Polyline(List.of(new Point(20, 80), new Point(60, 70)), Style.none()),
                new Element.Circle(new Point(20, 60), 5, Style.none().filled("#ffffff")),
                new Element.Rect(new Box(150, 50, 20, 20), 0, Style.stroke("#888", 1).dashed(4, 2)),
                new Element.Path(Outline.from(new Point(60, 30)).arcTo(new Point(80, 50), 20, false, true)
                        .curveTo(new Point(90, 60), new Point(100, 20), new Point(110, 30)).lineTo(new Point(120, 30))
                        .close(), Style.none())), Style.stroke("#204060", 2));
        return new Figure(Svg.onPaper(new Box(0, 0, 200, 100), caption, description, List.of(ink,
                Arrow.of(new Point(100, 10), new Point(100, 55), 10, "#aa3300", 2),
                Text.of(new Point(108, 20), Anchor.START, Span.indexed("F", caption), Style.text("#222222", 14)
                        .bold().halo("#ffffff", 3)))), Phrase.of(caption), description);
    }

    private static Table table(String caption, String name, String number) {
        return new Table(Phrase.of(caption), List.of(Table.Column.left("Member"),
                new Table.Column(Phrase.of(force("i")).text(" (kN)"), Table.Align.RIGHT),
                new Table.Column(Phrase.of("Sense"), Table.Align.CENTRE)),
                List.of(List.of(Phrase.of(name), Phrase.of(number), Phrase.of("compression")),
                        List.of(Phrase.of("C").then(Phrase.of(name)), Phrase.of(product(number(200), root(number(2)))),
                                Phrase.EMPTY)), true);
    }
}
