package kingpost.explain;

import java.util.ArrayList;
import java.util.List;

import kingpost.derivation.Block;
import kingpost.derivation.Block.Prose;
import kingpost.derivation.Block.Section;
import kingpost.derivation.Derivation;
import kingpost.statics.Solution;
import kingpost.statics.Step;

/**
 * The whole worked solution in the order in which a teacher takes it: given, find, count, look, reactions where they
 * are needed, plan, joint after joint, results, checks.
 */
public final class SolutionExplanation {

    private final Solution solution;
    private final Notation notation;

    private SolutionExplanation(Solution solution) {
        this.solution = solution;
        this.notation = new Notation(solution.truss());
    }

    public static Derivation of(Solution solution) {
        return new SolutionExplanation(solution).derivation();
    }

    private Derivation derivation() {
        List<Block> sections = new ArrayList<>(new Given(notation, solution).sections());
        sections.add(Section.of("Can equilibrium alone give the forces?",
                DeterminacyExplanation.blocks(solution.determinacy())));
        sections.add(Section.of("What can be seen at once",
                new InspectionExplanation(notation).blocks(solution.inspection())));
        sections.add(Section.of("Reactions", reactions()));
        sections.add(Section.of("Plan", new JointOrderExplanation(notation).plan(solution)));
        sections.addAll(new JointExplanation(notation, solution).sections());
        sections.add(Section.of("Results", results()));
        sections.add(Section.of("Checks", new ChecksExplanation(notation, solution).blocks()));
        return new Derivation(solution.truss().name() + ": forces by the method of joints", sections);
    }

    private List<Block> reactions() {
        Step first = solution.steps().isEmpty() ? null : solution.steps().get(0);
        if (first instanceof Step.Reactions reactions) {
            return new ReactionsExplanation(notation).blocks(reactions);
        }
        if (first != null && !(first instanceof Step.AtJoint)) {
            return List.of(Prose.of("The whole truss does not give the reactions: there are "
                    + Series.number(solution.reactions().size()) + ", and each of its "
                    + (solution.truss().isSpace() ? "six" : "three") + " equations holds two of them or"
                    + " more. They come out on the way, from parts of the truss."));
        }
        String number = solution.truss().isSpace() ? "three" : "two";
        return List.of(Prose.of("The reactions can wait. There is a joint with no more than " + number
                + " unknown forces to start at,"
                + " and from it the joints lead to every member; the reactions then come out at the supports."));
    }

    private List<Block> results() {
        List<Block> blocks = new ArrayList<>(Pictures.results(solution));
        blocks.add(ResultsTable.members(solution));
        blocks.add(ResultsTable.reactions(solution));
        return blocks;
    }
}
