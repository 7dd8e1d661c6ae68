package kingpost.diagram;

import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import kingpost.statics.Inspection.Finding;
import kingpost.statics.Solution;
import kingpost.statics.Solution.MemberResult;
import kingpost.statics.Source;
import kingpost.statics.Step;
import kingpost.svg.Element;
import kingpost.svg.Style;
import kingpost.svg.Svg;
import kingpost.truss.Member;
import kingpost.truss.TrussModel;

/** How far the work has come after a step: what is solved, what this step gave, what is still unknown. */
public final class ProgressFigure {

    private static final double BAND = 13;
    private static final double RING = 6.6;

    private final Solution solution;
    private final Step step;
    private final Set<Member> solved = new HashSet<>();
    private final Set<Member> given = new HashSet<>();

    private ProgressFigure(Solution solution, Step step) {
        this.solution = solution;
        this.step = step;
        solved.addAll(solution.inspection().zeroForceMembers());
        for (Step earlier : solution.steps()) {
            if (earlier.equals(step)) {
                break;
            }
            solved.addAll(membersOf(earlier));
        }
        addInLine(solved);
        given.addAll(membersOf(step));
        addInLine(given);
        given.removeAll(solved);
    }

    /** The figure after {@code step}, which is one of the solution's. */
    public static Svg of(Solution solution, Step step) {
        ProgressFigure figure = new ProgressFigure(solution, step);
        TrussModel truss = solution.truss();
        return Fitting.sketch(truss, figure::draw).toSvg(truss.name() + " after " + figure.done(), figure.words());
    }

    private static List<Member> membersOf(Step step) {
        return step.answers().stream().map(Step.Answer::unknown).filter(Source.OfMember.class::isInstance)
                .map(source -> ((Source.OfMember) source).member()).toList();
    }

    /** Members known because they carry the same force as one in line with them. */
    private void addInLine(Set<Member> known) {
        boolean more = true;
        while (more) {
            more = false;
            for (Finding finding : solution.inspection().findings()) {
                List<Member> pair = inLine(finding);
                if (pair.stream().anyMatch(known::contains)) {
                    more |= known.addAll(pair);
                }
            }
        }
    }

    private static List<Member> inLine(Finding finding) {
        if (finding instanceof Finding.ThreeMembers three) {
            return List.of(three.first(), three.second());
        }
        return finding instanceof Finding.SameForce same ? List.of(same.first(), same.second()) : List.of();
    }

    private void draw(TrussSketch sketch) {
        mark(sketch);
        for (MemberResult result : solution.members()) {
            sketch.member(result.member(), style(result));
        }
        sketch.supports();
        sketch.joints();
        sketch.names();
        solution.members().stream().filter(r -> isKnown(r.member()))
                .forEach(r -> sketch.force(r.member(), MemberStyle.of(r.sense()), r.force(), width(r)));
        sketch.sheet().settle();
        sketch.legend(Stream.of(MemberStyle.TENSION, MemberStyle.COMPRESSION, MemberStyle.ZERO, MemberStyle.UNKNOWN)
                .filter(style -> solution.members().stream().anyMatch(r -> style(r) == style)).toList());
        sketch.notes();
    }

    /** A broad band under the members of this step, and a ring round its joint: told by form, not by colour alone. */
    private void mark(TrussSketch sketch) {
        if (sketch.layout().isDense()) {
            return;
        }
        TrussLayout layout = sketch.layout();
        for (Member member : given) {
            sketch.sheet().add(Layer.BACKGROUND, new Element.Line(layout.from(member).point(),
                    layout.to(member).point(), Ink.line(Ink.MARKED, BAND)),
                    Patch.line(layout.from(member), layout.to(member), BAND));
        }
        for (String worked : joints()) {
            sketch.sheet().add(Layer.BACKGROUND, new Element.Circle(layout.of(worked).point(), RING,
                    Style.stroke(Ink.BLACK, 1.4).filled(Ink.MARKED)));
        }
    }

    /** Joints whose equations the step used. */
    private List<String> joints() {
        return step instanceof Step.AtJoint at ? List.of(at.joint())
                : step instanceof Step.JointsTogether together ? together.joints() : List.of();
    }

    private String done() {
        return step instanceof Step.AtJoint at ? "joint " + at.joint()
                : step instanceof Step.JointsTogether together ? "joints " + TrussWords.listed(together.joints())
                : step instanceof Step.AtSection section ? "the section through "
                + TrussWords.listed(section.cut().stream().map(Member::name).toList()) : "two equations together";
    }

    private double width(MemberResult result) {
        return given.contains(result.member()) ? BAND : style(result).width();
    }

    private boolean isKnown(Member member) {
        return solved.contains(member) || given.contains(member);
    }

    private MemberStyle style(MemberResult result) {
        return isKnown(result.member()) ? MemberStyle.of(result.sense()) : MemberStyle.UNKNOWN;
    }

    private String words() {
        return "After " + done() + ". " + said("This step gave ", given)
                + said("Solved before: ", solved)
                + said("Still unknown: ", solution.members().stream().map(MemberResult::member)
                        .filter(m -> !isKnown(m)).collect(Collectors.toSet()));
    }

    private String said(String lead, Set<Member> members) {
        List<String> names = solution.truss().members().stream().filter(members::contains).map(Member::name).toList();
        return names.isEmpty() ? "" : lead + TrussWords.listed(names) + ". ";
    }
}
