package kingpost.marking;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import kingpost.marking.AnswerSheet.StatedStep;
import kingpost.marking.EquationReader.Linear;
import kingpost.marking.MarkedSheet.MarkedStep;

/**
 * Marks stated equations: each against the balance of its joint. Forces may stand in it as names or as numbers, right
 * ones or those that the person stated; the equation may be turned round as a whole.
 */
final class StepMarker {

    private static final double NEAR = 0.006;

    private final Bodies bodies;
    private final List<double[]> values;

    /** @param values of all unknowns: sets any one of which a person may have put in */
    StepMarker(Bodies bodies, List<double[]> values) {
        this.bodies = bodies;
        this.values = values;
    }

    MarkedStep mark(StatedStep step) {
        if (step.joint().isEmpty()) {
            return notRead(step, "it does not say at which joint; write \"joint B:\" before it");
        }
        try {
            Linear stated = EquationReader.read(bodies.unknowns(), step.equation());
            return new MarkedStep(step.joint(), step.text(),
                    either(fewest(step, stated, 1), fewest(step, stated, -1)), "");
        } catch (AnswerReader.NotRead e) {
            return notRead(step, e.getMessage());
        }
    }

    private List<String> fewest(StatedStep step, Linear stated, int sign) {
        return values.stream().map(set -> findings(step, stated, sign, set)).min(Comparator.comparingInt(List::size))
                .orElseThrow();
    }

    /** One sign that is wrong may be that of either side of the equation. */
    private static List<String> either(List<String> asWritten, List<String> turnedRound) {
        if (asWritten.size() == 1 && turnedRound.size() == 1 && !asWritten.equals(turnedRound)) {
            return List.of(asWritten.get(0) + " Or: " + turnedRound.get(0));
        }
        return turnedRound.size() < asWritten.size() ? turnedRound : asWritten;
    }

    private static MarkedStep notRead(StatedStep step, String reason) {
        return new MarkedStep(step.joint(), step.text(), List.of(), reason);
    }

    private List<String> findings(StatedStep step, Linear stated, int sign, double[] set) {
        Measure measure = step.axis() == 'x' ? Measure.X : Measure.Y;
        List<Acting> acting = bodies.at(step.joint());
        List<String> findings = new ArrayList<>();
        stated.factors().forEach((unknown, factor) -> findings.addAll(factor(acting, measure, unknown, sign * factor)));
        List<Acting> rest = acting.stream().filter(force -> Math.abs(measure.of(force)) > 1e-9
                && (force.isLoad() || !stated.factors().containsKey(force.unknown()))).toList();
        findings.addAll(constant(rest, measure, sign * stated.constant(), set));
        return findings;
    }

    private List<String> factor(List<Acting> acting, Measure measure, int unknown, double factor) {
        String name = bodies.unknowns().name(unknown);
        double right = acting.stream().filter(force -> !force.isLoad() && force.unknown() == unknown)
                .mapToDouble(measure::of).findFirst().orElse(0);
        double swapped = acting.stream().filter(force -> !force.isLoad() && force.unknown() == unknown)
                .mapToDouble(measure::swapped).findFirst().orElse(0);
        if (Math.abs(factor - right) <= NEAR) {
            return List.of();
        }
        if (Math.abs(right) < 1e-9) {
            return List.of(name + " has no part in this equation.");
        }
        if (Math.abs(factor + right) <= NEAR) {
            return List.of(name + " has the wrong sign.");
        }
        if (Math.abs(factor - swapped) <= NEAR) {
            return List.of("Sine and cosine of " + name + " have changed places.");
        }
        return List.of("The factor of " + name + " should be " + number(right) + ", not " + number(factor) + ".");
    }

    private List<String> constant(List<Acting> rest, Measure measure, double stated, double[] set) {
        double[] parts = rest.stream().mapToDouble(force -> measure.of(force) * value(force, set)).toArray();
        double sum = 0;
        double size = 0;
        for (double part : parts) {
            sum += part;
            size += Math.abs(part);
        }
        double near = NEAR * size + 1e-6;
        if (Math.abs(stated - sum) <= near) {
            return List.of();
        }
        for (int i = 0; i < parts.length; i++) {
            String name = name(rest.get(i));
            double across = measure.swapped(rest.get(i)) * value(rest.get(i), set);
            if (Math.abs(parts[i]) > near && Math.abs(stated - sum + parts[i]) <= near) {
                return List.of(name + " is left out.");
            }
            if (Math.abs(parts[i]) > near && Math.abs(stated - sum + 2 * parts[i]) <= near) {
                return List.of(name + " has the wrong sign.");
            }
            if (Math.abs(parts[i] - across) > near && Math.abs(stated - sum + parts[i] - across) <= near) {
                return List.of("Sine and cosine of " + name + " have changed places.");
            }
        }
        return List.of("The known forces come to " + number(sum) + " here, not " + number(stated) + ".");
    }

    private double value(Acting force, double[] set) {
        return force.isLoad() ? bodies.load(force.load()) : set[force.unknown()];
    }

    private String name(Acting force) {
        return force.isLoad() ? "The load at " + bodies.unknowns().truss().loads().get(force.load()).joint()
                : bodies.unknowns().name(force.unknown());
    }

    private static String number(double value) {
        String text = String.format(Locale.ROOT, "%.3f", value).replaceAll("\\.?0+$", "");
        return text.replace('-', '\u2212');
    }
}
