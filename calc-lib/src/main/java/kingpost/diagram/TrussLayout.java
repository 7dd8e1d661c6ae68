package kingpost.diagram;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import kingpost.statics.Vector;
import kingpost.truss.Direction;
import kingpost.truss.Joint;
import kingpost.truss.Member;
import kingpost.truss.TrussModel;

/** Where the joints of a truss lie on the sheet: x to the right, y upwards, the same scale for both. */
final class TrussLayout {

    private final TrussModel truss;
    private final double scale;
    private final Map<String, Place> places = new LinkedHashMap<>();

    private TrussLayout(TrussModel truss, double scale) {
        this.truss = truss;
        this.scale = scale;
        for (Joint joint : truss.joints()) {
            places.put(joint.name(), place(vector(joint)));
        }
    }

    /** The layout that fills {@code width} by {@code height} px as far as the truss's shape lets it. */
    static TrussLayout filling(TrussModel truss, double width, double height) {
        TrussLayout unscaled = new TrussLayout(truss, 1);
        double across = unscaled.right() - unscaled.left();
        double up = unscaled.bottom() - unscaled.top();
        double scale = Math.min(across > 0 ? width / across : Double.MAX_VALUE,
                up > 0 ? height / up : Double.MAX_VALUE);
        return new TrussLayout(truss, scale == Double.MAX_VALUE ? 1 : scale);
    }

    TrussModel truss() {
        return truss;
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

    Vector vector(Joint joint) {
        return new Vector(joint.x().in(truss.lengthUnit()), joint.y().in(truss.lengthUnit()),
                joint.z().in(truss.lengthUnit()));
    }

    /** The way that {@code direction} points on the sheet, length 1. */
    static Place way(Direction direction) {
        return new Place(direction.x(), -direction.y()).unit();
    }

    /** Ways from a joint along its members, length 1 each. */
    List<Place> waysFrom(String joint) {
        return truss.membersAt(joint).stream()
                .map(m -> of(m.otherEnd(joint)).minus(of(joint)).unit())
                .toList();
    }

    /** Away from a joint's members, length 1; up where they lie evenly round it. */
    Place outward(String joint) {
        Place sum = waysFrom(joint).stream().reduce(Place.ORIGIN, Place::plus);
        return sum.norm() < 0.3 ? Place.towards(90) : sum.unit().times(-1);
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

    /** Length of the shortest member on the sheet, px; the larger side of the truss where it has no member. */
    double shortestMember() {
        return truss.members().stream().mapToDouble(m -> from(m).distance(to(m))).min()
                .orElse(Math.max(right() - left(), bottom() - top()));
    }
}
