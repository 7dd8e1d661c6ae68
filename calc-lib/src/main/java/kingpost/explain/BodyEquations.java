package kingpost.explain;

import java.util.ArrayList;
import java.util.List;

import kingpost.derivation.Block;
import kingpost.derivation.Block.Equations;
import kingpost.derivation.EquationLine;
import kingpost.derivation.Expression;
import kingpost.derivation.Expression.Relator;
import kingpost.derivation.Expression.Sense;
import kingpost.derivation.Expressions;
import kingpost.statics.AxisEquation.Role;
import kingpost.statics.BodyEquation;
import kingpost.statics.BodyEquation.Kind;
import kingpost.statics.BodyEquation.Part;
import kingpost.statics.BodyEquation.Term;
import kingpost.statics.Source;
import kingpost.statics.Step;
import kingpost.statics.Vector;
import kingpost.truss.Joint;
import kingpost.truss.Load;
import kingpost.units.Quantity;

/** The equations of a whole body: moments about a point, sums of forces. */
final class BodyEquations {

    /** An arm below this part of the reach is rounding. */
    private static final double NO_ARM = 1e-9;

    private final Notation notation;
    private final boolean isInSpace;

    BodyEquations(Notation notation) {
        this.notation = notation;
        this.isInSpace = notation.truss().isSpace();
    }

    /** Symbols, numbers, and the answer where the equation gives one. */
    Block block(BodyEquation equation) {
        List<Share> shares = equation.terms().stream().flatMap(term -> shares(term, equation.kind()).stream()).toList();
        if (equation.role() instanceof Role.Gives gives && equation.terms().size() == 1) {
            return new Equations(List.of(answer(equation, gives.unknown()).ledBy(lead(equation.kind()))));
        }
        boolean check = equation.role() instanceof Role.Check;
        List<EquationLine> lines = Share.lines(shares, lead(equation.kind()), check);
        if (equation.role() instanceof Role.Gives gives) {
            lines.add(answer(equation, gives.unknown()));
        }
        return new Equations(lines);
    }

    /** Answers by themselves. */
    Block answers(List<Step.Answer> answers) {
        return new Equations(answers.stream().map(answer -> EquationLine.of(notation.symbol(answer.unknown()),
                Relator.EQUAL, notation.answer(answer.value())).remarked(answer.unknown() instanceof Source.OfReaction of
                ? Heading.words(of, answer.value()) : SenseWords.noun(answer.value()))).toList());
    }

    private EquationLine answer(BodyEquation equation, Source unknown) {
        double value = equation.terms().stream().filter(term -> term.source().equals(unknown))
                .mapToDouble(Term::value).findFirst().orElse(0);
        String remark = unknown instanceof Source.OfReaction reaction ? Heading.words(reaction, value)
                : SenseWords.noun(value);
        return EquationLine.of(notation.symbol(unknown), Relator.EQUAL, notation.answer(value)).remarked(remark);
    }

    private Expression lead(Kind kind) {
        if (kind instanceof Kind.Along along) {
            return JointEquations.lead(along.axis(), isInSpace);
        }
        if (kind instanceof Kind.MomentAbout about) {
            return Expressions.equal(Expressions.sigma(Expressions.symbol("M", line(about))), Expressions.number(0));
        }
        Expression moment = Expressions.symbol("M", point((Kind.Moment) kind));
        return Expressions.equal(Expressions.product(Sense.COUNTERCLOCKWISE, Expressions.sigma(moment)),
                Expressions.number(0));
    }

    /** The joint about which moments are taken, or a letter for a point that is no joint. */
    static String point(Kind.Moment moment) {
        return moment.joint().isEmpty() ? "O" : moment.joint();
    }

    /** "A,x" for the line through A along x, "A\u2013B" for that through A and B. */
    static String line(Kind.MomentAbout about) {
        return about.to().isEmpty() ? about.through() + "," + about.axis().label()
                : about.through() + "\u2013" + about.to();
    }

    private List<Share> shares(Term term, Kind kind) {
        Expression symbol = notation.symbol(term.source());
        boolean isLoad = term.source() instanceof Source.OfLoad;
        Expression value = term.known() && !isLoad ? notation.answer(term.value()) : symbol;
        if (kind instanceof Kind.Along along) {
            return List.of(along(term, along, symbol, value));
        }
        if (kind instanceof Kind.MomentAbout about && componentsOf(term.source()) instanceof Load.Components load) {
            return components(load, place(term.at()).minus(about.point()), about.axis().direction());
        }
        if (term.parts().isEmpty()) {
            Vector any = Vector.X;
            return List.of(new Share(term.factor() < 0, Cosine.of(any, any, true), symbol, value,
                    notation.length(Math.abs(term.factor()))));
        }
        return term.parts().stream().map(part -> part(term, part, symbol, value)).toList();
    }

    /** The components of a load, each with its own arm about a line. */
    private List<Share> components(Load load, Vector reach, Vector line) {
        List<Quantity> parts = List.of(load.fx(), load.fy(), load.fz());
        List<Vector> axes = List.of(Vector.X, Vector.Y, Vector.Z);
        List<Share> shares = new ArrayList<>();
        for (int i = 0; i < parts.size(); i++) {
            double arm = reach.cross(axes.get(i)).dot(line);
            if (parts.get(i).getValue() != 0 && Math.abs(arm) > NO_ARM * reach.norm()) {
                Expression size = Notation.given(parts.get(i).abs());
                shares.add(new Share(arm * parts.get(i).getValue() < 0, Cosine.of(Vector.X, Vector.X, true), size, size,
                        notation.length(Math.abs(arm))));
            }
        }
        return shares;
    }

    private Share along(Term term, Kind.Along along, Expression symbol, Expression value) {
        boolean first = along.axis().label().equals("x");
        if (componentsOf(term.source()) instanceof Load.Components load) {
            Expression part = Notation.given((first ? load.fx() : along.axis().label().equals("z") ? load.fz()
                    : load.fy()).abs());
            return Share.ofSum(term.factor() < 0, Cosine.of(Vector.X, Vector.X, true), part, part);
        }
        Cosine cosine = isInSpace ? Cosine.inSpace(direction(term), along.axis().direction())
                : Cosine.of(direction(term), along.axis().direction(), first);
        return Share.ofSum(term.factor() < 0, cosine, symbol, value);
    }

    /** A component of an inclined force with its own arm. */
    private Share part(Term term, Part part, Expression symbol, Expression value) {
        boolean first = part.axis().equals("x");
        boolean negative = part.cosine() * part.arm() < 0;
        Expression arm = notation.length(Math.abs(part.arm()));
        if (componentsOf(term.source()) instanceof Load.Components load) {
            Expression size = Notation.given((first ? load.fx() : load.fy()).abs());
            return new Share(negative, Cosine.of(Vector.X, Vector.X, true), size, size, arm);
        }
        Cosine cosine = Cosine.of(direction(term), first ? Vector.X : Vector.Y, first);
        return new Share(negative, cosine, symbol, value, arm);
    }

    private static Load componentsOf(Source source) {
        return source instanceof Source.OfLoad of ? of.load() : null;
    }

    private Vector direction(Term term) {
        return term.source().accept(new Source.Visitor<>() {
            @Override
            public Vector member(Source.OfMember of) {
                return place(of.member().otherEnd(term.at())).minus(place(term.at()));
            }

            @Override
            public Vector reaction(Source.OfReaction of) {
                return Heading.vector(of.direction());
            }

            @Override
            public Vector load(Source.OfLoad of) {
                return Heading.vector(of.load().direction());
            }
        });
    }

    private Vector place(String joint) {
        Joint at = notation.truss().joint(joint).orElseThrow();
        return new Vector(at.x().getValue(), at.y().getValue(), at.z().getValue());
    }
}
