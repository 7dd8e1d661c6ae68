package kingpost.diagram;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import kingpost.graphic.Cause;
import kingpost.graphic.ForceDiagram.Drawn;
import kingpost.graphic.ForceDiagram.Line;
import kingpost.graphic.ForceDiagram.Space;
import kingpost.svg.Box;
import kingpost.svg.Element;
import kingpost.svg.Point;
import kingpost.svg.Style;

/** The truss with its outside forces as arrows and the name of every space in it: Bow's notation. */
final class SpaceDiagram {

    private static final double GAP = 7;
    private static final double ARROW = 34;
    private static final double BESIDE = 30;
    private static final double[] OFF = {15, 21, 28, 36};
    private static final double[] ALONG = {0.5, 0.35, 0.65, 0.2, 0.8};
    private static final String BADGE = "#e8eaed";

    private final TrussSketch sketch;
    private final Drawn diagram;

    SpaceDiagram(TrussSketch sketch, Drawn diagram) {
        this.sketch = sketch;
        this.diagram = diagram;
    }

    void draw() {
        for (Line line : diagram.members()) {
            sketch.member(((Cause.OfMember) line.cause()).member(), MemberStyle.of(line.sense()));
        }
        sketch.joints();
        if (sketch.layout().isDense()) {
            sketch.names();
            sketch.sheet().settle();
            return;
        }
        outside();
        sketch.names();
        Map<Label, Place> names = new LinkedHashMap<>();
        Map<Label, Place> inside = new LinkedHashMap<>();
        for (int i = 0; i < diagram.spaces().size(); i++) {
            Label name = name(i);
            Place middle = name.spots().isEmpty() ? Place.ORIGIN : name.spots().get(0).centre();
            names.put(name, middle);
            if (diagram.spaces().get(i).isInside()) {
                inside.put(name, middle);
            }
        }
        names.keySet().forEach(sketch.sheet()::label);
        sketch.sheet().settle();
        new Leaders(sketch.sheet(), List.of()).house(inside);
        sketch.sheet().placed().stream().filter(p -> names.containsKey(p.label())).forEach(this::badge);
    }

    /** Each on its own side of its joint; those on one side of a joint next to each other, clockwise. */
    private void outside() {
        ForceText text = new ForceText(diagram.truss());
        for (int i = 0; i < diagram.outside().size(); i++) {
            Line line = diagram.outside().get(i);
            ForceArrow arrow = arrow(i);
            boolean support = line.cause() instanceof Cause.OfSupport;
            String colour = support ? Ink.REACTION : Ink.BLACK;
            sketch.sheet().arrow(arrow.tail(), arrow.tip(), colour, 2);
            String value = text.ofNewtons(line.solved());
            Caption caption = sketch.lettering().caption(sketch.lettering().isBare() ? text.bare(value) : value, colour);
            sketch.sheet().label(new Label(caption, Spots.atArrow(arrow.near(), arrow.far(), caption),
                    (support ? "reaction at " : "load at ") + line.joint(), 0));
        }
    }

    private ForceArrow arrow(int number) {
        Line line = diagram.outside().get(number);
        List<Line> beside = diagram.outside().stream().filter(other -> other.joint().equals(line.joint())
                && other.side().place().dot(line.side().place()) > 0.99).toList();
        double off = BESIDE * (beside.indexOf(line) - (beside.size() - 1) / 2.0);
        return ForceArrow.of(sketch.layout().of(line.joint()), line.side(), beside.size() > 1 ? 2 * GAP : GAP, ARROW, off);
    }

    private Label name(int number) {
        Space space = diagram.spaces().get(number);
        Caption caption = sketch.lettering().caption(space.name(), Ink.UNKNOWN).inBold();
        List<Place> joints = space.joints().stream().map(sketch.layout()::of).toList();
        List<Spot> spots = space.isInside() ? RoomIn.polygon(joints) : along(number, joints);
        return new Label(caption, spots, "space", 0);
    }

    /** Outside the members along which the space lies, nearest the middle of them; or between two arrows at a joint. */
    private List<Spot> along(int number, List<Place> joints) {
        List<Spot> spots = new ArrayList<>();
        double whole = 0;
        for (int i = 1; i < joints.size(); i++) {
            whole += joints.get(i).distance(joints.get(i - 1));
        }
        double before = 0;
        for (int i = 1; i < joints.size(); i++) {
            Place from = joints.get(i - 1);
            Place to = joints.get(i);
            Place side = to.minus(from).unit().left();
            for (double part : ALONG) {
                double place = before + part * from.distance(to);
                for (int k = 0; k < OFF.length; k++) {
                    Place foot = from.along(to, part);
                    spots.add(new Spot(foot.plus(side.times(OFF[k])), 0, foot.plus(side.times(6)),
                            2 * Math.abs(place / whole - 0.5) + 0.25 * k));
                }
            }
            before += from.distance(to);
        }
        if (joints.size() == 1) {
            between(number, joints.get(0), spots);
        }
        return spots;
    }

    private void between(int number, Place joint, List<Spot> spots) {
        Place one = arrow(number).middle();
        Place other = arrow((number + 1) % diagram.outside().size()).middle();
        Place middle = one.middle(other);
        for (double part : new double[] {0, 0.2, -0.2, 0.4, -0.4, 0.6, 0.8}) {
            Place spot = middle.plus(middle.minus(joint).times(part));
            spots.add(new Spot(spot, 0, spot, Math.abs(part)));
        }
        Place way = one.minus(joint).unit();
        double turn = way.degrees() - other.minus(joint).degrees();
        turn -= 360 * Math.floor(turn / 360);
        for (double part : ALONG) {
            Place out = Place.towards(way.degrees() - turn * part);
            for (double off = 18; off < 60; off += 6) {
                spots.add(new Spot(joint.plus(out.times(off)), 0, joint.plus(out.times(off - 4)),
                        1 + Math.abs(part - 0.5) + off / 60));
            }
        }
    }

    /** A pale field under the name of a space, so that it is not taken for a joint. */
    private void badge(Label.Placed placed) {
        double height = placed.label().caption().size() + 4;
        double width = Math.max(height, placed.label().caption().width() + 7);
        Point centre = placed.spot().centre().point();
        sketch.sheet().add(Layer.BACKGROUND, new Element.Rect(Box.centredOn(centre, width, height), height / 2,
                Style.fill(BADGE)));
    }
}
