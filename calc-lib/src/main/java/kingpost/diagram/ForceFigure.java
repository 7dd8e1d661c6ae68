package kingpost.diagram;

import java.util.List;
import java.util.stream.Stream;
import kingpost.statics.Solution;
import kingpost.statics.Solution.MemberResult;
import kingpost.statics.Solution.ReactionResult;
import kingpost.statics.Solution.Sense;
import kingpost.statics.Vector;
import kingpost.svg.Svg;
import kingpost.truss.Member;
import kingpost.truss.TrussModel;

/** A solved truss: each member's force by its letter, its value and the form of its line; loads and reactions. */
public final class ForceFigure {

    private final Solution solution;
    private final ForceText text;

    private ForceFigure(Solution solution) {
        this.solution = solution;
        this.text = new ForceText(solution.truss());
    }

    /** The figure of {@code solution}. */
    public static Svg of(Solution solution) {
        ForceFigure figure = new ForceFigure(solution);
        TrussModel truss = solution.truss();
        String title = truss.name() + ": forces in the members";
        Sheet sheet = Fitting.sketch(truss, figure::draw);
        if (truss.isSpace()) {
            return Views.of(truss, sheet, member -> MemberStyle.of(figure.sense(member))).toSvg(title, figure.words());
        }
        return sheet.toSvg(title, figure.words());
    }

    private void draw(TrussSketch sketch) {
        for (MemberResult result : solution.members()) {
            sketch.member(result.member(), MemberStyle.of(result.sense()));
        }
        sketch.supports();
        sketch.joints();
        sketch.loads();
        solution.reactions().forEach(sketch::reaction);
        sketch.names();
        solution.members().forEach(r -> sketch.force(r.member(), MemberStyle.of(r.sense()), r.force()));
        sketch.sheet().settle();
        sketch.legend(Stream.of(MemberStyle.TENSION, MemberStyle.COMPRESSION, MemberStyle.ZERO)
                .filter(style -> solution.members().stream().anyMatch(r -> MemberStyle.of(r.sense()) == style)).toList());
        sketch.notes();
    }

    private Sense sense(Member member) {
        return solution.members().stream().filter(r -> r.member().equals(member)).map(MemberResult::sense).findFirst()
                .orElseThrow();
    }

    private String words() {
        TrussWords words = new TrussWords(solution.truss());
        return words.counted() + " " + said("In tension", Sense.TENSION) + said("In compression", Sense.COMPRESSION)
                + said("Without force", Sense.ZERO) + reactions();
    }

    private String said(String lead, Sense sense) {
        List<String> members = solution.members().stream().filter(r -> r.sense() == sense)
                .map(r -> r.member().name() + (sense == Sense.ZERO ? "" : " " + text.ofNewtons(r.force()))).toList();
        return members.isEmpty() ? "" : lead + ": " + TrussWords.listed(members) + ". ";
    }

    private String reactions() {
        return "Reactions: " + TrussWords.listed(solution.reactions().stream().map(this::reaction).toList()) + ".";
    }

    private String reaction(ReactionResult result) {
        Vector way = TrussLayout.vector(result.reaction().direction()).times(result.force() < 0 ? -1 : 1);
        return text.ofNewtons(result.force()) + " " + TrussWords.way(way) + " at "
                + result.reaction().joint();
    }
}
