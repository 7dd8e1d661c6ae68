package kingpost.diagram;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import kingpost.statics.SectionResult.Solved;
import kingpost.statics.Sections;
import kingpost.statics.Step;
import kingpost.svg.Svg;
import kingpost.truss.Direction;
import kingpost.truss.TrussModel;
import org.junit.jupiter.api.Test;

class SectionFigureTest {

    private static Step.AtSection cut(TrussModel truss, String members) {
        return assertInstanceOf(Solved.class, Sections.of(truss, Stream.of(members.split(" "))
                .map(name -> truss.member(name).orElseThrow()).toList()), members).section();
    }

    private static List<String> texts(TrussModel truss, String members) {
        return Clashes.textsOf(SectionFigure.of(truss, cut(truss, members)));
    }

    /** Every panel of bridges and roofs, cut through chords and diagonal. */
    @Test
    void keepsTheContractOfFigures() {
        for (int panels = 4; panels <= 12; panels += 8) {
            TrussModel bridge = Example.bridge(panels, 4, 5, 12.5);
            TrussModel roof = Example.roof(panels, 2.5, 4);
            for (int i = 2; i < panels; i++) {
                boolean left = i <= panels / 2;
                String chords = "L" + (i - 1) + "-L" + i + " U" + (i - 1) + "-U" + i + " ";
                String falling = "U" + (i - 1) + "-L" + i;
                String rising = "L" + (i - 1) + "-U" + i;
                check(bridge, chords + (left ? falling : rising));
                check(roof, chords + (left ? falling : rising));
            }
        }
    }

    private static void check(TrussModel truss, String members) {
        Step.AtSection step = cut(truss, members);
        FigureContract.check(() -> SectionFigure.of(truss, step));
    }

    /** Panels of 4 m, height 5 m: from U2 back to the end it is 8 m, from L3 12 m; both chords lie 5 m off. */
    @Test
    void writesTheLeverArms() {
        List<String> texts = texts(Example.bridge(6, 4, 5, 12.5), "L2-L3 U2-U3 U2-L3");

        assertTrue(texts.containsAll(List.of("about U2", "about L3", "4 m", "8 m", "12 m", "5 m")), texts::toString);
        assertTrue(texts.containsAll(List.of("FL2-L3", "FU2-U3", "FU2-L3")), texts::toString);
        assertTrue(texts.contains("L0y: 31.3 kN"), texts::toString);
    }

    @Test
    void marksThePointWhereChordsCrossOutsideTheTruss() {
        TrussModel roof = Example.roof(4, 2.5, 4);

        assertTrue(texts(roof, "L2-L3 U2-U3 U3-L2").contains("L4"), texts(roof, "L2-L3 U2-U3 U3-L2")::toString);
        TrussModel tapered = Example.named("Tapered").joint("A", 0, 0).joint("B", 3, 0).joint("C", 6, 0)
                .joint("D", 0, 4).joint("E", 3, 3).members("AB BC DE CE BE AE AD").pin("A").roller("D", 0)
                .load("C", 10, Direction.DOWN).build();
        Svg svg = SectionFigure.of(tapered, cut(tapered, "AB AE DE"));

        assertTrue(Clashes.textsOf(svg).contains("about A"), Clashes.textsOf(svg)::toString);
        FigureContract.check(() -> SectionFigure.of(tapered, cut(tapered, "AB AE DE")));
    }

    @Test
    void drawsUnknownsAsTensionAwayFromThePart() {
        TrussModel bridge = Example.bridge(4, 4, 5, 10);
        Svg svg = SectionFigure.of(bridge, cut(bridge, "L1-L2 U1-U2 U1-L2"));

        assertTrue(svg.description().contains("member U1-U2 is drawn as tension, away from the part"),
                svg.description());
        assertEquals(5, Clashes.arrowsOf(svg).size(), "three members cut, the reaction that is not zero, the load at L1");
    }

    @Test
    void keepsALargeTrussReadable() {
        TrussModel bridge = Example.bridge(60, 3, 3, 1);
        List<Svg> drawn = new ArrayList<>();
        FigureContract.check(() -> {
            Svg svg = SectionFigure.of(bridge, cut(bridge, "L29-L30 U29-U30 U29-L30"));
            drawn.add(svg);
            return svg;
        });
        assertTrue(drawn.get(0).description().contains("more"), drawn.get(0).description());
    }
}
