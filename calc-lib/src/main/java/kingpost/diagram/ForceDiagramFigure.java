package kingpost.diagram;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import kingpost.graphic.Cause;
import kingpost.graphic.ForceDiagram.Drawn;
import kingpost.graphic.ForceDiagram.Line;
import kingpost.graphic.ForceDiagram.Space;
import kingpost.svg.Box;
import kingpost.svg.Element;
import kingpost.svg.Style;
import kingpost.svg.Svg;
import kingpost.units.Quantity;
import kingpost.units.StructuralUnits;

/** The reciprocal diagram beside its truss, or below a long one: space names on the truss, points in the diagram. */
public final class ForceDiagramFigure {

    private static final double APART = 56;
    private static final double SAME = 4;
    private static final double FINE = 0.75;
    private static final double DOT = 2.4;
    private static final String POINT = "point";

    /**
     * How the two drawings lie.
     *
     * @param below  whether the diagram lies under the truss
     * @param letters of the truss, with the room that it may take
     * @param width  px that the diagram may take across
     * @param height px that it may take up
     */
    private record Arrangement(boolean below, Lettering letters, double width, double height) {

        private static final List<Arrangement> ALL = List.of(
                new Arrangement(false, new Lettering(13, false, false, 330, 230), 230, 260),
                new Arrangement(false, new Lettering(12, false, true, 370, 300), 240, 360),
                new Arrangement(true, new Lettering(13, false, false, 500, 200), 420, 310),
                new Arrangement(true, new Lettering(12, true, true, 600, 220), 560, 340),
                new Arrangement(true, new Lettering(11, true, true, 640, 220), 640, 350));
    }

    private final Drawn diagram;
    private final double newtons;

    private ForceDiagramFigure(Drawn diagram) {
        this.diagram = diagram;
        this.newtons = Quantity.of(1, diagram.truss().forceUnit()).in(StructuralUnits.N);
    }

    public static Svg of(Drawn diagram) {
        ForceDiagramFigure figure = new ForceDiagramFigure(diagram);
        return figure.fitted().toSvg(diagram.truss().name() + ": force diagram", figure.words());
    }

    private Sheet fitted() {
        Sheet best = null;
        for (Arrangement arrangement : Arrangement.ALL) {
            Sheet sheet = fitted(arrangement);
            if (best == null || sheet.homeless().size() < best.homeless().size()) {
                best = sheet;
            }
            if (best.homeless().isEmpty()) {
                break;
            }
        }
        return best;
    }

    private Sheet fitted(Arrangement arrangement) {
        double shrink = 1;
        Sheet sheet = drawn(arrangement, shrink);
        for (int i = 0; i < 5 && sheet.width() > Fitting.WIDEST; i++) {
            shrink *= (Fitting.WIDEST - 8) / sheet.width();
            sheet = drawn(arrangement, shrink);
        }
        return sheet;
    }

    private Sheet drawn(Arrangement a, double shrink) {
        Sheet sheet = new Sheet();
        TrussSketch sketch = new TrussSketch(sheet,
                TrussLayout.filling(diagram.truss(), a.letters.width() * shrink, a.letters.height()), a.letters);
        new SpaceDiagram(sketch, diagram).draw();
        Box form = sheet.bounds();
        Place corner = a.below ? new Place(form.left() + 30, form.bottom() + APART)
                : new Place(form.right() + APART, form.top() + 12);
        double scale = Math.min(a.width * shrink / Math.max(across(), 1e-300), a.height / Math.max(up(), 1e-300));
        points(sketch, corner, scale);
        sheet.settle();
        new ScaleBar(sheet, new ForceText(diagram.truss())).draw(new Place(corner.x(), under(sheet, bottom(corner, scale))), scale,
                newtons);
        sketch.legend(Stream.of(MemberStyle.TENSION, MemberStyle.COMPRESSION, MemberStyle.ZERO)
                .filter(s -> diagram.members().stream().anyMatch(l -> MemberStyle.of(l.sense()) == s)).toList());
        sketch.notes();
        return sheet;
    }

    private double across() {
        return extent(true, true) - extent(true, false);
    }

    private double up() {
        return extent(false, true) - extent(false, false);
    }

    private double extent(boolean x, boolean largest) {
        var values = diagram.spaces().stream().map(Space::at).mapToDouble(v -> x ? v.x() : v.y());
        return largest ? values.max().orElse(0) : values.min().orElse(0);
    }

    /** Below the lowest point and the names of points that stand below it. */
    private static double under(Sheet sheet, double bottom) {
        return 18 + sheet.placed().stream().filter(p -> p.label().key().equals(POINT))
                .mapToDouble(p -> p.patch().bottom()).reduce(bottom + 6, Math::max);
    }

    private double bottom(Place corner, double scale) {
        return corner.y() + up() * scale;
    }

    private Place place(Space space, Place corner, double scale) {
        return corner.plus(new Place((space.at().x() - extent(true, false)) * scale,
                (extent(false, true) - space.at().y()) * scale));
    }

    private void points(TrussSketch sketch, Place corner, double scale) {
        Sheet sheet = sketch.sheet();
        List<Place> places = diagram.spaces().stream().map(s -> place(s, corner, scale)).toList();
        for (MemberStyle style : List.of(MemberStyle.COMPRESSION, MemberStyle.TENSION)) {
            for (Line line : diagram.members()) {
                if (MemberStyle.of(line.sense()) == style) {
                    style.draw(sheet, places.get(line.from()), places.get(line.to()), FINE);
                }
            }
        }
        for (Line line : diagram.outside()) {
            sheet.line(Layer.MEMBERS, places.get(line.from()), places.get(line.to()),
                    line.cause() instanceof Cause.OfSupport ? Ink.REACTION : Ink.BLACK, 1.5);
        }
        if (!sketch.layout().isDense()) {
            names(sketch, places);
        }
    }

    /** One label for all points that lie together. */
    private void names(TrussSketch sketch, List<Place> places) {
        Map<Label, Place> points = new LinkedHashMap<>();
        List<Integer> done = new ArrayList<>();
        for (int i = 0; i < places.size(); i++) {
            if (done.contains(i)) {
                continue;
            }
            Place here = places.get(i);
            List<Integer> together = new ArrayList<>();
            for (int k = i; k < places.size(); k++) {
                if (!done.contains(k) && places.get(k).distance(here) < SAME) {
                    together.add(k);
                }
            }
            done.addAll(together);
            String name = together.stream().map(k -> diagram.spaces().get(k).point()).collect(Collectors.joining(", "));
            Caption caption = sketch.lettering().caption(name, Ink.UNKNOWN).inBold();
            sketch.sheet().add(Layer.JOINTS, new Element.Circle(here.point(), DOT, Style.fill(Ink.BLACK)),
                    Patch.disc(here, DOT));
            Label label = new Label(caption, Spots.around(here, caption, outward(here, places)), POINT, 0);
            points.put(label, here);
            sketch.sheet().label(label);
        }
        sketch.sheet().settle();
        new Leaders(sketch.sheet(), points.values().stream().map(p -> Patch.disc(p, DOT + 1)).toList()).house(points);
    }

    private Place outward(Place here, List<Place> places) {
        Place sum = Place.ORIGIN;
        for (Line line : Stream.concat(diagram.members().stream(), diagram.outside().stream()).toList()) {
            for (int[] ends : new int[][] {{line.from(), line.to()}, {line.to(), line.from()}}) {
                if (places.get(ends[0]).distance(here) < SAME) {
                    sum = sum.plus(places.get(ends[1]).minus(here).unit());
                }
            }
        }
        return sum.norm() < 0.2 ? Place.towards(90) : sum.times(-1).unit();
    }

    private String words() {
        ForceText text = new ForceText(diagram.truss());
        String outside = diagram.outside().stream().map(l -> diagram.name(l) + " " + text.ofNewtons(l.force()))
                .collect(Collectors.joining(", "));
        List<String> inside = diagram.members().stream().map(l -> diagram.name(l) + " ("
                + ((Cause.OfMember) l.cause()).member().name() + ") " + text.ofNewtons(l.force())
                + switch (l.sense()) {
                    case TENSION -> " tension";
                    case COMPRESSION -> " compression";
                    case ZERO -> "";
                }).toList();
        return "The truss without its supports, with the spaces between its outside forces lettered and those between its"
                + " members numbered; and its force diagram to scale. Outside forces, clockwise: " + outside
                + ". Members: " + TrussWords.listed(inside) + ".";
    }
}
