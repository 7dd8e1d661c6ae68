package kingpost.statics;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;
import kingpost.statics.AxisEquation.Axis;
import kingpost.statics.BodyEquation.Kind;

/**
 * Which equation of a body gives which unknown, found from the geometry alone: a moment about a point where, or in
 * space a line that, all the other unknowns pass, or a sum across a direction in which all the others lie.
 */
final class BodyPlan {

    private static final List<Kind> SUMS = List.of(new Kind.Along(new Axis("x", Vector.X)),
            new Kind.Along(new Axis("y", Vector.Y)));

    private final Network network;
    private final Body body;
    private final List<Body.Force> open;
    private final List<Planned> plan = new ArrayList<>();

    /** An equation and the one unknown it holds, all earlier ones being known. */
    record Planned(Kind kind, Body.Force unknown) {
    }

    private BodyPlan(Network network, Body body, List<Body.Force> open) {
        this.network = network;
        this.body = body;
        this.open = new ArrayList<>(open);
    }

    /**
     * For reactions: a moment about the held joint where most of them meet, then the sums, then any moment that is
     * left; in space sums first, then moments about lines. Ends where no equation holds one unknown.
     */
    static List<Planned> ofReactions(Network network, Body body) {
        return ofReactions(network, body, f -> true);
    }

    /** The same where only some are still unknown. */
    static List<Planned> ofReactions(Network network, Body body, Predicate<Body.Force> unknown) {
        BodyPlan plan = new BodyPlan(network, body, body.unknowns().stream().filter(unknown).toList());
        if (network.dimension() == 3) {
            while (plan.take(plan.candidatesInSpace(), f -> true)) {
                continue;
            }
            return plan.plan;
        }
        boolean more = true;
        while (more && !plan.open.isEmpty()) {
            List<Kind> candidates = new ArrayList<>();
            if (plan.plan.isEmpty()) {
                candidates.addAll(plan.momentsAboutJoints());
            }
            candidates.addAll(SUMS);
            candidates.addAll(plan.momentsAboutJoints());
            candidates.addAll(plan.momentsAboutCrossings());
            candidates.addAll(plan.sumsAcross());
            more = plan.take(candidates, f -> true);
        }
        return plan.plan;
    }

    /**
     * For a part cut free: each unknown from an equation that holds no other unknown at all, where there is one; the
     * rest with the help of those already found. Ends where no equation holds one unknown.
     */
    static List<Planned> ofPart(Network network, Body body, Predicate<Body.Force> unknown) {
        List<Body.Force> all = body.unknowns().stream().filter(unknown).toList();
        BodyPlan independent = new BodyPlan(network, body, all);
        List<Kind> kinds = independent.candidates();
        List<Planned> plan = new ArrayList<>();
        for (Body.Force force : all) {
            independent.find(kinds, f -> f == force).ifPresent(plan::add);
        }
        List<Body.Force> left = all.stream().filter(f -> plan.stream().noneMatch(p -> p.unknown() == f)).toList();
        BodyPlan rest = new BodyPlan(network, body, left);
        while (rest.take(rest.candidates(), f -> true)) {
            plan.add(rest.plan.get(rest.plan.size() - 1));
        }
        return plan;
    }

    /** Equations of a body that leave out one or more of the unknowns: sums, moments where two meet or one acts. */
    static List<Kind> kinds(Network network, Body body, List<Body.Force> open) {
        return new BodyPlan(network, body, open).candidates();
    }

    /** An equation that gives one unknown while every other stays unknown; a sum is preferred to a moment. */
    private List<Kind> candidates() {
        List<Kind> kinds = new ArrayList<>(SUMS);
        kinds.addAll(momentsAboutCrossings());
        kinds.addAll(momentsAboutJoints());
        kinds.addAll(sumsAcross());
        return kinds;
    }

    private boolean take(List<Kind> candidates, Predicate<Body.Force> wanted) {
        Optional<Planned> next = find(candidates, wanted);
        next.ifPresent(p -> {
            plan.add(p);
            open.remove(p.unknown());
        });
        return next.isPresent();
    }

    private Optional<Planned> find(List<Kind> candidates, Predicate<Body.Force> wanted) {
        for (Kind kind : candidates) {
            List<Body.Force> inIt = open.stream().filter(f -> body.factor(f, kind) != 0).toList();
            if (inIt.size() == 1 && wanted.test(inIt.get(0))) {
                return Optional.of(new Planned(kind, inIt.get(0)));
            }
        }
        return Optional.empty();
    }

    /** Moments about the joints at which unknowns act, those where most unknowns pass first. */
    private List<Kind> momentsAboutJoints() {
        Set<Kind> kinds = new LinkedHashSet<>();
        for (Body.Force force : open) {
            kinds.add(moment(force.name(), force.at()));
        }
        return kinds.stream().sorted((a, b) -> passing(b) - passing(a)).toList();
    }

    /** Sums along x, y and z; moments about lines along them through each held joint, and about lines from one to the next. */
    private List<Kind> candidatesInSpace() {
        List<Axis> axes = JointAxes.conventional(network);
        List<Kind> kinds = new ArrayList<>();
        axes.forEach(axis -> kinds.add(new Kind.Along(axis)));
        List<Body.Force> held = new ArrayList<>();
        for (Body.Force force : body.unknowns()) {
            if (held.stream().noneMatch(h -> h.joint() == force.joint())) {
                held.add(force);
            }
        }
        for (Body.Force at : held) {
            axes.forEach(axis -> kinds.add(momentAbout(at, "", axis)));
        }
        for (int i = 0; i < held.size(); i++) {
            for (int k = i + 1; k < held.size(); k++) {
                Vector reach = held.get(k).at().minus(held.get(i).at());
                kinds.add(momentAbout(held.get(i), held.get(k).name(), new Axis("", reach.unit())));
            }
        }
        return kinds;
    }

    private Kind momentAbout(Body.Force at, String to, Axis axis) {
        List<Source> passing = open.stream().filter(f -> body.arm(f, at.at(), axis.direction()) == 0)
                .map(Body.Force::source).toList();
        return new Kind.MomentAbout(at.name(), to, axis, at.at(), passing);
    }

    private static int passing(Kind kind) {
        return ((Kind.Moment) kind).passing().size();
    }

    private List<Kind> momentsAboutCrossings() {
        Set<Kind> kinds = new LinkedHashSet<>();
        for (int i = 0; i < open.size(); i++) {
            for (int k = i + 1; k < open.size(); k++) {
                crossing(open.get(i), open.get(k)).ifPresent(p -> kinds.add(momentAt(p)));
            }
        }
        return List.copyOf(kinds);
    }

    /** Sums across each unknown's direction, the axis turned to lie upwards. */
    private List<Kind> sumsAcross() {
        Set<Kind> kinds = new LinkedHashSet<>();
        for (Body.Force force : open) {
            Vector across = new Vector(-force.unit().y(), force.unit().x(), 0);
            boolean down = across.y() < 0 || across.y() == 0 && across.x() < 0;
            kinds.add(new Kind.Along(new Axis("y\u2032", down ? across.times(-1) : across)));
        }
        return List.copyOf(kinds);
    }

    /** Where the lines of two forces meet. */
    private static Optional<Vector> crossing(Body.Force a, Body.Force b) {
        double sine = a.unit().cross(b.unit()).z();
        if (Math.abs(sine) <= Network.IN_LINE) {
            return Optional.empty();
        }
        double along = b.at().minus(a.at()).cross(b.unit()).z() / sine;
        return Optional.of(a.at().plus(a.unit().times(along)));
    }

    private Kind momentAt(Vector point) {
        int joint = network.jointAt(point);
        return joint < 0 ? moment("", point) : moment(network.name(joint), network.place(joint));
    }

    private Kind.Moment moment(String joint, Vector point) {
        List<Source> passing = open.stream().filter(f -> body.arm(f, point) == 0).map(Body.Force::source).toList();
        return new Kind.Moment(joint, point, passing);
    }
}
