package kingpost.marking;

import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import kingpost.statics.AxisEquation;
import kingpost.statics.BodyEquation;
import kingpost.statics.Solution;
import kingpost.statics.Step;
import kingpost.truss.Joint;

/**
 * Ways in which a person may have worked a truss: as the worked solution does; from another joint; with the reactions
 * first; without seeing the members that carry nothing.
 */
final class Workings {

    private static final int MOST = 14;
    private static final double ANOTHER_ORDER = 0.16;

    private final Bodies bodies;
    private final Solution solution;
    private final List<String> joints;

    Workings(Bodies bodies, Solution solution) {
        this.bodies = bodies;
        this.solution = solution;
        this.joints = solution.truss().joints().stream().map(Joint::name).toList();
    }

    /** The likeliest first. */
    List<Working> usual() {
        List<Working> workings = new ArrayList<>();
        workings.add(asSolved());
        for (boolean reactions : new boolean[] {false, true}) {
            for (boolean backwards : new boolean[] {true, false}) {
                greedy(true, reactions, backwards).ifPresent(each -> add(workings, each));
            }
        }
        for (Path path : List.of(inspected(), inspectedOneByOne())) {
            path.whole(List.of());
            finished(path, fromTheSupports()).ifPresent(each -> add(workings, each));
        }
        greedy(false, true, false).ifPresent(each -> add(workings, each));
        for (String start : joints) {
            from(start).ifPresent(each -> add(workings, each));
        }
        return workings.subList(0, Math.min(MOST, workings.size()));
    }

    private static void add(List<Working> workings, Working one) {
        if (workings.stream().noneMatch(each -> each.stages().equals(one.stages()))) {
            workings.add(one);
        }
    }

    private Working asSolved() {
        Path path = new Path(bodies).with(solution.inspection());
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
            return path.whole(step.equations().stream()
                    .filter(equation -> !(equation.role() instanceof AxisEquation.Role.Check))
                    .map(equation -> measure(equation.kind())).toList());
        }

        @Override
        public Boolean joint(Step.AtJoint step) {
            boolean isTurned = step.axes() instanceof Step.Axes.Turned;
            List<Measure> turned = isTurned ? step.equations().stream()
                    .filter(equation -> !(equation.role() instanceof AxisEquation.Role.Check))
                    .map(equation -> (Measure) new Measure.Along(equation.axis().direction())).toList() : List.of();
            if (step.answers().size() == 1 && path.unknownsAt(step.joint()) > 1) {
                return path.across(step.joint(), bodies.unknowns().numberOf(step.answers().get(0).unknown()));
            }
            return path.joint(step.joint(), turned);
        }

        /** A part of a cut truss is no stage of a path yet; what needs it stays unfollowed. */
        @Override
        public Boolean section(Step.AtSection step) {
            return false;
        }

        /** Likewise joints solved together. */
        @Override
        public Boolean twoBodies(Step.TwoBodies step) {
            return false;
        }

        @Override
        public Boolean together(Step.JointsTogether step) {
            return false;
        }
    }

    private static Measure measure(BodyEquation.Kind kind) {
        return kind instanceof BodyEquation.Kind.Moment moment ? new Measure.About(moment.point())
                : new Measure.Along(((BodyEquation.Kind.Along) kind).axis().direction());
    }

    /** The way of a person who has told the order of joints. */
    Working told(List<String> told) {
        Path path = new Path(bodies).with(solution.inspection());
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

    private Optional<Working> greedy(boolean inspected, boolean reactions, boolean backwards) {
        Path path = inspected ? inspected() : new Path(bodies);
        if (reactions) {
            path.whole(List.of());
        }
        List<String> order = new ArrayList<>(joints);
        if (backwards) {
            Collections.reverse(order);
        }
        return finished(path, order);
    }

    /** Starts at one joint, with the reactions first where that is needed. */
    private Optional<Working> from(String start) {
        Path path = inspected();
        if (!path.isReady(start)) {
            path.whole(List.of());
        }
        path.joint(start, List.of());
        return finished(path, joints);
    }

    private Optional<Working> finished(Path path, List<String> order) {
        complete(path, order);
        return path.isDone() ? Optional.of(path.working(ANOTHER_ORDER)) : Optional.empty();
    }

    /** Works what is left: always the first joint of {@code order} that is ready, reactions when none is. */
    private void complete(Path path, List<String> order) {
        boolean whole = false;
        while (!path.isDone()) {
            Optional<String> ready = order.stream().filter(path::isReady).findFirst();
            if (ready.isPresent()) {
                path.joint(ready.get(), List.of());
            } else if (whole || !path.whole(List.of())) {
                return;
            } else {
                whole = true;
            }
        }
    }
}
