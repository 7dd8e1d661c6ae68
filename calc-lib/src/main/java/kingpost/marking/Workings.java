package kingpost.marking;

import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.Iterator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import kingpost.marking.Slip.Place;
import kingpost.statics.AxisEquation;
import kingpost.statics.BodyEquation;
import kingpost.statics.Solution;
import kingpost.statics.Step;
import kingpost.truss.Joint;
import kingpost.truss.Member;

/**
 * Ways in which a person may have worked a truss: as the worked solution does; from another joint; with the reactions
 * first; without seeing the members that carry nothing.
 */
final class Workings {

    private static final int MOST = 20;
    private static final double ANOTHER_ORDER = 0.16;

    private final Bodies bodies;
    private final Solution solution;
    private final List<String> joints;
    private final List<Cuts.Cut> cuts;

    Workings(Bodies bodies, Solution solution) {
        this.bodies = bodies;
        this.solution = solution;
        this.joints = solution.truss().joints().stream().map(Joint::name).toList();
        this.cuts = Cuts.of(bodies);
    }

    /**
     * The likeliest first.
     *
     * @param reactions whether the reactions are to be found in any case
     */
    List<Working> usual(boolean reactions) {
        List<Working> workings = new ArrayList<>();
        workings.add(asSolved(reactions));
        for (boolean first : reactions ? new boolean[] {true} : new boolean[] {false, true}) {
            for (List<String> order : List.of(backwards(joints), joints, along(), backwards(along()))) {
                greedy(true, first, order).ifPresent(each -> add(workings, each));
            }
        }
        List<Cuts.Cut> betweenPanels = cuts.stream().filter(Cuts.Cut::partsAlong).toList();
        bySections(betweenPanels, joints).ifPresent(each -> add(workings, each));
        bySections(betweenPanels, fromTheSupports()).ifPresent(each -> add(workings, each));
        bySections(cuts, joints).ifPresent(each -> add(workings, each));
        for (Path path : List.of(inspected(), inspectedOneByOne())) {
            path.whole(List.of());
            finished(path, fromTheSupports()).ifPresent(each -> add(workings, each));
        }
        greedy(false, true, joints).ifPresent(each -> add(workings, each));
        if (reactions) {
            reactionsLast().ifPresent(each -> add(workings, each));
        }
        for (int i = 0; i < joints.size() && workings.size() < MOST; i++) {
            from(joints.get(i), reactions).ifPresent(each -> add(workings, each));
        }
        return List.copyOf(workings.subList(0, Math.min(MOST, workings.size())));
    }

    /** Every cut through three members. */
    List<Cuts.Cut> cuts() {
        return cuts;
    }

    /** Reactions first, then the cuts, then joints for what is left. */
    private Optional<Working> bySections(List<Cuts.Cut> made, List<String> order) {
        Path path = inspected();
        path.whole(List.of());
        long done = made.stream().filter(path::cut).count();
        return done == 0 ? Optional.empty() : finished(path, order);
    }

    /** Members first; the joints at the supports then give the reactions. */
    private Optional<Working> reactionsLast() {
        Path path = inspected();
        complete(path, joints);
        joints.forEach(joint -> path.joint(joint, List.of()));
        return path.isDone() ? Optional.of(path.working(ANOTHER_ORDER)) : Optional.empty();
    }

    private static void add(List<Working> workings, Working one) {
        if (workings.stream().noneMatch(each -> each.stages().equals(one.stages()))) {
            workings.add(one);
        }
    }

    private Working asSolved(boolean reactions) {
        Path path = new Path(bodies).with(solution.inspection());
        if (reactions && solution.steps().stream().noneMatch(step -> step instanceof Step.Reactions)) {
            path.whole(List.of());
        }
        for (Step step : solution.steps()) {
            step.accept(new Follower(path));
        }
        complete(path, joints);
        return path.working(0);
    }

    /** Takes one step of the worked solution. */
    private final class Follower implements Step.Visitor<Boolean> {
        private final Path path;

        Follower(Path path) {
            this.path = path;
        }

        @Override
        public Boolean reactions(Step.Reactions step) {
            return path.whole(measures(step.equations()));
        }

        @Override
        public Boolean joint(Step.AtJoint step) {
            List<Measure> used = step.equations().stream().filter(equation -> isUsed(equation.role()))
                    .map(equation -> (Measure) new Measure.Along(equation.axis().direction())).toList();
            if (step.answers().size() < path.unknownsAt(step.joint())) {
                return path.given(new Place.AtJoint(step.joint()), bodies.at(step.joint()), used, numbers(step.answers()));
            }
            return path.joint(step.joint(), step.axes() instanceof Step.Axes.Conventional ? List.of() : used);
        }

        @Override
        public Boolean section(Step.AtSection step) {
            return path.given(place(step), bodies.part(step.part()), measures(step.equations()), numbers(step.answers()));
        }

        @Override
        public Boolean twoBodies(Step.TwoBodies step) {
            List<List<Acting>> parts = step.bodies().stream()
                    .map(body -> body.cut().isEmpty() && body.omitted().isEmpty() ? bodies.whole() : bodies.part(body.part()))
                    .toList();
            List<Measure> measures = new ArrayList<>();
            for (int i = 0; i < parts.size(); i++) {
                for (Measure measure : measures(step.bodies().get(i).equations())) {
                    measures.add(new Measure.On(parts.get(i), measure));
                }
            }
            return path.given(place(step.bodies().get(0)), Bodies.union(parts), measures, numbers(step.answers()));
        }

        @Override
        public Boolean together(Step.JointsTogether step) {
            List<Measure> measures = step.equations().stream().filter(each -> isUsed(each.equation().role()))
                    .map(each -> (Measure) new Measure.On(bodies.at(each.joint()),
                            new Measure.Along(each.equation().axis().direction()))).toList();
            List<Acting> forces = Bodies.union(step.joints().stream().map(bodies::at).toList());
            return path.given(new Place.AtJoints(step.joints()), forces, measures, numbers(step.answers()));
        }

        private List<Integer> numbers(List<Step.Answer> answers) {
            return answers.stream().map(answer -> bodies.unknowns().numberOf(answer.unknown())).toList();
        }
    }

    private static Place place(Step.AtSection step) {
        return new Place.AtSection(Stream.concat(step.cut().stream(), step.omitted().stream()).map(Member::name).toList());
    }

    private static boolean isUsed(AxisEquation.Role role) {
        return !(role instanceof AxisEquation.Role.Check);
    }

    private static List<Measure> measures(List<BodyEquation> equations) {
        return equations.stream().filter(equation -> isUsed(equation.role())).map(equation -> measure(equation.kind()))
                .toList();
    }

    private static Measure measure(BodyEquation.Kind kind) {
        if (kind instanceof BodyEquation.Kind.MomentAbout about) {
            return new Measure.AboutLine(about.point(), about.axis().direction());
        }
        return kind instanceof BodyEquation.Kind.Moment moment ? new Measure.About(moment.point())
                : new Measure.Along(((BodyEquation.Kind.Along) kind).axis().direction());
    }

    /** The way of a person who has told the order of joints. */
    Working told(List<String> told, boolean reactions) {
        Path path = new Path(bodies).with(solution.inspection());
        if (reactions) {
            path.whole(List.of());
        }
        for (String joint : told) {
            if (!path.isReady(joint) && path.unknownsAt(joint) > 0) {
                path.whole(List.of());
            }
            path.joint(joint, List.of());
        }
        complete(path, joints);
        return path.working(0);
    }

    private Path inspected() {
        return new Path(bodies).with(solution.inspection());
    }

    /** Without noting that two members in line carry the same, so that each may be found from its own end. */
    private Path inspectedOneByOne() {
        return new Path(bodies).withZeros(solution.inspection());
    }

    /** The joints nearest to a support first, so that the work meets in the middle. */
    private List<String> fromTheSupports() {
        return joints.stream().sorted(Comparator.comparingDouble(joint -> solution.reactions().stream()
                .mapToDouble(each -> bodies.place(joint).minus(bodies.place(each.reaction().joint())).norm()).min()
                .orElse(0))).toList();
    }

    /** From one end to the other. */
    private List<String> along() {
        return joints.stream().sorted(Comparator.comparingDouble(joint -> bodies.place(joint).x())).toList();
    }

    private static List<String> backwards(List<String> order) {
        List<String> backwards = new ArrayList<>(order);
        Collections.reverse(backwards);
        return backwards;
    }

    private Optional<Working> greedy(boolean inspected, boolean reactions, List<String> order) {
        Path path = inspected ? inspected() : new Path(bodies);
        if (reactions) {
            path.whole(List.of());
        }
        return finished(path, order);
    }

    /** Starts at one joint, with the reactions first where that is needed. */
    private Optional<Working> from(String start, boolean reactions) {
        Path path = inspected();
        if (reactions || !path.isReady(start)) {
            path.whole(List.of());
        }
        path.joint(start, List.of());
        return finished(path, joints);
    }

    private Optional<Working> finished(Path path, List<String> order) {
        complete(path, order);
        return path.isDone() ? Optional.of(path.working(ANOTHER_ORDER)) : Optional.empty();
    }

    /**
     * Works what is left: always the first joint of {@code order} that is ready; when none is, the reactions, or the next
     * step of the worked solution that is no joint.
     */
    private void complete(Path path, List<String> order) {
        Iterator<Step> others = solution.steps().stream().filter(step -> !(step instanceof Step.AtJoint)
                && !(step instanceof Step.Reactions)).iterator();
        boolean whole = false;
        while (!path.isDone()) {
            Optional<String> ready = order.stream().filter(path::isReady).findFirst();
            if (ready.isPresent()) {
                path.joint(ready.get(), List.of());
            } else if (!whole) {
                path.whole(List.of());
                whole = true;
            } else if (others.hasNext()) {
                others.next().accept(new Follower(path));
            } else {
                return;
            }
        }
    }
}
