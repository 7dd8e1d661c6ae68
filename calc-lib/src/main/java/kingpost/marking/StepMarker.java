package kingpost.marking;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import kingpost.marking.AnswerSheet.StatedStep;
import kingpost.marking.EquationReader.Linear;
import kingpost.marking.MarkedSheet.Judged;
import kingpost.marking.MarkedSheet.MarkedStep;
import kingpost.marking.Slip.Place;

/**
 * Marks stated equations: each against the balance of the joint, the part or the whole truss on which it is said to hold.
 * Forces may stand in it as names or as numbers, right ones or those that the person stated; the equation may be turned
 * round as a whole, or multiplied by a number.
 */
final class StepMarker {

    private final Bodies bodies;
    private final double[] right;
    private final double[] stated;

    /**
     * @param right  values of all unknowns
     * @param stated the same with those that the person stated in their places
     */
    StepMarker(Bodies bodies, double[] right, double[] stated) {
        this.bodies = bodies;
        this.right = right.clone();
        this.stated = stated.clone();
    }

    MarkedStep mark(StatedStep step) {
        try {
            List<List<Acting>> parts = parts(step.body());
            Measure measure = measure(step);
            Linear linear = EquationReader.read(bodies.unknowns(), step.equation());
            List<Reading> readings = new ArrayList<>();
            for (List<Acting> part : parts) {
                for (double[] values : List.of(right, stated)) {
                    EquationCheck check = new EquationCheck(bodies, part, measure, values, List.of(right, stated));
                    readings.add(new Reading(check.findings(linear, 1), check.findings(linear, -1), values == right));
                    check.scales(linear).forEach(scale -> {
                        if (check.findings(linear, scale).isEmpty()) {
                            readings.add(new Reading(List.of(), List.of(), values == right));
                        }
                    });
                }
            }
            return marked(step, readings.stream().min(Comparator.comparingInt(Reading::count)
                    .thenComparing(reading -> !Reading.areSlips(reading.fewest()))).orElseThrow());
        } catch (AnswerReader.NotRead e) {
            return new MarkedStep(where(step.body()), step.text(), Judged.NOT_READ, List.of(), e.getMessage());
        }
    }

    /**
     * What is wrong with an equation, seen in one way.
     *
     * @param asWritten   taken as it stands
     * @param turnedRound with every sign the other way
     * @param withRight   whether known forces have their right values
     */
    private record Reading(List<EquationCheck.Finding> asWritten, List<EquationCheck.Finding> turnedRound, boolean withRight) {

        static boolean areSlips(List<EquationCheck.Finding> findings) {
            return findings.stream().allMatch(EquationCheck.Finding::isSlip);
        }

        int count() {
            return Math.min(asWritten.size(), turnedRound.size());
        }

        List<EquationCheck.Finding> fewest() {
            boolean turned = turnedRound.size() < asWritten.size()
                    || turnedRound.size() == asWritten.size() && !areSlips(asWritten) && areSlips(turnedRound);
            return turned ? turnedRound : asWritten;
        }

        /** One sign that is wrong may be that of either side of the equation. */
        List<String> words() {
            boolean either = asWritten.size() == 1 && turnedRound.size() == 1 && !asWritten.equals(turnedRound)
                    && areSlips(asWritten) == areSlips(turnedRound);
            return either ? List.of(asWritten.get(0).words() + " Or: " + turnedRound.get(0).words())
                    : fewest().stream().map(EquationCheck.Finding::words).toList();
        }
    }

    private static MarkedStep marked(StatedStep step, Reading reading) {
        boolean named = Reading.areSlips(reading.fewest());
        Judged judged = reading.count() == 0 ? reading.withRight() ? Judged.RIGHT : Judged.FOLLOWS
                : reading.count() == 1 && named ? Judged.SLIPPED : Judged.WRONG;
        return new MarkedStep(where(step.body()), step.text(), judged, reading.count() == 0 ? List.of() : reading.words(), "");
    }

    private Measure measure(StatedStep step) throws AnswerReader.NotRead {
        if (!step.about().isEmpty()) {
            if (bodies.isInSpace()) {
                throw new AnswerReader.NotRead("moments about a line in space are not read yet");
            }
            return new Measure.About(bodies.place(step.about()));
        }
        return switch (step.axis().toLowerCase(Locale.ROOT)) {
            case "x" -> Measure.X;
            case "y" -> Measure.Y;
            default -> Measure.Z;
        };
    }

    /** The forces on the body; on both parts of a cut truss, where nobody has said which is meant. */
    private List<List<Acting>> parts(Place body) throws AnswerReader.NotRead {
        if (body instanceof Place.AtJoint at) {
            return List.of(bodies.at(at.joint()));
        }
        if (body instanceof Place.InReactions) {
            return List.of(bodies.whole());
        }
        if (body instanceof Place.AtSection section) {
            return cut(section.cut());
        }
        throw new AnswerReader.NotRead("it does not say at which joint; write \"joint B:\", \"reactions:\" or"
                + " \"section BC, CE:\" before it");
    }

    private List<List<Acting>> cut(List<String> names) throws AnswerReader.NotRead {
        Set<Integer> cut = new LinkedHashSet<>();
        for (String name : names) {
            cut.add(bodies.unknowns().find(name).orElseThrow(() -> new AnswerReader.NotRead("\"" + name
                    + "\" is no member of this truss")));
        }
        Optional<List<List<String>>> parts = bodies.parted(cut);
        return List.of(bodies.part(parts.orElseThrow(() -> new AnswerReader.NotRead("the members " + String.join(", ", names)
                + " do not part the truss in two")).get(0)), bodies.part(parts.get().get(1)));
    }

    private static String where(Place body) {
        return body instanceof Place.AtJoint at ? "joint " + at.joint() : body instanceof Place.InReactions ? "whole truss"
                : body instanceof Place.AtSection section ? "section " + String.join(", ", section.cut()) : "";
    }
}
