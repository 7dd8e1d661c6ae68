package kingpost.marking;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import kingpost.marking.EquationReader.Linear;

/** Compares one stated equation with the equation that holds on a body, and says where they differ. */
final class EquationCheck {

    private static final double NEAR = 0.006;
    private static final double SMALL = 1e-9;

    private final Bodies bodies;
    private final List<Acting> body;
    private final Measure measure;
    private final double[] values;
    private final List<double[]> others;

    /**
     * @param body   the forces on it
     * @param values of unknowns that stand in the equation as numbers
     * @param others values that may stand in another's place
     */
    EquationCheck(Bodies bodies, List<Acting> body, Measure measure, double[] values, List<double[]> others) {
        this.bodies = bodies;
        this.body = List.copyOf(body);
        this.measure = measure;
        this.values = values;
        this.others = others;
    }

    /**
     * Something wrong.
     *
     * @param isSlip whether it is one thing that can be named, and not only a number that is off
     */
    record Finding(String words, boolean isSlip) {
    }

    /** What else the equation may have been multiplied by, judged by each unknown that stands in it by name. */
    List<Double> scales(Linear stated) {
        List<Double> scales = new ArrayList<>();
        stated.factors().forEach((unknown, factor) -> {
            double right = factor(unknown, false);
            if (Math.abs(factor) > SMALL && Math.abs(right) > SMALL) {
                scales.add(right / factor);
            }
        });
        return scales;
    }

    /** What is wrong in an equation multiplied by {@code scale}; nothing where it is right. */
    List<Finding> findings(Linear stated, double scale) {
        List<Finding> findings = new ArrayList<>();
        stated.factors().forEach((unknown, factor) -> findings.addAll(factor(unknown, scale * factor)));
        List<Acting> rest = body.stream().filter(force -> Math.abs(measure.of(force)) > SMALL
                && (force.isLoad() || !stated.factors().containsKey(force.unknown()))).toList();
        findings.addAll(constant(rest, scale * stated.constant()));
        return findings;
    }

    private double factor(int unknown, boolean swapped) {
        return body.stream().filter(force -> !force.isLoad() && force.unknown() == unknown)
                .mapToDouble(force -> swapped ? measure.swapped(force) : measure.of(force)).findFirst().orElse(0);
    }

    private List<Finding> factor(int unknown, double stated) {
        String name = bodies.name(unknown);
        double right = factor(unknown, false);
        double near = NEAR * Math.max(1, Math.abs(right));
        if (Math.abs(stated - right) <= near) {
            return List.of();
        }
        if (Math.abs(right) < SMALL) {
            return List.of(new Finding(name + " has no part in this equation.", true));
        }
        if (Math.abs(stated + right) <= near) {
            return List.of(new Finding(name + " has the wrong sign.", true));
        }
        if (Math.abs(Math.abs(stated) - Math.abs(factor(unknown, true))) <= near) {
            return List.of(new Finding("Sine and cosine of " + name + " have changed places.", true));
        }
        boolean arm = measure instanceof Measure.About;
        return List.of(new Finding("The " + (arm ? "arm" : "factor") + " of " + name + " should be " + number(right) + ", not "
                + number(stated) + ".", true));
    }

    private List<Finding> constant(List<Acting> rest, double stated) {
        double[] parts = rest.stream().mapToDouble(force -> measure.of(force) * value(force)).toArray();
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
            if (Math.abs(parts[i]) > near) {
                String words = slip(rest.get(i), parts[i], stated - sum + parts[i], near);
                if (!words.isEmpty()) {
                    return List.of(new Finding(words, true));
                }
            }
        }
        return List.of(new Finding("The known forces come to " + number(sum) + " here, not " + number(stated) + ".", false));
    }

    /**
     * The slip by which one force comes into the equation as it does.
     *
     * @param part  what it should bring
     * @param found what it brings, if everything else is right
     */
    private String slip(Acting force, double part, double found, double near) {
        String name = force.isLoad() ? "The load at " + bodies.jointOf(force) : bodies.name(force.unknown());
        if (Math.abs(found) <= near) {
            return name + " is left out.";
        }
        if (Math.abs(found + part) <= near) {
            return name + " has the wrong sign.";
        }
        double across = measure.swapped(force) * value(force);
        if (Math.abs(part - across) > near && Math.abs(found - across) <= near) {
            return "Sine and cosine of " + name + " have changed places.";
        }
        if (!force.isLoad() && bodies.unknowns().isMember(force.unknown())) {
            for (int other = 0; other < bodies.unknowns().truss().members().size(); other++) {
                for (double[] set : others) {
                    double instead = measure.of(force) * set[other];
                    if (Math.abs(instead) > near && Math.abs(instead - found) <= 0.1 * near + 1e-6) {
                        return "The value of " + bodies.name(other) + " stands for " + name + ".";
                    }
                }
            }
        }
        return "";
    }

    private double value(Acting force) {
        return force.isLoad() ? bodies.load(force.load()) : values[force.unknown()];
    }

    private static String number(double value) {
        String text = String.format(Locale.ROOT, "%.3f", value).replaceAll("\\.?0+$", "");
        return text.replace('-', '\u2212');
    }
}
