package kingpost.diagram;

import java.util.List;
import java.util.stream.Stream;
import kingpost.statics.Solution;
import kingpost.statics.Solution.MemberResult;
import kingpost.statics.Solution.ReactionResult;
import kingpost.statics.Solution.Sense;
import kingpost.svg.Svg;
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
        return Fitting.sketch(truss, figure::draw).toSvg(truss.name() + ": forces in the members", figure.words());
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
        return text.ofNewtons(result.force()) + " " + TrussWords.way(TrussSketch.way(result)) + " at "
                + result.reaction().joint();
    }
}
