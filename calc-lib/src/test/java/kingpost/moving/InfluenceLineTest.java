package kingpost.moving;

import static kingpost.units.StructuralUnits.kN;
import static kingpost.units.StructuralUnits.m;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.stream.IntStream;
import kingpost.exact.Surd;
import kingpost.statics.RandomTrusses;
import kingpost.statics.Solution;
import kingpost.statics.Solver;
import kingpost.statics.Source;
import kingpost.statics.UnitLoads;
import kingpost.truss.Direction;
import kingpost.truss.Load;
import kingpost.truss.TrussBuilder;
import kingpost.truss.TrussModel;
import kingpost.units.CalculationException;
import kingpost.units.Quantity;
import kingpost.units.StructuralUnits;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class InfluenceLineTest {

    private static final double TINY = 1e-12;

    static TrussBuilder<TrussModel> named(String name) {
        return new TrussBuilder<TrussModel>(name, t -> t).units(m, kN);
    }

    /** Parallel chords; diagonals fall (Pratt) or rise (Howe) towards mid-span. */
    static TrussModel girder(int panels, double panel, double height, boolean falling) {
        TrussBuilder<TrussModel> builder = named("Girder of " + panels + " panels");
        for (int i = 0; i <= panels; i++) {
            builder.joint("L" + i, panel * i, 0);
            if (i > 0 && i < panels) {
                builder.joint("U" + i, panel * i, height).member("L" + i, "U" + i);
            }
        }
        for (int i = 1; i <= panels; i++) {
            builder.member("L" + (i - 1), "L" + i);
            if (i > 1 && i < panels) {
                builder.member("U" + (i - 1), "U" + i);
                boolean down = i <= panels / 2 == falling;
                builder.member((down ? "U" : "L") + (i - 1), (down ? "L" : "U") + i);
            }
        }
        return builder.member("L0", "U1").member("U" + (panels - 1), "L" + panels).pin("L0").roller("L" + panels).build();
    }

    static InfluenceLine member(TrussModel truss, String member) {
        return InfluenceLine.of(truss, new Effect.OfMember(truss.member(member).orElseThrow()),
                LoadedChord.atSupports(truss));
    }

    static InfluenceLine reaction(TrussModel truss, String symbol) {
        return InfluenceLine.of(truss, new Effect.OfReaction(Source.OfReaction.of(truss).stream()
                .filter(r -> r.symbol().equals(symbol)).findFirst().orElseThrow()), LoadedChord.atSupports(truss));
    }

    /**
     * Case IL-04: the moment at a section at x under a unit load at z is z(l - x)/l up to x and x(l - z)/l beyond; a chord
     * opposite joint x has the moment over the height. Source: Encyclopaedia Britannica, 11th edition (1911), article
     * "Bridges", section 27 "Influence lines".
     */
    @ParameterizedTest
    @CsvSource({"4,4,3", "6,5,4", "8,3,2.5", "10,6,7"})
    void chordsFollowTheMomentOfABeam(int panels, double panel, double height) {
        double span = panels * panel;
        for (boolean falling : new boolean[] {true, false}) {
            TrussModel truss = girder(panels, panel, height, falling);
            for (int i = 2; i <= panels / 2; i++) {
                InfluenceLine bottom = member(truss, "L" + (i - 1) + "-L" + i);
                InfluenceLine top = member(truss, "U" + (i - 1) + "-U" + i);
                double opposite = panel * (falling ? i - 1 : i);
                double above = panel * (falling ? i : i - 1);
                for (InfluenceLine.Ordinate o : bottom.ordinates()) {
                    assertEquals(moment(o.x(), opposite, span) / height, o.value(), TINY, "bottom " + i + " " + o);
                }
                for (InfluenceLine.Ordinate o : top.ordinates()) {
                    assertEquals(-moment(o.x(), above, span) / height, o.value(), TINY, "top " + i + " " + o);
                }
            }
        }
    }

    private static double moment(double load, double section, double span) {
        return load <= section ? load * (span - section) / span : section * (span - load) / span;
    }

    /** The two peaks noted in case IL-04 for panels of 4, a height of 3 and a span of 16: 8 x 8/(16 x 3) and 4 x 12/(16 x 3). */
    @Test
    void chordPeaksAreExactFractions() {
        TrussModel truss = girder(4, 4, 3, true);

        InfluenceLine top = member(truss, "U1-U2");
        InfluenceLine bottom = member(truss, "L1-L2");

        assertEquals("L2", top.peak().joint());
        assertEquals(Surd.of(-4, 1).toString() + "/3", top.peak().exact().orElseThrow().toString());
        assertEquals("L1", bottom.peak().joint());
        assertEquals(Surd.of(1, 1), bottom.peak().exact().orElseThrow());
    }

    /**
     * Shear in panel i of n under a load at joint k: (n - k)/n from the right, -k/n from the left; a diagonal carries it
     * over the sine of its slope. Derived from the reactions of a beam, no published source.
     */
    @ParameterizedTest
    @ValueSource(ints = {4, 6, 9})
    void shearsAndDiagonalsFollowTheReactions(int panels) {
        double panel = 3;
        double height = 4;
        TrussModel truss = girder(panels, panel, height, true);
        for (int i = 2; i <= panels / 2; i++) {
            InfluenceLine shear = InfluenceLine.of(truss, new Effect.OfShear("L" + (i - 1), "L" + i),
                    LoadedChord.atSupports(truss));
            InfluenceLine diagonal = member(truss, "U" + (i - 1) + "-L" + i);
            for (int k = 0; k <= panels; k++) {
                double expected = k >= i ? (panels - k) / (double) panels : -k / (double) panels;
                assertEquals(expected, shear.ordinates().get(k).value(), TINY);
                assertEquals(expected * 5 / 4, diagonal.ordinates().get(k).value(), TINY);
                assertTrue(shear.ordinates().get(k).exact().isPresent());
            }
        }
        InfluenceLine left = reaction(truss, "L0_y");
        for (int k = 0; k <= panels; k++) {
            assertEquals((panels - k) / (double) panels, left.ordinates().get(k).value(), TINY);
        }
    }

    /**
     * A girder of triangles: each chord has the moment at the joint opposite over the height, each diagonal the shear of
     * its panel over its sine, rising ones pushed where the shear is positive. Common practice, no source.
     */
    @ParameterizedTest
    @CsvSource({"4,6,4", "7,5,6", "10,3,2"})
    void trianglesFollowMomentAndShear(int panels, double panel, double height) {
        TrussBuilder<TrussModel> builder = named("Triangles").joint("L0", 0, 0);
        for (int i = 1; i <= panels; i++) {
            builder.joint("L" + i, panel * i, 0).joint("U" + i, panel * (i - 0.5), height).member("L" + (i - 1), "L" + i)
                    .member("L" + (i - 1), "U" + i).member("U" + i, "L" + i);
            if (i > 1) {
                builder.member("U" + (i - 1), "U" + i);
            }
        }
        TrussModel truss = builder.pin("L0").roller("L" + panels).build();
        double span = panels * panel;
        double slope = Math.hypot(panel / 2, height) / height;
        for (int i = 1; i <= panels; i++) {
            InfluenceLine lower = member(truss, "L" + (i - 1) + "-L" + i);
            InfluenceLine rising = member(truss, "L" + (i - 1) + "-U" + i);
            InfluenceLine falling = member(truss, "U" + i + "-L" + i);
            for (int k = 0; k <= panels; k++) {
                double shear = k >= i ? (panels - k) / (double) panels : -k / (double) panels;
                assertEquals(moment(k * panel, (i - 0.5) * panel, span) / height, lower.ordinates().get(k).value(), TINY);
                assertEquals(-shear * slope, rising.ordinates().get(k).value(), TINY);
                assertEquals(shear * slope, falling.ordinates().get(k).value(), TINY);
            }
            if (i < panels) {
                InfluenceLine upper = member(truss, "U" + i + "-U" + (i + 1));
                for (int k = 0; k <= panels; k++) {
                    assertEquals(-moment(k * panel, i * panel, span) / height, upper.ordinates().get(k).value(), TINY);
                }
            }
        }
    }

    /**
     * A cantilever bridge with a hinge: the middle reaction rises beyond 1 on the arm and falls to nothing at the far
     * end, 0, 1/2, 1, 3/2, 1, 1/2, 0 for an arm of half the anchor span. Common practice, no source.
     */
    @Test
    void reactionOfACantileverBridge() {
        TrussModel truss = named("Arm").joint("L0", 0, 0).joint("L1", 5, 0).joint("L2", 10, 0).joint("L3", 15, 0)
                .joint("L4", 20, 0).joint("L5", 25, 0).joint("L6", 30, 0).joint("U1", 5, 4).joint("U2", 10, 6)
                .joint("U3", 15, 4).joint("U4", 20, 4).joint("U5", 25, 4)
                .members("L0-L1 L1-L2 L2-L3 L3-L4 L4-L5 L5-L6 L0-U1 U1-L1 L1-U2 U1-U2 U2-L2 U2-U3 L2-U3 U3-L3 L3-U4 U4-L4")
                .members("U4-U5 L4-U5 U5-L5 U5-L6").pin("L0").roller("L2").roller("L6").build();

        double[] middle = {0, 0.5, 1, 1.5, 1, 0.5, 0};
        double[] left = {1, 0.5, 0, -0.5, -1 / 3.0, -1 / 6.0, 0};
        for (int i = 0; i < middle.length; i++) {
            assertEquals(middle[i], reaction(truss, "L2_y").ordinates().get(i).value(), TINY);
            assertEquals(left[i], reaction(truss, "L0_y").ordinates().get(i).value(), TINY);
        }
    }

    /**
     * A bridge of four panels of 6 m, 6 m high, its diagonal from the first bottom joint to the middle of the top: 0, 0.354,
     * -0.707, -0.354, 0. Source: R. C. Hibbeler, Structural Analysis, 8th edition, chapter 6, the example with member GB;
     * from memory.
     */
    @Test
    void diagonalOfATextbookBridge() {
        TrussModel truss = named("Bridge").joint("A", 0, 0).joint("B", 6, 0).joint("C", 12, 0).joint("D", 18, 0)
                .joint("E", 24, 0).joint("H", 6, 6).joint("G", 12, 6).joint("F", 18, 6)
                .members("AB BC CD DE AH HG GF FE BH CG DF GB GD").pin("A").roller("E").build();

        InfluenceLine line = member(truss, "GB");

        double[] printed = {0, 0.354, -0.707, -0.354, 0};
        for (int i = 0; i < printed.length; i++) {
            assertEquals(printed[i], line.ordinates().get(i).value(), 0.0005);
        }
        assertEquals("\u2212\u221a2/2", line.ordinates().get(2).exact().orElseThrow().toString());
    }

    /** One factorization for all positions gives what solving the truss anew for each gives; seeded random trusses. */
    @Test
    void unitLoadsAgreeWithTheSolver() {
        RandomTrusses.simple(40, 900).forEach(truss -> {
            List<String> joints = truss.joints().stream().map(j -> j.name()).toList();
            UnitLoads loads = UnitLoads.of(truss, joints,
                    truss.members().stream().map(member -> (Source) new Source.OfMember(member)).toList());
            assertTrue(loads.worst() < 1e-10, truss.name() + " " + loads.worst());
            for (int j = 0; j < joints.size(); j += 3) {
                Solution solution = Solver.solve(new TrussModel(truss.name(), truss.lengthUnit(), truss.forceUnit(),
                        truss.joints(), truss.members(), truss.supports(),
                        List.of(new Load.Directed(joints.get(j), Quantity.of(1, StructuralUnits.N), Direction.DOWN))));
                for (int k = 0; k < truss.members().size(); k++) {
                    assertEquals(solution.members().get(k).force(), loads.forces().get(j).get(k),
                            1e-9 * solution.checks().scale(), truss.name());
                }
            }
        });
    }

    @Test
    void isStraightBetweenJointsAndNothingBeyond() {
        InfluenceLine line = member(girder(4, 4, 3, true), "L1-L2");

        assertEquals(0.5, line.at(2), TINY);
        assertEquals(1, line.at(4), TINY);
        assertEquals(0, line.at(-0.1));
        assertEquals(0, line.at(16.1));
    }

    @Test
    void ofALoadOnTheOtherChord() {
        TrussModel truss = girder(6, 3, 4, true);
        List<String> top = IntStream.range(1, 6).mapToObj(i -> "U" + i).toList();

        InfluenceLine post = InfluenceLine.of(truss, new Effect.OfMember(truss.member("L2-U2").orElseThrow()),
                LoadedChord.through(truss, top));

        assertEquals(-2 / 3.0, post.ordinates().get(1).value(), TINY);
        assertEquals(3, post.start());
        assertEquals(15, post.end());
    }

    private static String refusal(org.junit.jupiter.api.function.Executable executable) {
        return assertThrows(CalculationException.class, executable).getMessage();
    }

    @Test
    void refusesChordsThatAreNone() {
        TrussModel truss = girder(4, 4, 3, true);
        TrussModel wall = named("Wall").joint("A", 0, 3).joint("B", 0, 0).joint("C", 4, 3).members("AC BC").pin("A").pin("B")
                .build();
        TrussModel gap = named("Gap").joint("A", 0, 0).joint("B", 4, 0).joint("C", 2, 3).joint("D", 2, 1)
                .members("AC BC AD BD CD").pin("A").roller("B").build();

        assertEquals("Loaded chord: no joint is named; name two or more from left to right, as in along(\"L0 L1 L2\").",
                refusal(() -> LoadedChord.through(truss, List.of())));
        assertEquals("Loaded chord: only joint L1 is named; name two or more from left to right, as in along(\"L0 L1 L2\").",
                refusal(() -> LoadedChord.through(truss, List.of("L1"))));
        assertEquals("Loaded chord: joint L1 does not lie to the right of L2; name the joints from left to right.",
                refusal(() -> LoadedChord.through(truss, List.of("L2", "L1"))));
        assertEquals("Loaded chord: the supports A and B are not on one level; name the joints that carry the load from left"
                + " to right, as in along(\"L0 L1 L2\").", refusal(() -> LoadedChord.atSupports(wall)));
        assertEquals("Loaded chord: no member joins A and B on the level of the supports; name the joints that carry the load"
                + " from left to right, as in along(\"L0 L1 L2\").", refusal(() -> LoadedChord.atSupports(gap)));
        assertEquals("Panel L1 L3: it is not one of the loaded chord L0 L1 L2 L3 L4; name two joints of it that follow each"
                + " other.", refusal(() -> InfluenceLine.of(truss, new Effect.OfShear("L1", "L3"),
                LoadedChord.atSupports(truss))));
    }
}
