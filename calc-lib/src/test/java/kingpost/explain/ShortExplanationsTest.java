package kingpost.explain;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Map;
import java.util.stream.Stream;

import kingpost.GoldenFile;
import kingpost.derivation.Derivation;
import kingpost.render.PlainRenderer;
import kingpost.statics.Checks;
import kingpost.statics.Determinacy.Cause;
import kingpost.statics.Determinacy.Count;
import kingpost.statics.Determinacy;
import kingpost.statics.Envelope;
import kingpost.statics.Inspections;
import kingpost.statics.JointOrder;
import kingpost.statics.MemberSearch;
import kingpost.statics.Sections;
import kingpost.statics.Solution;
import kingpost.statics.Solver;
import kingpost.statics.Vector;
import kingpost.truss.Direction;
import kingpost.truss.Measured;
import kingpost.truss.TrussBuilder;
import kingpost.truss.TrussModel;
import kingpost.units.CalculationException;
import kingpost.units.StructuralUnits;
import org.junit.jupiter.api.Test;

/** The parts that answer one question: determinacy, idle members, order, one joint, checks. */
class ShortExplanationsTest {

    private static final TrussModel TRUSS = SampleTrusses.footbridge();

    private static String text(Derivation derivation) {
        return new PlainRenderer().render(WordsOnly.of(derivation));
    }

    private static String flat(Derivation derivation) {
        return text(derivation).replaceAll("\\s+", " ");
    }

    @Test
    void readAsTheGoldenFilesHaveThem() {
        Solution solution = Solver.solve(TRUSS);
        GoldenFile.check("kingpost/explain/short/determinacy.txt",
                text(DeterminacyExplanation.of(TRUSS, solution.determinacy())));
        GoldenFile.check("kingpost/explain/short/inspection.txt",
                text(InspectionExplanation.of(TRUSS, solution.inspection())));
        GoldenFile.check("kingpost/explain/short/order.txt",
                text(JointOrderExplanation.of(TRUSS, JointOrder.of(TRUSS))));
        GoldenFile.check("kingpost/explain/short/joint.txt", text(JointExplanation.of(solution, "U1")));
        GoldenFile.check("kingpost/explain/short/checks.txt", text(ChecksExplanation.of(solution)));
        GoldenFile.check("kingpost/explain/short/member.txt", text(MemberExplanation.of(MemberSearch.of(TRUSS,
                TRUSS.member("U1-L2").orElseThrow()), Inspections.of(TRUSS))));
        GoldenFile.check("kingpost/explain/short/section.txt", text(SectionExplanation.of(Sections.of(TRUSS,
                Stream.of("L1-L2", "U1-U2", "U1-L2").map(m -> TRUSS.member(m).orElseThrow()).toList()))));
    }

    /** Self weight, covering and snow brought to the joints, in two load cases with a combination. */
    @Test
    void readAsTheGoldenFilesHaveThemWhereLoadsAreSpread() {
        TrussModel barn = new TrussBuilder<TrussModel>("Barn roof", t -> t).units(StructuralUnits.m, StructuralUnits.kN)
                .joint("A", 0, 0).joint("B", 4, 3).joint("C", 8, 6).joint("D", 12, 3).joint("E", 16, 0).joint("F", 8, 0)
                .members("AB BC CD DE AF FE BF DF CF").pin("A").roller("E")
                .loadCase("dead").selfWeight(0.2).roofLoad("A B C D E", 0.4, 5, Measured.ALONG_SLOPE)
                .loadCase("snow").roofLoad("A B C D E", 0.8, 5, Measured.ON_PLAN)
                .combination("1.2 dead + 1.6 snow").combination("lifted", "0.9 dead").build();
        Envelope envelope = Envelope.of(barn);
        TrussModel combined = barn.under("Barn roof, 1.2 dead + 1.6 snow",
                Envelope.loads(barn, envelope.combinations().get(0)));
        Solution solution = Solver.solve(combined);

        GoldenFile.check("kingpost/explain/short/envelope.txt", text(EnvelopeExplanation.of(envelope)));
        GoldenFile.check("kingpost/explain/short/combinations.txt", text(EnvelopeExplanation.ofAll(envelope)));
        GoldenFile.check("kingpost/explain/short/spread-loads.txt", text(new Derivation("Given",
                new Given(new Notation(combined), solution).sections())));
    }

    /** A three-hinged arch on two levels, by an equation of the whole and one of a half. */
    @Test
    void readsAsTheGoldenFileHasItWhereTwoBodiesAreNeeded() {
        TrussModel arch = new TrussBuilder<TrussModel>("Yard arch", t -> t).units(StructuralUnits.m, StructuralUnits.kN)
                .joint("A", 0, 0).joint("B", 2, 3).joint("C", 5, 4).joint("D", 8, 3).joint("E", 10, -1).joint("F", 3, 1)
                .joint("G", 7, 1).members("AB BC AF BF CF CD DE CG DG EG").pin("A").pin("E")
                .load("B", 5, Direction.DOWN).build();

        GoldenFile.check("kingpost/explain/short/arch.txt", text(SolutionExplanation.of(Solver.solve(arch))));
    }

    @Test
    void warnsOfBarsNearlyInLineWithTheConditionFigure() {
        TrussModel flat = SampleTrusses.named("Flat tie").units(StructuralUnits.m, StructuralUnits.kN).joint("A", -1, 0).joint("B", 1, 0).joint("C", 0, -0.0002)
                .members("AC BC").pin("A").pin("B").load("C", 1, Direction.DOWN).build();
        Solution solution = Solver.solve(flat);
        String warning = "It is close to a mechanism: the condition of its joint equations is ";
        assertTrue(flat(DeterminacyExplanation.of(flat, solution.determinacy())).contains(warning));
        String said = flat(ChecksExplanation.of(solution));
        assertTrue(said.contains(warning), said);
        assertEquals(solution.checks().condition(), solution.determinacy().condition());
        assertTrue(solution.checks().condition() > 5000 && solution.checks().condition() < 100_000);
        assertFalse(flat(ChecksExplanation.of(Solver.solve(TRUSS))).contains("close to a mechanism"));
    }

    @Test
    void saysOfAJointThatWasNotWorkedThatItChecks() {
        String said = flat(JointExplanation.of(Solver.solve(TRUSS), "L4"));
        assertTrue(said.contains("Every force at joint L4 was found at its neighbours"), said);
        assertTrue(said.contains("= 0 holds"), said);
    }

    @Test
    void saysOfAJointUsedUpByInspectionWhatWasSeenThere() {
        String said = flat(JointExplanation.of(Solver.solve(TRUSS), "U2"));
        assertTrue(said.contains("inspection told all that its equations could"), said);
        assertTrue(said.contains("F_L2-U2 = 0"), said);
    }

    @Test
    void namesTheJointsWhenOneIsNotThere() {
        Solution solution = Solver.solve(SampleTrusses.canopy());
        CalculationException thrown = assertThrows(CalculationException.class,
                () -> JointExplanation.of(solution, "Q"));
        assertEquals("Joint Q: Loading-dock canopy has no joint of that name; its joints are A, B, C, D.",
                thrown.getMessage());
    }

    @Test
    void saysWhatAMechanismLacks() {
        Determinacy missing = new Determinacy.Mechanism(new Count(4, 3, 4, 2, 7), Cause.TOO_FEW,
                Map.of("D", new Vector(1, 0, 0)), 1);
        String said = flat(DeterminacyExplanation.of(TRUSS, missing));
        assertTrue(said.contains("a mechanism: joint D can move although no member changes its length."), said);
        assertTrue(said.contains("one more member or reaction is needed"), said);
    }

    @Test
    void tellsBadSupportsFromBadMembers() {
        Count count = new Count(5, 3, 4, 2, 7);
        Map<String, Vector> all = Map.of("A", Vector.X, "B", Vector.X);
        String supports = flat(DeterminacyExplanation.of(TRUSS,
                new Determinacy.Mechanism(count, Cause.REACTIONS_DO_NOT_HOLD, all, 1)));
        String members = flat(DeterminacyExplanation.of(TRUSS,
                new Determinacy.Mechanism(count, Cause.MEMBERS_MISPLACED, all, 1)));
        assertTrue(supports.contains("Turn or move a support"), supports);
        assertTrue(members.contains("brace what moves"), members);
    }

    @Test
    void saysHowFarATrussIsIndeterminateAndWhatCouldGo() {
        String said = flat(DeterminacyExplanation.of(TRUSS,
                new Determinacy.Indeterminate(new Count(6, 3, 4, 2, 8), 1, List.of("AC", "BD"), List.of("A_x"))));
        assertTrue(said.contains("statically indeterminate to degree 1"), said);
        assertTrue(said.contains("Without any one of AC or BD it would still stand. Of the reactions, it could do without A_x."), said);
    }

    @Test
    void doesNotCallFailedChecksRounding() {
        Solution good = Solver.solve(SampleTrusses.canopy());
        Checks c = good.checks();
        Checks bad = new Checks(c.unused(), c.loadsAndReactions(), c.secondMethod(),
                c.scale(), 1e-3, c.condition());
        Solution doubtful = new Solution(good.truss(), good.determinacy(), good.inspection(), good.steps(),
                good.members(), good.reactions(), bad);
        String said = flat(ChecksExplanation.of(doubtful));
        assertTrue(said.contains("Do not use these answers"), said);
        assertFalse(said.contains("The answers hold"), said);
    }
}
