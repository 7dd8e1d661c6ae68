package kingpost.variant;

import kingpost.exact.Fraction;
import kingpost.truss.Direction;
import kingpost.truss.Member;
import kingpost.truss.TrussModel;
import kingpost.variant.Shape.Way;

/**
 * Directions of loads and reactions in another shape: an axis stays an axis; what lies along or across a member at its
 * joint stays so; anything else takes the nearest whole-number slope.
 */
final class Directions {

    private static final double SAME = 1e-6;

    private final TrussModel truss;
    private final Lattice lattice;
    private final Shape shape;

    Directions(TrussModel truss, Lattice lattice, Shape shape) {
        this.truss = truss;
        this.lattice = lattice;
        this.shape = shape;
    }

    /** The direction of a force at {@code joint} that points along {@code given} in the truss. */
    Way of(String joint, Direction given) {
        double x = given.cosX();
        double y = given.cosY();
        if (Math.abs(x) < SAME || Math.abs(y) < SAME) {
            return new Way(Fraction.of(Math.abs(x) < SAME ? 0 : side(x)), Fraction.of(Math.abs(y) < SAME ? 0 : sign(y)));
        }
        for (Member member : truss.membersAt(joint)) {
            Lattice.Place steps = lattice.places().get(member.otherEnd(joint)).minus(lattice.places().get(joint));
            double across = lattice.along().doubleValue() * steps.along();
            double rise = lattice.up().doubleValue() * steps.up();
            double length = Math.hypot(across, rise);
            double cosine = (x * across + y * rise) / length;
            double sine = (across * y - rise * x) / length;
            Way along = shape.way(steps);
            Way turned = shape.mirrored() ? along.turned().negate() : along.turned();
            if (Math.abs(sine) < SAME && isClean(along)) {
                return cosine > 0 ? along : along.negate();
            }
            if (Math.abs(cosine) < SAME && isClean(turned)) {
                return sine > 0 ? turned : turned.negate();
            }
        }
        Triple nearest = Triple.nearest(x, y);
        return new Way(Fraction.of((long) side(x) * nearest.run()), Fraction.of((long) sign(y) * nearest.rise()));
    }

    private static boolean isClean(Way way) {
        return Rationals.length(way.x(), way.y()).isPresent();
    }

    private int side(double x) {
        return shape.mirrored() ? -sign(x) : sign(x);
    }

    private static int sign(double value) {
        return value > 0 ? 1 : -1;
    }

    /** The direction as a person says it: an axis by its word, a slope in small whole numbers. */
    static Direction said(Way way) {
        if (way.isAxis()) {
            return way.x().signum() > 0 ? Direction.RIGHT : way.x().signum() < 0 ? Direction.LEFT
                    : way.y().signum() > 0 ? Direction.UP : Direction.DOWN;
        }
        Fraction common = Rationals.common(way.x(), way.y());
        return Direction.slope(way.x().over(common).doubleValue(), way.y().over(common).doubleValue());
    }
}
