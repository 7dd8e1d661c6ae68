package kingpost.truss;

import java.util.Optional;
import java.util.stream.Stream;
import javax.measure.Unit;
import kingpost.units.Quantity;
import kingpost.units.StructuralUnits;
import kingpost.units.UnitLabel;

/**
 * The truss's own units: those given, or else those of the first quantities used. Reads amounts in them.
 *
 * @param length unit of lengths
 * @param force  unit of forces
 */
record UnitChoice(Unit<?> length, Unit<?> force) {

    static UnitChoice of(TrussDraft draft, Problems problems) {
        if (draft.units.size() > 1) {
            problems.add("Units", "they are given " + draft.units.size() + " times", "call units(...) once");
        }
        if (!draft.units.isEmpty()) {
            return given(draft.units.get(0), problems);
        }
        return new UnitChoice(
                found("length", "m", StructuralUnits.m, coordinates(draft), problems),
                found("force", "kN", StructuralUnits.kN, forces(draft), problems));
    }

    /** The amount as a length in the truss's own unit; empty, and a problem, when it is none. */
    Optional<Quantity> length(Amount amount, String subject, String what, Problems problems) {
        return read(amount, length, "length", subject, what, problems).map(q -> q.to(length));
    }

    /** The amount as a force in the unit it was given in; empty, and a problem, when it is none. */
    Optional<Quantity> force(Amount amount, String subject, String what, Problems problems) {
        return read(amount, force, "force", subject, what, problems);
    }

    /** Unit of force over length, made of the truss's own. */
    Unit<?> perLength() {
        return force.divide(length);
    }

    /** The amount as a force per length, in the unit it was given in; empty, and a problem, when it is none. */
    Optional<Quantity> perLength(Amount amount, String subject, String what, Problems problems) {
        return read(amount, perLength(), "force per length", subject, what, problems);
    }

    /** The amount as a force per area, in the unit it was given in; empty, and a problem, when it is none. */
    Optional<Quantity> perArea(Amount amount, String subject, String what, Problems problems) {
        return read(amount, force.divide(length.multiply(length)), "force per area", subject, what, problems);
    }

    private static UnitChoice given(TrussDraft.UnitPair pair, Problems problems) {
        return new UnitChoice(checked(pair.length(), "length", StructuralUnits.m, problems),
                checked(pair.force(), "force", StructuralUnits.kN, problems));
    }

    private static Unit<?> checked(Unit<?> unit, String kind, Unit<?> standard, Problems problems) {
        if (unit != null && Quantity.of(1, standard).isCompatible(unit)) {
            return unit;
        }
        problems.add("Units", unit == null ? "the unit of " + kind + " is missing"
                : UnitLabel.of(unit) + " is not a unit of " + kind, "write units(m, kN): first length, then force");
        return standard;
    }

    private static Unit<?> found(String kind, String example, Unit<?> standard, Stream<Amount> amounts,
                                 Problems problems) {
        Unit<?> first = null;
        boolean bare = false;
        for (Amount amount : (Iterable<Amount>) amounts::iterator) {
            if (amount instanceof Amount.WithUnit with && with.quantity() != null && first == null
                    && Quantity.of(1, standard).isCompatible(with.quantity().getUnit())) {
                first = with.quantity().getUnit();
            }
            bare |= amount instanceof Amount.Bare number && number.value() != 0;
        }
        if (bare) {
            problems.add("Units", "bare numbers are used for a " + kind + ", but no unit of " + kind + " is given",
                    "add units(m, kN) or the like, or write " + example + "(3) for each number");
        }
        return first == null ? standard : first;
    }

    private static Stream<Amount> coordinates(TrussDraft draft) {
        return draft.joints.stream().flatMap(j -> Stream.of(j.x(), j.y(), j.z() == null ? j.y() : j.z()));
    }

    private static Stream<Amount> forces(TrussDraft draft) {
        return Stream.concat(draft.loads.stream()
                .flatMap(l -> l.size() == null ? l.components().stream() : Stream.of(l.size())),
                draft.spreads.stream().map(TrussDraft.SpreadEntry::intensity).filter(Amount.Bare.class::isInstance));
    }

    private Optional<Quantity> read(Amount amount, Unit<?> own, String kind, String subject, String what,
                                    Problems problems) {
        if (amount instanceof Amount.Bare bare) {
            if (!Double.isFinite(bare.value())) {
                problems.add(subject, what + " is " + (Double.isNaN(bare.value()) ? "not a number" : "infinite"),
                        "give a finite number");
                return Optional.empty();
            }
            return Optional.of(Quantity.of(bare.value(), own));
        }
        Quantity quantity = ((Amount.WithUnit) amount).quantity();
        if (quantity == null) {
            problems.add(subject, what + " is missing", "give a " + kind);
            return Optional.empty();
        }
        if (!quantity.isCompatible(own)) {
            problems.add(subject, what + " is " + quantity + ", which is not a " + kind,
                    "give a " + kind + ", in " + UnitLabel.of(own) + " for instance");
            return Optional.empty();
        }
        return Optional.of(quantity);
    }
}
