package kingpost.explain;

import java.util.ArrayList;
import java.util.List;

import kingpost.derivation.Phrase;
import kingpost.derivation.Table;
import kingpost.derivation.Table.Column;
import kingpost.statics.Solution;
import kingpost.statics.Solution.MemberResult;
import kingpost.statics.Solution.ReactionResult;
import kingpost.statics.Source;
import kingpost.statics.Step;

/** The answers in tables: members with their forces and senses, reactions as they act on the truss. */
public final class ResultsTable {

    private final Solution solution;
    private final Notation notation;
    private final InLine inLine;

    private ResultsTable(Solution solution) {
        this.solution = solution;
        this.notation = new Notation(solution.truss());
        this.inLine = new InLine(solution.inspection());
    }

    /** One row for each member, in the truss's order. Forces in the truss's unit, tension positive. */
    public static Table members(Solution solution) {
        return new ResultsTable(solution).members();
    }

    /** One row for each reaction component. */
    public static Table reactions(Solution solution) {
        return new ResultsTable(solution).reactions();
    }

    private Table members() {
        boolean exact = solution.members().stream().anyMatch(result -> ExactValue.saysMore(result.exact()));
        List<Column> columns = new ArrayList<>(List.of(Column.left("Member"), Column.right(inUnits("Force")),
                Column.left("Sense")));
        if (exact) {
            columns.add(Column.right(inUnits("Exactly")));
        }
        columns.add(Column.left("Found"));
        return new Table(Phrase.of("Member forces, tension positive"), columns,
                solution.members().stream().map(result -> row(result, exact)).toList(), true);
    }

    private List<Phrase> row(MemberResult result, boolean exact) {
        List<Phrase> cells = new ArrayList<>();
        cells.add(Phrase.of(result.member().name()));
        cells.add(Phrase.of(Notation.three(notation.inForceUnit(result.force()))));
        cells.add(Phrase.of(SenseWords.noun(result.force())));
        if (exact) {
            cells.add(ExactValue.of(result.exact()).map(Phrase::of).orElse(Phrase.EMPTY));
        }
        cells.add(Phrase.of(found(result)));
        return cells;
    }

    private String found(MemberResult result) {
        return switch (result.found()) {
            case INSPECTION -> "by inspection";
            case SAME_AS_IN_LINE -> "as " + String.join(", ", inLine.with(result.member()));
            case JOINT, SECTION, JOINTS_TOGETHER -> at(new Source.OfMember(result.member()));
        };
    }

    private String at(Source source) {
        return solution.steps().stream()
                .filter(step -> step.answers().stream().anyMatch(answer -> answer.unknown().equals(source)))
                .map(step -> step.accept(new Step.Visitor<String>() {
                    @Override
                    public String reactions(Step.Reactions reactions) {
                        return "whole truss";
                    }

                    @Override
                    public String joint(Step.AtJoint joint) {
                        return "joint " + joint.joint();
                    }

                    @Override
                    public String section(Step.AtSection section) {
                        return "section";
                    }

                    @Override
                    public String twoBodies(Step.TwoBodies two) {
                        return "two bodies";
                    }

                    @Override
                    public String together(Step.JointsTogether together) {
                        return "joints " + String.join(", ", together.joints());
                    }
                })).findFirst().orElse("");
    }

    private Table reactions() {
        boolean exact = solution.reactions().stream().anyMatch(result -> ExactValue.saysMore(result.exact()));
        List<Column> columns = new ArrayList<>(List.of(Column.left("Reaction"), Column.right(inUnits("Force")),
                Column.left("Acts on the truss")));
        if (exact) {
            columns.add(Column.right(inUnits("Exactly")));
        }
        columns.add(Column.left("Found"));
        return new Table(Phrase.of("Reactions"), columns,
                solution.reactions().stream().map(result -> row(result, exact)).toList(), true);
    }

    private List<Phrase> row(ReactionResult result, boolean exact) {
        List<Phrase> cells = new ArrayList<>();
        cells.add(Phrase.of(notation.symbol(result.reaction())));
        cells.add(Phrase.of(Notation.three(notation.inForceUnit(result.force()))));
        cells.add(Phrase.of(Heading.words(result.reaction(), result.force())));
        if (exact) {
            cells.add(ExactValue.of(result.exact()).map(Phrase::of).orElse(Phrase.EMPTY));
        }
        cells.add(Phrase.of(at(result.reaction())));
        return cells;
    }

    private String inUnits(String what) {
        return what + " (" + notation.forceLabel() + ")";
    }
}
