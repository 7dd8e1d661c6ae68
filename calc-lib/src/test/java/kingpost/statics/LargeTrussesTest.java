package kingpost.statics;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Set;
import kingpost.truss.Direction;
import kingpost.truss.TrussBuilder;
import kingpost.truss.TrussModel;
import org.junit.jupiter.api.Test;

/**
 * Trusses that no full matrix holds: right, not how fast; {@link ScaleByHand} measures that. Expected forces are those
 * of one section through a girder with parallel chords, shear over the sine and moment over the height: common
 * practice, no source.
 */
class LargeTrussesTest {

    @Test
    void solvesARowOfTrianglesOfTwentyThousandMembers() {
        TrussModel truss = Strips.warren(20_003);
        int bays = (truss.members().size() - 3) / 4;
        Solution solution = Solver.solve(truss);

        double support = bays / 2.0;
        for (int i : new int[] {0, 1, 2_000, 2_500, bays}) {
            double moment = support * (2 * i + 1) - i * (i + 1.0) / 2 * 2 + i;
            assertEquals(moment / 1.5, Answers.force(solution, "L" + i + "-L" + (i + 1)), 1e-9 * moment, "bay " + i);
            double shear = support - i;
            assertEquals(-shear * Math.hypot(1, 1.5) / 1.5, Answers.force(solution, "L" + i + "-U" + i),
                    1e-9 * support, "bay " + i);
        }
        assertTrue(solution.checks().pass(), () -> "worst " + solution.checks().worst());
    }

    @Test
    void solvesSpansThatHangOnEachOther() {
        TrussModel truss = overhangs(10_000);
        Solution solution = Solver.solve(truss);

        assertTrue(solution.steps().stream().anyMatch(s -> s instanceof Step.JointsTogether));
        assertTrue(solution.checks().pass(), () -> "worst " + solution.checks().worst());
        // the first span, of twenty bays with a support under its tenth, ends at the hinge L20: moments about it
        double moments = 0;
        for (int i = 1; i <= 19; i++) {
            moments += 3.0 * (20 - i);
        }
        assertEquals(moments, 60 * Answers.reaction(solution, "L0_y") + 30 * Answers.reaction(solution, "L10_y"), 1e-6);
    }

    @Test
    void findsTheBayWithoutDiagonalAmongThousands() {
        TrussModel truss = mastWithout("A2499-B2500", false);

        Determinacy.Mechanism mechanism = assertInstanceOf(Determinacy.Mechanism.class, Determinacies.of(truss));

        assertEquals(1, mechanism.freedoms());
        assertEquals(2 * 501, mechanism.motion().size());
        assertTrue(mechanism.motion().containsKey("A2500") && !mechanism.motion().containsKey("A2499"));
        assertThrows(NotSolvable.class, () -> Solver.solve(truss));
    }

    @Test
    void findsTheBayWithTwoDiagonalsAmongThousands() {
        Determinacy.Indeterminate spare = assertInstanceOf(Determinacy.Indeterminate.class,
                Determinacies.of(mastWithout("", true)));

        assertEquals(1, spare.degree());
        assertEquals(Set.of("A1000-B1000", "A1001-B1001", "A1000-A1001", "B1000-B1001", "A1000-B1001", "B1000-A1001"),
                Set.copyOf(spare.removable()));
        assertEquals(Set.of(), Set.copyOf(spare.removableReactions()));
    }

    @Test
    void solvesAFanOfThousandsOfMembersAtOneJoint() {
        TrussBuilder<TrussModel> builder = Trusses.named("Fan").joint("H", 0, 0).pin("A0").roller("A5000");
        for (int i = 0; i <= 5_000; i++) {
            double angle = Math.PI * (0.1 + 0.8 * i / 5_000);
            builder.joint("A" + i, 5_000 * Math.cos(angle), 5_000 * Math.sin(angle)).member("H", "A" + i);
            if (i > 0) {
                builder.member("A" + (i - 1), "A" + i);
            }
        }
        Solution solution = Solver.solve(builder.load("A2500", 1, Direction.DOWN).build());

        assertTrue(solution.checks().pass(), () -> "worst " + solution.checks().worst());
    }

    /** Elimination and singular values agree on small trusses with members taken away and put in. */
    @Test
    void ranksLikeTheFullMatrix() {
        for (int drop = 0; drop < 3; drop++) {
            int dropped = drop;
            RandomTrusses.simple(60, 77).filter(t -> t.members().size() > 6).forEach(t -> {
                Network network = new Network(without(t, dropped));
                Route route = Route.of(network, new Inspections(network));
                Determinacy full = Determinacies.of(network, route);
                Determinacy sparse = Determinacies.byElimination(network, SolutionOrder.of(network, route.moves()));
                assertEquals(full.getClass(), sparse.getClass(), t::name);
                assertEquals(full.count(), sparse.count(), t::name);
            });
        }
    }

    /** Without the first members, and with one of them between two others' ends in its place when {@code drop} is 2. */
    private static TrussModel without(TrussModel truss, int drop) {
        TrussBuilder<TrussModel> builder = Trusses.named(truss.name());
        truss.joints().forEach(j -> builder.joint(j.name(), j.x(), j.y()));
        truss.members().stream().skip(drop == 2 ? 1 : 0).forEach(m -> builder.member(m.from(), m.to()));
        truss.supports().forEach(s -> {
            if (drop > 0) {
                s.reactions().forEach(d -> builder.link(s.joint(), d));
            } else {
                builder.link(s.joint(), Direction.RIGHT).link(s.joint(), Direction.UP);
            }
        });
        return builder.build();
    }

    private static TrussModel overhangs(int members) {
        int bays = (members + 3) / 4;
        TrussBuilder<TrussModel> builder = Trusses.named("Overhangs").pin("L0").roller("L10");
        for (int i = 0; i <= bays; i++) {
            builder.joint("L" + i, 3 * i, 0).joint("U" + i, 3 * i, 4).member("L" + i, "U" + i);
            if (i > 0) {
                boolean hinge = i % 20 == 0 && i < bays - 1;
                builder.load("L" + i, 1, Direction.DOWN).member("L" + (i - 1), "L" + i)
                        .member("U" + (i - 1), "L" + i);
                if (hinge) {
                    builder.roller("L" + Math.min(bays, i + 10));
                } else {
                    builder.member("U" + (i - 1), "U" + i);
                }
            }
        }
        return builder.build();
    }

    private static TrussModel mastWithout(String diagonal, boolean second) {
        TrussModel mast = Strips.mast(12_000);
        TrussBuilder<TrussModel> builder = Trusses.named("Mast").pin("A0").roller("B0");
        mast.joints().forEach(j -> builder.joint(j.name(), j.x(), j.y()));
        mast.members().stream().filter(m -> !m.name().equals(diagonal)).forEach(m -> builder.member(m.from(), m.to()));
        return (second ? builder.member("B1000", "A1001") : builder).build();
    }
}
