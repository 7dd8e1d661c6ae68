package kingpost.marking;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.function.IntUnaryOperator;
import java.util.function.UnaryOperator;
import kingpost.marking.Reading.Force;
import kingpost.marking.Slip.Kind;
import kingpost.marking.Slip.Place;
import kingpost.statics.Vector;

/**
 * Other trusses that a person may have seen in the one given, and worked rightly: a load at another joint or in another
 * direction, a roller turned, other panels, the mirror image, angles in radians. For each the forces that it has.
 */
final class Misreadings {

    /** What is rounded, where sines are. */
    static final String SINES = "sines and cosines";
    private static final int MOST_UNKNOWNS = 90;
    private static final double SMALL = 1e-9;
    private static final int ENOUGH = 4;
    private static final double FOR_ONE_ANSWER = 0.2;

    private final Bodies bodies;
    private final double[] right;
    private final List<Working> worked;
    private final double truss;
    private List<Misreading> all;

    /** @param worked ways of working, that of the worked solution first */
    Misreadings(Bodies bodies, double[] right, List<Working> worked, double truss) {
        this.bodies = bodies;
        this.right = right;
        this.worked = worked;
        this.truss = truss;
    }

    /**
     * One other truss.
     *
     * @param slip   what was misread
     * @param values the forces it has, by number of the unknown
     * @param price  in slips
     */
    record Misreading(Slip slip, double[] values, double price) {

        Misreading costing(double more) {
            return new Misreading(slip, values, price + more);
        }

        /** All its forces at once. */
        Working working() {
            return new Working(List.of(new Stage.Given(Arrays.stream(values).boxed().toList())), 0, values.length, 0);
        }
    }

    /** Those that explain most of what is wrong in a sheet, and leave right nearly all that is right. */
    List<Misreading> worthTrying(Map<Integer, Force> forces) {
        List<Misreading> worth = new ArrayList<>();
        for (Misreading each : all()) {
            int wrong = 0;
            int explained = 0;
            int lost = 0;
            int kept = 0;
            for (Map.Entry<Integer, Force> stated : forces.entrySet()) {
                boolean isRight = fits(stated.getValue(), right[stated.getKey()]);
                boolean fits = fits(stated.getValue(), each.values()[stated.getKey()]);
                wrong += isRight ? 0 : 1;
                explained += !isRight && fits ? 1 : 0;
                lost += isRight && !fits ? 1 : 0;
                kept += isRight && fits && !stated.getValue().isZero() ? 1 : 0;
            }
            if (explained >= 2 && 5 * explained >= 3 * wrong && lost <= Math.min(2, explained - 1)) {
                worth.add(each);
            } else if (explained == 1 && wrong == 1 && lost == 0 && kept >= ENOUGH) {
                worth.add(each.costing(FOR_ONE_ANSWER));
            }
        }
        return worth;
    }

    private boolean fits(Force force, double value) {
        return Figures.agree(force, value, truss) || Figures.agreeCoarsely(force, value, truss);
    }

    private synchronized List<Misreading> all() {
        if (all == null) {
            all = new ArrayList<>();
            double[][] inverse = bodies.unknowns().count() > MOST_UNKNOWNS ? null
                    : inverse(bodies.unknowns(), UnaryOperator.identity(), UnaryOperator.identity());
            if (inverse != null) {
                loads(inverse);
            }
            if (inverse != null && !bodies.isInSpace()) {
                rollers();
                panels();
            }
            if (!bodies.isInSpace()) {
                mirror();
                angles();
            }
            all.removeIf(each -> !areOther(each.values(), right));
        }
        return all;
    }

    /** Whether any member's force differs. */
    private boolean areOther(double[] values, double[] others) {
        for (int i = 0; i < bodies.unknowns().truss().members().size(); i++) {
            if (Math.abs(values[i] - others[i]) > 1e-6 * truss) {
                return true;
            }
        }
        return false;
    }

    private void add(Kind kind, String subject, String other, double[] values) {
        boolean sound = values != null && Arrays.stream(values).allMatch(Double::isFinite);
        if (sound) {
            all.add(new Misreading(new Slip(kind, new Place.Throughout(), subject, other), values, Price.MISREAD));
        }
    }

    private void loads(double[][] inverse) {
        List<Acting> forces = bodies.whole().stream().filter(Acting::isLoad).toList();
        for (Acting force : forces) {
            String name = bodies.loadName(force.load());
            String here = bodies.jointOf(force);
            double size = bodies.load(force.load());
            double[] without = plus(right, under(inverse, here, force.along(), -size));
            add(Kind.SENSE_REVERSED, name, "", plus(without, under(inverse, here, force.along(), -size)));
            for (int power : new int[] {3, 1, -1}) {
                add(Kind.POWER_OF_TEN, name, Integer.toString(power),
                        plus(without, under(inverse, here, force.along(), size * Math.pow(10, power))));
            }
            add(Kind.LOAD_FORGOTTEN, name, "", without);
            for (String joint : joints()) {
                double[] moved = plus(without, under(inverse, joint, force.along(), size));
                if (!joint.equals(here) && areOther(moved, without)) {
                    add(Kind.LOAD_MISPLACED, name, joint, moved);
                }
            }
            turned(force.along()).forEach((other, along) -> {
                Kind kind = other.isEmpty() ? Kind.SINE_COSINE_SWAPPED : Kind.DIRECTION_MISREAD;
                add(kind, name, other, plus(without, under(inverse, here, along, size)));
            });
        }
    }

    /** An inclined direction with the sine and cosine exchanged, and taken as vertical or horizontal. */
    private Map<String, Vector> turned(Vector along) {
        boolean inclined = Math.abs(along.x()) > SMALL && Math.abs(along.y()) > SMALL && Math.abs(along.z()) < SMALL;
        return !inclined ? Map.of() : Map.of(
                "", new Vector(Math.copySign(along.y(), along.x()), Math.copySign(along.x(), along.y()), 0),
                "vertical", new Vector(0, Math.signum(along.y()), 0), "horizontal", new Vector(Math.signum(along.x()), 0, 0));
    }

    private void rollers() {
        Unknowns unknowns = bodies.unknowns();
        for (Acting reaction : bodies.whole().stream().filter(force -> !force.isLoad()).toList()) {
            turned(reaction.along()).forEach((other, along) -> {
                double[][] inverse = inverse(unknowns, force -> force.unknown() == reaction.unknown()
                        ? new Acting(force.unknown(), -1, along, force.at()) : force, UnaryOperator.identity());
                add(other.isEmpty() ? Kind.SINE_COSINE_SWAPPED : Kind.DIRECTION_MISREAD,
                        "the reaction " + bodies.name(reaction.unknown()), other, inverse == null ? null : underAll(inverse));
            });
        }
    }

    /** The span parted into one panel more or less; only where panels are equal. */
    private void panels() {
        List<Double> along = joints().stream().filter(joint -> Math.abs(bodies.place(joint).y() - lowest()) < SMALL)
                .map(joint -> bodies.place(joint).x()).sorted().toList();
        int panels = along.size() - 1;
        boolean equal = panels >= 2;
        for (int i = 1; equal && i < panels; i++) {
            double more = along.get(i + 1) - along.get(i) - along.get(1) + along.get(0);
            equal = Math.abs(more) < 1e-6 * (along.get(panels) - along.get(0));
        }
        for (int counted = panels - 1; equal && counted <= panels + 1; counted += 2) {
            double factor = (double) panels / counted;
            double[][] inverse = inverse(bodies.unknowns(), UnaryOperator.identity(),
                    place -> new Vector(place.x() * factor, place.y(), place.z()));
            add(Kind.WRONG_PANELS, Integer.toString(panels), Integer.toString(counted),
                    inverse == null ? null : underAll(inverse));
        }
    }

    private double lowest() {
        return joints().stream().mapToDouble(joint -> bodies.place(joint).y()).min().orElse(0);
    }

    private List<String> joints() {
        return bodies.unknowns().truss().joints().stream().map(joint -> joint.name()).toList();
    }

    /** Each member's force at the member that mirrors it across the middle of the span; reactions stay. */
    private void mirror() {
        double least = joints().stream().mapToDouble(joint -> bodies.place(joint).x()).min().orElse(0);
        double most = joints().stream().mapToDouble(joint -> bodies.place(joint).x()).max().orElse(0);
        Map<String, String> mirrors = new HashMap<>();
        for (String joint : joints()) {
            Vector place = bodies.place(joint);
            joints().stream().filter(other -> bodies.place(other).minus(new Vector(least + most - place.x(), place.y(), 0)).norm()
                    < 1e-6 * (most - least)).findFirst().ifPresent(other -> mirrors.put(joint, other));
        }
        double[] values = right.clone();
        for (int i = 0; i < bodies.unknowns().truss().members().size(); i++) {
            var member = bodies.unknowns().member(i);
            Optional<String> name = Optional.ofNullable(mirrors.get(member.from())).flatMap(from ->
                    Optional.ofNullable(mirrors.get(member.to())).flatMap(to -> bodies.unknowns().truss().members().stream()
                            .filter(each -> each.meets(from) && each.meets(to)).findFirst().map(each -> each.name())));
            OptionalInt other = name.map(bodies.unknowns()::find).orElse(OptionalInt.empty());
            if (other.isEmpty()) {
                return;
            }
            values[i] = right[other.getAsInt()];
        }
        add(Kind.MIRRORED, "", "", values);
    }

    private void angles() {
        UnaryOperator<Vector> rounded = along -> new Vector(Figures.roundDecimals(along.x(), 2),
                Figures.roundDecimals(along.y(), 2), 0);
        for (Working way : worked) {
            forward(way, Kind.ANGLE_IN_RADIANS, "", force -> turned(force, along -> taken(along,
                    Math.toDegrees(Math.atan2(Math.abs(along.y()), Math.abs(along.x()))))));
            forward(way, Kind.SLOPE_AS_DEGREES, "", force -> turned(force, along -> taken(along,
                    Math.toRadians(Math.min(90, 100 * Math.abs(along.y() / along.x()))))));
            forward(way, Kind.ROUNDED_CARRIED, SINES, force -> turned(force, rounded));
            forward(way, Kind.ROUNDED_CARRIED, SINES, force -> force.isLoad()
                    || !bodies.unknowns().isMember(force.unknown()) ? force : turned(force, rounded));
        }
    }

    /** How someone takes a force. */
    @FunctionalInterface
    private interface Taken {
        Acting of(Acting force);
    }

    private static Vector taken(Vector along, double radians) {
        return new Vector(Math.signum(along.x()) * Math.cos(radians), Math.signum(along.y()) * Math.sin(radians), 0);
    }

    private static Acting turned(Acting force, UnaryOperator<Vector> taken) {
        boolean inclined = Math.abs(force.along().x()) > SMALL && Math.abs(force.along().y()) > SMALL;
        return inclined ? new Acting(force.unknown(), force.load(), taken.apply(force.along()), force.at()) : force;
    }

    /** Where one equation would do and there are two, each is somebody's choice; with forces misread they disagree. */
    private void forward(Working way, Kind kind, String subject, Taken changed) {
        double[] byTheFirst = forward(way, changed, choices -> 0);
        double[] byTheLast = forward(way, changed, choices -> choices - 1);
        add(kind, subject, "", byTheFirst);
        if (!Arrays.equals(byTheFirst, byTheLast)) {
            add(kind, subject, "", byTheLast);
        }
    }

    /** Goes through a working with forces taken in another way. */
    private double[] forward(Working way, Taken changed, IntUnaryOperator choice) {
        State state = State.start(right.length, 0);
        for (Stage stage : way.stages()) {
            if (stage instanceof Stage.Seen seen) {
                for (int unknown : seen.unknowns()) {
                    state = state.with(unknown, 0, 0, 0);
                }
            } else if (stage instanceof Stage.Same same) {
                state = state.with(same.unknown(), state.value(same.as()), 0, 0);
            } else {
                Stage.Balance balance = stage.balances().get(0);
                Terms terms = new Terms(balance.acting().stream().map(changed::of).toList(),
                        balance.choices().get(choice.applyAsInt(balance.choices().size())));
                List<Integer> rows = new ArrayList<>();
                for (int row = 0; row < terms.rows(); row++) {
                    rows.add(row);
                }
                Equations.Answer[] answers = new Equations(bodies, terms, null).solve(rows, balance.unknowns(), state);
                for (int i = 0; answers != null && i < answers.length; i++) {
                    state = state.with(balance.unknowns().get(i), answers[i].value(), 0, 0);
                }
            }
        }
        double[] values = right.clone();
        for (int i = 0; i < values.length; i++) {
            values[i] = state.isKnown(i) ? state.value(i) : right[i];
        }
        return values;
    }

    /**
     * The inverse of the equations of all joints.
     *
     * @return row: unknown; column: equation d times j + axis, with d axes; {@code null} where there is none
     */
    private double[][] inverse(Unknowns unknowns, UnaryOperator<Acting> force, UnaryOperator<Vector> place) {
        int axes = axes();
        double[][] matrix = new double[unknowns.count()][unknowns.count()];
        if (joints().size() * axes != unknowns.count()) {
            return null;
        }
        for (int j = 0; j < joints().size(); j++) {
            String joint = joints().get(j);
            for (Acting each : bodies.at(joint)) {
                if (!each.isLoad()) {
                    Vector along = unknowns.isMember(each.unknown()) ? place.apply(bodies.place(unknowns.member(each.unknown())
                            .otherEnd(joint))).minus(place.apply(bodies.place(joint))).unit() : force.apply(each).along();
                    for (int axis = 0; axis < axes; axis++) {
                        matrix[axes * j + axis][each.unknown()] += along.part(axis);
                    }
                }
            }
        }
        return SmallSystem.inverse(matrix);
    }

    private int axes() {
        return bodies.isInSpace() ? 3 : 2;
    }

    /** The forces under one load alone. */
    private double[] under(double[][] inverse, String joint, Vector along, double size) {
        double[] forces = new double[inverse.length];
        int first = axes() * joints().indexOf(joint);
        for (int i = 0; i < forces.length; i++) {
            for (int axis = 0; axis < axes(); axis++) {
                forces[i] -= inverse[i][first + axis] * along.part(axis) * size;
            }
        }
        return forces;
    }

    private double[] underAll(double[][] inverse) {
        double[] forces = new double[inverse.length];
        for (Acting load : bodies.whole().stream().filter(Acting::isLoad).toList()) {
            forces = plus(forces, under(inverse, bodies.jointOf(load), load.along(), bodies.load(load.load())));
        }
        return forces;
    }

    private static double[] plus(double[] a, double[] b) {
        double[] sum = a.clone();
        for (int i = 0; i < sum.length; i++) {
            sum[i] += b[i];
        }
        return sum;
    }
}
