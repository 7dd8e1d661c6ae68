package kingpost.diagram;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import kingpost.statics.Vector;
import kingpost.truss.Direction;
import kingpost.truss.Joint;
import kingpost.truss.Member;
import kingpost.truss.TrussModel;

/**
 * Where the joints of a truss lie on the sheet: x to the right, y upwards, the same scale for both; a space truss as it
 * is seen in a view.
 */
final class TrussLayout {

    /** The middle length of a member, px, below which a truss is dense. */
    private static final double CLOSE = 16;

    private final TrussModel truss;
    private final View view;
    private final double scale;
    private final Map<String, Vector> vectors;
    private final Map<String, Place> places = new LinkedHashMap<>();
    private final boolean dense;

    private TrussLayout(TrussModel truss, View view, Map<String, Vector> vectors, double scale) {
        this.truss = truss;
        this.view = view;
        this.vectors = vectors;
        this.scale = scale;
        vectors.forEach((joint, vector) -> places.put(joint, place(vector)));
        this.dense = truss.members().stream().mapToDouble(m -> from(m).distance(to(m))).sorted()
                .skip(truss.members().size() / 2).findFirst().orElse(Double.MAX_VALUE) < CLOSE;
    }

    /**
     * The layout that fills {@code width} by {@code height} px as far as the truss's shape lets it; a space truss in
     * its pictorial view.
     */
    static TrussLayout filling(TrussModel truss, double width, double height) {
        return filling(truss, truss.isSpace() ? View.PICTORIAL : View.FLAT, width, height);
    }

    /** The same in a view. */
    static TrussLayout filling(TrussModel truss, View view, double width, double height) {
        Map<String, Vector> vectors = new LinkedHashMap<>();
        truss.joints().forEach(j -> vectors.put(j.name(), view.flatten(vector(truss, j))));
        TrussLayout unscaled = new TrussLayout(truss, view, vectors, 1);
        double across = unscaled.right() - unscaled.left();
        double up = unscaled.bottom() - unscaled.top();
        double scale = Math.min(across > 0 ? width / across : Double.MAX_VALUE,
                up > 0 ? height / up : Double.MAX_VALUE);
        return new TrussLayout(truss, view, vectors, scale == Double.MAX_VALUE ? 1 : scale);
    }

    TrussModel truss() {
        return truss;
    }

    View view() {
        return view;
    }

    /** The way that {@code direction} points on this sheet, length 1; of no length where it points at the reader. */
    Place wayOf(Direction direction) {
        return view.way(vector(direction));
    }

    /** Px for one unit of length. */
    double scale() {
        return scale;
    }

    Place of(String joint) {
        return places.get(joint);
    }

    /** A point given in the numbers of the truss's length unit. */
    Place place(Vector point) {
        return new Place(point.x() * scale, -point.y() * scale);
    }

    Place from(Member member) {
        return of(member.from());
    }

    Place to(Member member) {
        return of(member.to());
    }

    /** Where the joint is in the view, in the numbers of the truss's length unit. */
    Vector vector(Joint joint) {
        return vectors.get(joint.name());
    }

    static Vector vector(TrussModel truss, Joint joint) {
        return new Vector(joint.x().in(truss.lengthUnit()), joint.y().in(truss.lengthUnit()),
                joint.z().in(truss.lengthUnit()));
    }

    static Vector vector(Direction direction) {
        return new Vector(direction.x(), direction.y(), direction.z());
    }

    /** The way that {@code direction} points on the sheet, length 1. */
    static Place way(Direction direction) {
        return new Place(direction.x(), -direction.y()).unit();
    }

    /** The same for a direction in numbers; of no length where it points straight at the reader. */
    static Place way(Vector direction) {
        return new Place(direction.x(), -direction.y()).unit();
    }

    /** Ways from a joint along its members, length 1 each. */
    List<Place> waysFrom(String joint) {
        return truss.membersAt(joint).stream()
                .map(m -> of(m.otherEnd(joint)).minus(of(joint)).unit())
                .toList();
    }

    /**
     * Away from a joint's members: straight up, down, left or right where that is near enough, so that joints that are
     * alike are labelled alike; up where the members lie evenly round it.
     */
    Place outward(String joint) {
        Place sum = waysFrom(joint).stream().reduce(Place.ORIGIN, Place::plus);
        if (sum.norm() < 0.3) {
            return Place.towards(90);
        }
        double degrees = sum.degrees() + 180;
        double straight = 90 * Math.rint(degrees / 90);
        return Place.towards(Math.abs(degrees - straight) < 33 ? straight : 45 * Math.rint(degrees / 45));
    }

    double left() {
        return places.values().stream().mapToDouble(Place::x).min().orElse(0);
    }

    double right() {
        return places.values().stream().mapToDouble(Place::x).max().orElse(0);
    }

    double top() {
        return places.values().stream().mapToDouble(Place::y).min().orElse(0);
    }

    double bottom() {
        return places.values().stream().mapToDouble(Place::y).max().orElse(0);
    }

    /** Whether members are so short on the sheet that joints cannot be named one by one. */
    boolean isDense() {
        return dense;
    }
}
