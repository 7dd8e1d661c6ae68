package kingpost.diagram;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import kingpost.statics.Vector;
import kingpost.truss.Load;
import kingpost.truss.Support;
import kingpost.truss.TrussModel;
import kingpost.units.EngineeringFormat;
import kingpost.units.Quantity;

/** What there is to see in a truss, for readers who do not see the figure. */
final class TrussWords {

    private static final int MANY = 12;

    private final TrussModel truss;
    private final ForceText text;

    TrussWords(TrussModel truss) {
        this.truss = truss;
        this.text = new ForceText(truss);
    }

    /** Joints, members, supports, loads: a sentence each. */
    String description() {
        return counted() + " " + supports() + " " + loads();
    }

    String counted() {
        return "A truss of " + truss.joints().size() + " joints and " + truss.members().size() + " members.";
    }

    private String supports() {
        List<String> said = truss.supports().stream().map(this::support).toList();
        return said.isEmpty() ? "Nothing supports it." : sentence("It is held by " + listed(said));
    }

    private String support(Support support) {
        return switch (support.kind()) {
            case PIN -> "a pin at " + support.joint();
            case BALL -> "a ball at " + support.joint();
            case ROLLER -> "a roller at " + support.joint() + normal(support);
            case LINK -> "a link at " + support.joint() + (truss.isSpace() ? normal(support) : "");
        };
    }

    private String normal(Support support) {
        if (truss.isSpace()) {
            return " that acts " + way(TrussLayout.vector(support.reactions().get(0)));
        }
        Place way = TrussLayout.way(support.reactions().get(0));
        return Math.abs(way.x()) < 1e-9 ? "" : " whose reaction acts at " + Math.round(way.degrees()) + "\u00b0";
    }

    String loads() {
        List<String> said = new ArrayList<>();
        for (Load load : truss.loads()) {
            if (truss.isSpace()) {
                said.add(inSpace(load));
                continue;
            }
            LoadArrow.of(load).forEach(a -> said.add(text.given(a.size()) + " " + way(a.way()) + " at " + load.joint()));
        }
        return said.isEmpty() ? "No load acts on it." : sentence("The loads are " + listed(said));
    }

    private String inSpace(Load load) {
        if (!(load instanceof Load.Components)) {
            return text.given(load.magnitude()) + " " + way(TrussLayout.vector(load.direction())) + " at " + load.joint();
        }
        List<Quantity> parts = List.of(load.fx(), load.fy(), load.fz());
        List<Vector> axes = List.of(Vector.X, Vector.Y, Vector.Z);
        List<String> said = new ArrayList<>();
        for (int i = 0; i < 3; i++) {
            if (parts.get(i).getValue() != 0) {
                said.add(text.given(parts.get(i)) + " " + way(axes.get(i).times(parts.get(i).getValue())));
            }
        }
        return String.join(" with ", said) + " at " + load.joint();
    }

    /** A direction: "down", "towards the reader", "along (1, 2, \u22122)". */
    static String way(Vector direction) {
        double flat = Math.hypot(direction.x(), direction.y());
        if (flat <= 1e-9 * direction.norm()) {
            return direction.z() > 0 ? "towards the reader" : "away from the reader";
        }
        if (Math.abs(direction.z()) <= 1e-9 * flat) {
            return way(TrussLayout.way(direction));
        }
        return "along (" + Stream.of(direction.x(), direction.y(), direction.z())
                .map(part -> EngineeringFormat.given().number(part)).collect(Collectors.joining(", ")) + ")";
    }

    /** A way on the sheet: "down", "to the left", "at 225\u00b0". */
    static String way(Place way) {
        if (Math.abs(way.x()) < 1e-9) {
            return way.y() > 0 ? "down" : "up";
        }
        if (Math.abs(way.y()) < 1e-9) {
            return way.x() > 0 ? "to the right" : "to the left";
        }
        return "at " + Math.round(way.degrees()) + "\u00b0";
    }

    static String listed(List<String> items) {
        if (items.size() > MANY) {
            return items.stream().limit(MANY).collect(Collectors.joining(", ")) + " and " + (items.size() - MANY)
                    + " more";
        }
        int last = items.size() - 1;
        return last == 0 ? items.get(0) : String.join(", ", items.subList(0, last)) + " and " + items.get(last);
    }

    private static String sentence(String words) {
        return words + ".";
    }
}
