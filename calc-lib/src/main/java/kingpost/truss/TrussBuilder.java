package kingpost.truss;

import java.util.List;
import java.util.function.Function;
import javax.measure.Unit;
import kingpost.truss.TrussDraft.JointEntry;
import kingpost.truss.TrussDraft.LoadEntry;
import kingpost.truss.TrussDraft.MemberEntry;
import kingpost.truss.TrussDraft.SpreadEntry.Kind;
import kingpost.truss.TrussDraft.SupportEntry;
import kingpost.units.Quantity;

/**
 * Writes a truss down in trade words. Nothing is checked before {@link #build()}, which reports every problem at once,
 * so joints, members, supports and loads may come in any order.
 *
 * <p><b>Units</b>: a bare number is in the units given by {@link #units}; a quantity brings its own.
 * <b>Signs</b>: x right, y up, z towards the reader; angles in degrees counter-clockwise from x.
 *
 * @param <T> what {@link #build()} returns
 */
public final class TrussBuilder<T> {

    private final TrussDraft draft;
    private final Function<TrussModel, T> finish;

    /**
     * @param name   what the user calls the truss
     * @param finish makes the result of {@link #build()} from the checked model
     */
    public TrussBuilder(String name, Function<TrussModel, T> finish) {
        this.draft = new TrussDraft(name);
        this.finish = finish;
    }

    /** Another name for the truss. */
    public TrussBuilder<T> named(String name) {
        draft.name = name;
        return this;
    }

    /** The units of bare numbers, and those in which answers are given. */
    public TrussBuilder<T> units(Unit<?> length, Unit<?> force) {
        draft.units.add(new TrussDraft.UnitPair(length, force));
        return this;
    }

    /** A joint at (x, y). */
    public TrussBuilder<T> joint(String name, double x, double y) {
        return joint(name, Amount.of(x), Amount.of(y), null);
    }

    /** A joint at (x, y). */
    public TrussBuilder<T> joint(String name, Quantity x, Quantity y) {
        return joint(name, Amount.of(x), Amount.of(y), null);
    }

    /** A joint at (x, y). */
    public TrussBuilder<T> joint(String name, double x, Quantity y) {
        return joint(name, Amount.of(x), Amount.of(y), null);
    }

    /** A joint at (x, y). */
    public TrussBuilder<T> joint(String name, Quantity x, double y) {
        return joint(name, Amount.of(x), Amount.of(y), null);
    }

    /** A joint in space. In a space truss every joint has all three. */
    public TrussBuilder<T> joint(String name, double x, double y, double z) {
        return joint(name, Amount.of(x), Amount.of(y), Amount.of(z));
    }

    /** A joint in space. */
    public TrussBuilder<T> joint(String name, Quantity x, Quantity y, Quantity z) {
        return joint(name, Amount.of(x), Amount.of(y), Amount.of(z));
    }

    /**
     * Members by the names of their ends: {@code "AB BC AD"}; with longer names {@code "L0-L1 L1-U1"}. Spaces, commas
     * and line ends part them.
     */
    public TrussBuilder<T> members(String names) {
        String trimmed = names == null ? "" : names.strip();
        if (trimmed.isEmpty()) {
            draft.members.add(new MemberEntry("", "", ""));
            return this;
        }
        for (String word : trimmed.split("[\\s,;]+")) {
            draft.members.add(new MemberEntry(word, "", ""));
        }
        return this;
    }

    /** One member between two joints. */
    public TrussBuilder<T> member(String from, String to) {
        draft.members.add(new MemberEntry("", from == null ? "" : from, to == null ? "" : to));
        return this;
    }

    /** A pin at one joint and a roller at another, which hold the truss unless supports are written. */
    public TrussBuilder<T> restingOn(String pin, String roller) {
        draft.usualSupports.clear();
        draft.usualSupports.add(new SupportEntry(pin, Support.Kind.PIN, null, ""));
        draft.usualSupports.add(new SupportEntry(roller, Support.Kind.ROLLER, Direction.UP, ""));
        return this;
    }

    /** Holds a joint against any movement. */
    public TrussBuilder<T> pin(String joint) {
        return support(joint, Support.Kind.PIN, null);
    }

    /** Holds a joint of a space truss against any movement. */
    public TrussBuilder<T> ball(String joint) {
        return support(joint, Support.Kind.BALL, null);
    }

    /** Holds a joint vertically; it may roll to the side. */
    public TrussBuilder<T> roller(String joint) {
        return support(joint, Support.Kind.ROLLER, Direction.UP);
    }

    /** Holds a joint along the normal of the surface it rolls on, at that many degrees from x. */
    public TrussBuilder<T> roller(String joint, double normalDegrees) {
        return support(joint, Support.Kind.ROLLER, normalDegrees);
    }

    /** Holds a joint along the normal of the surface it rolls on. */
    public TrussBuilder<T> roller(String joint, Direction normal) {
        return support(joint, Support.Kind.ROLLER, normal);
    }

    /** Holds a joint of a space truss along the normal of the plane it rolls on: {@code roller("C", 0, 1, 0)}. */
    public TrussBuilder<T> roller(String joint, double x, double y, double z) {
        return support(joint, Support.Kind.ROLLER, x, y, z);
    }

    /** Holds a joint by a link that lies at that many degrees from x. */
    public TrussBuilder<T> link(String joint, double degrees) {
        return support(joint, Support.Kind.LINK, degrees);
    }

    /** Holds a joint by a link along a direction. */
    public TrussBuilder<T> link(String joint, Direction along) {
        return support(joint, Support.Kind.LINK, along);
    }

    /** Holds a joint of a space truss by a link along a direction: {@code link("B", -1, 1, 0)}. */
    public TrussBuilder<T> link(String joint, double x, double y, double z) {
        return support(joint, Support.Kind.LINK, x, y, z);
    }

    /** A load by size and direction. */
    public TrussBuilder<T> load(String joint, double size, Direction direction) {
        return load(joint, Amount.of(size), direction);
    }

    /** A load by size and direction. */
    public TrussBuilder<T> load(String joint, Quantity size, Direction direction) {
        return load(joint, Amount.of(size), direction);
    }

    /** The same load at each of several joints: {@code loads("U1 U2 U3", 10, DOWN)}. Spaces and commas part them. */
    public TrussBuilder<T> loads(String joints, double size, Direction direction) {
        return loads(joints, Amount.of(size), direction);
    }

    /** The same load at each of several joints: {@code loads("U1 U2 U3", kN(10), DOWN)}. Spaces and commas part them. */
    public TrussBuilder<T> loads(String joints, Quantity size, Direction direction) {
        return loads(joints, Amount.of(size), direction);
    }

    /** A load by its components to the right and upwards. */
    public TrussBuilder<T> load(String joint, double fx, double fy) {
        return load(joint, Amount.of(fx), Amount.of(fy), Amount.of(0));
    }

    /** A load by its components to the right and upwards. */
    public TrussBuilder<T> load(String joint, Quantity fx, Quantity fy) {
        return load(joint, Amount.of(fx), Amount.of(fy), Amount.of(0));
    }

    /** A load by its components in space. */
    public TrussBuilder<T> load(String joint, double fx, double fy, double fz) {
        return load(joint, Amount.of(fx), Amount.of(fy), Amount.of(fz));
    }

    /** A load by its components in space. */
    public TrussBuilder<T> load(String joint, Quantity fx, Quantity fy, Quantity fz) {
        return load(joint, Amount.of(fx), Amount.of(fy), Amount.of(fz));
    }

    /** The weight of every member, a force per length; half of it goes to each end. */
    public TrussBuilder<T> selfWeight(double perLength) {
        return spread(Kind.SELF_WEIGHT, null, Amount.of(perLength), null, Measured.ALONG_SLOPE);
    }

    /** The weight of every member, a force per length; half of it goes to each end. */
    public TrussBuilder<T> selfWeight(Quantity perLength) {
        return spread(Kind.SELF_WEIGHT, null, Amount.of(perLength), null, Measured.ALONG_SLOPE);
    }

    /** The weight of these members, a force per length; half of it goes to each end. */
    public TrussBuilder<T> selfWeight(String members, double perLength) {
        return spread(Kind.SELF_WEIGHT, text(members), Amount.of(perLength), null, Measured.ALONG_SLOPE);
    }

    /** The weight of these members, a force per length; half of it goes to each end. */
    public TrussBuilder<T> selfWeight(String members, Quantity perLength) {
        return spread(Kind.SELF_WEIGHT, text(members), Amount.of(perLength), null, Measured.ALONG_SLOPE);
    }

    /**
     * A load downwards along a deck, a force per length; each joint takes the half panels beside it.
     *
     * @param joints of one chord in order, as in {@code "L0 L1 L2"}
     */
    public TrussBuilder<T> deckLoad(String joints, double perLength) {
        return spread(Kind.DECK, text(joints), Amount.of(perLength), null, Measured.ALONG_SLOPE);
    }

    /** A load downwards along a deck, a force per length; each joint takes the half panels beside it. */
    public TrussBuilder<T> deckLoad(String joints, Quantity perLength) {
        return spread(Kind.DECK, text(joints), Amount.of(perLength), null, Measured.ALONG_SLOPE);
    }

    /** A load downwards on a deck, a force per area, with the distance from truss to truss. */
    public TrussBuilder<T> deckLoad(String joints, double perArea, double spacing) {
        return spread(Kind.DECK, text(joints), Amount.of(perArea), Amount.of(spacing), Measured.ALONG_SLOPE);
    }

    /** A load downwards on a deck, a force per area, with the distance from truss to truss. */
    public TrussBuilder<T> deckLoad(String joints, Quantity perArea, Quantity spacing) {
        return spread(Kind.DECK, text(joints), Amount.of(perArea), Amount.of(spacing), Measured.ALONG_SLOPE);
    }

    /**
     * A load downwards on a roof, a force per length; each joint takes the half panels beside it.
     *
     * @param joints   of the upper chord in order, as in {@code "L0 U1 U2"}
     * @param measured on plan, as snow, or along the slope, as the covering's weight
     */
    public TrussBuilder<T> roofLoad(String joints, double perLength, Measured measured) {
        return spread(Kind.ROOF, text(joints), Amount.of(perLength), null, measured);
    }

    /** A load downwards on a roof, a force per length on plan or along the slope. */
    public TrussBuilder<T> roofLoad(String joints, Quantity perLength, Measured measured) {
        return spread(Kind.ROOF, text(joints), Amount.of(perLength), null, measured);
    }

    /** A load downwards on a roof, a force per area on plan or along the slope, with the distance from truss to truss. */
    public TrussBuilder<T> roofLoad(String joints, double perArea, double spacing, Measured measured) {
        return spread(Kind.ROOF, text(joints), Amount.of(perArea), Amount.of(spacing), measured);
    }

    /** A load downwards on a roof, a force per area on plan or along the slope, with the distance from truss to truss. */
    public TrussBuilder<T> roofLoad(String joints, Quantity perArea, Quantity spacing, Measured measured) {
        return spread(Kind.ROOF, text(joints), Amount.of(perArea), Amount.of(spacing), measured);
    }

    /**
     * Wind square to a slope, a force per length of the slope.
     *
     * @param joints    in order; the wind comes from the left of the way along them, so list an upper chord from left
     *                  to right
     * @param perLength below zero for suction
     */
    public TrussBuilder<T> windLoad(String joints, double perLength) {
        return spread(Kind.WIND, text(joints), Amount.of(perLength), null, Measured.ALONG_SLOPE);
    }

    /** Wind square to a slope, a force per length of the slope; below zero for suction. */
    public TrussBuilder<T> windLoad(String joints, Quantity perLength) {
        return spread(Kind.WIND, text(joints), Amount.of(perLength), null, Measured.ALONG_SLOPE);
    }

    /** Wind square to a slope, a force per area, with the distance from truss to truss; below zero for suction. */
    public TrussBuilder<T> windLoad(String joints, double perArea, double spacing) {
        return spread(Kind.WIND, text(joints), Amount.of(perArea), Amount.of(spacing), Measured.ALONG_SLOPE);
    }

    /** Wind square to a slope, a force per area, with the distance from truss to truss; below zero for suction. */
    public TrussBuilder<T> windLoad(String joints, Quantity perArea, Quantity spacing) {
        return spread(Kind.WIND, text(joints), Amount.of(perArea), Amount.of(spacing), Measured.ALONG_SLOPE);
    }

    /** Begins a load case: the loads that follow are in it, up to the next one. */
    public TrussBuilder<T> loadCase(String name) {
        draft.cases.add(new TrussDraft.CaseEntry(name == null ? "" : name.strip(), draft.loads.size(),
                draft.spreads.size()));
        return this;
    }

    /** Load cases that act together, each with its factor: {@code "1.2 dead + 1.6 snow"}. */
    public TrussBuilder<T> combination(String formula) {
        return combination("", formula);
    }

    /** The same under a name of its own. */
    public TrussBuilder<T> combination(String name, String formula) {
        draft.combinations.add(new TrussDraft.CombinationEntry(name == null ? "" : name, formula));
        return this;
    }

    /**
     * The checked truss.
     *
     * @throws TrussProblems with every problem of the truss, one line each
     */
    public T build() {
        return finish.apply(new TrussCheck(draft).model());
    }

    /** Where the writing stands, for someone who left {@code build()} out. */
    @Override
    public String toString() {
        return "Truss " + draft.name + ", not built yet: " + draft.joints.size() + " joints, " + draft.members.size()
                + " members, " + draft.effectiveSupports().size() + " supports and " + (draft.loads.size() + draft.spreads.size())
                + " loads so far; end it with .build().";
    }

    private TrussBuilder<T> spread(Kind kind, String where, Amount intensity, Amount spacing, Measured measured) {
        draft.spreads.add(new TrussDraft.SpreadEntry(kind, where, intensity, spacing,
                measured == null ? Measured.ALONG_SLOPE : measured));
        return this;
    }

    private static String text(String names) {
        return names == null ? "" : names;
    }

    private TrussBuilder<T> joint(String name, Amount x, Amount y, Amount z) {
        draft.joints.add(new JointEntry(name == null ? "" : name, x, y, z));
        return this;
    }

    private TrussBuilder<T> support(String joint, Support.Kind kind, double degrees) {
        Direction normal = Double.isFinite(degrees) ? Direction.at(degrees) : null;
        draft.supports.add(new SupportEntry(joint == null ? "" : joint, kind, normal, degrees + " degrees"));
        return this;
    }

    private TrussBuilder<T> support(String joint, Support.Kind kind, double x, double y, double z) {
        double length = Math.sqrt(x * x + y * y + z * z);
        Direction normal = Double.isFinite(length) && length > 0 ? Direction.along(x, y, z) : null;
        draft.supports.add(new SupportEntry(joint == null ? "" : joint, kind, normal,
                "(" + x + ", " + y + ", " + z + ")"));
        return this;
    }

    private TrussBuilder<T> support(String joint, Support.Kind kind, Direction normal) {
        draft.supports.add(new SupportEntry(joint == null ? "" : joint, kind, normal, "missing"));
        return this;
    }

    private TrussBuilder<T> loads(String joints, Amount size, Direction direction) {
        for (String joint : (joints == null ? "" : joints.strip()).split("[\\s,;]+")) {
            load(joint, size, direction);
        }
        return this;
    }

    private TrussBuilder<T> load(String joint, Amount size, Direction direction) {
        draft.loads.add(new LoadEntry(joint == null ? "" : joint, size, direction, List.of()));
        return this;
    }

    private TrussBuilder<T> load(String joint, Amount fx, Amount fy, Amount fz) {
        draft.loads.add(new LoadEntry(joint == null ? "" : joint, null, null, List.of(fx, fy, fz)));
        return this;
    }
}
