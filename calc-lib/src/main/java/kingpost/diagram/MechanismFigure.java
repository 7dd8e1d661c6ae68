package kingpost.diagram;

import kingpost.statics.Determinacy.Mechanism;
import kingpost.statics.Vector;
import kingpost.svg.Element;
import kingpost.svg.Svg;
import kingpost.truss.Joint;
import kingpost.truss.Member;
import kingpost.truss.TrussModel;

/** A truss that moves: as it was given, and dashed as it stands after a small movement, drawn large. */
public final class MechanismFigure {

    /** The largest movement on the sheet, as a part of the figure's longer side. */
    private static final double PART = 0.11;
    private static final double LEAST = 1e-6;

    private final TrussModel truss;
    private final Mechanism mechanism;

    private MechanismFigure(TrussModel truss, Mechanism mechanism) {
        this.truss = truss;
        this.mechanism = mechanism;
    }

    /** The first way in which {@code truss} moves. */
    public static Svg of(TrussModel truss, Mechanism mechanism) {
        MechanismFigure figure = new MechanismFigure(truss, mechanism);
        return Fitting.sketch(truss, figure::draw).toSvg(truss.name() + ": how it moves", figure.words());
    }

    private void draw(TrussSketch sketch) {
        sketch.members(Ink.MEMBER, 2.6);
        sketch.supports();
        sketch.joints();
        double scale = scale(sketch.layout());
        for (Member member : truss.members()) {
            if (moves(member.from()) || moves(member.to())) {
                sketch.sheet().add(Layer.GUIDES, new Element.Line(moved(sketch, member.from(), scale).point(),
                        moved(sketch, member.to(), scale).point(), Ink.line(Ink.UNKNOWN, 1.8).dashed(6, 5)),
                        Patch.line(moved(sketch, member.from(), scale), moved(sketch, member.to(), scale), 1.8));
            }
        }
        for (Joint joint : truss.joints()) {
            if (moves(joint.name()) && !sketch.layout().isDense()) {
                sketch.sheet().arrow(sketch.layout().of(joint.name()), moved(sketch, joint.name(), scale), Ink.UNKNOWN,
                        1.6);
            }
        }
        sketch.names();
        sketch.sheet().settle();
        sketch.notes();
    }

    private double scale(TrussLayout layout) {
        double left = Double.MAX_VALUE;
        double right = -Double.MAX_VALUE;
        double top = Double.MAX_VALUE;
        double bottom = -Double.MAX_VALUE;
        for (Joint joint : truss.joints()) {
            Place place = layout.of(joint.name());
            left = Math.min(left, place.x());
            right = Math.max(right, place.x());
            top = Math.min(top, place.y());
            bottom = Math.max(bottom, place.y());
        }
        return PART * Math.max(right - left, bottom - top);
    }

    private boolean moves(String joint) {
        Vector motion = mechanism.motion().get(joint);
        return motion != null && motion.norm() > LEAST;
    }

    private Place moved(TrussSketch sketch, String joint, double scale) {
        Place place = sketch.layout().of(joint);
        Vector motion = mechanism.motion().get(joint);
        return motion == null ? place : place.plus(sketch.layout().view().foreshortened(motion).times(scale));
    }

    private String words() {
        return "The truss with its first way of moving drawn dashed and large. These joints move: "
                + TrussWords.listed(truss.joints().stream().map(Joint::name).filter(this::moves).toList()) + ".";
    }
}
