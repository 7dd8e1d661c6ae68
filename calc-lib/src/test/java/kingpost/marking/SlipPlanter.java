package kingpost.marking;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import kingpost.marking.Slip.Kind;
import kingpost.statics.AxisEquation;
import kingpost.statics.BodyEquation;
import kingpost.statics.Inspection;
import kingpost.statics.Solution;
import kingpost.statics.Source;
import kingpost.statics.Step;
import kingpost.truss.Member;

/**
 * Works a solution's steps again as a person would who makes one slip, in the solution's own equations; shares no code
 * with the search that looks for slips.
 */
final class SlipPlanter {

    private final Solution solution;
    private final Random random;
    private final Map<Source, Double> carried = new HashMap<>();
    private final Map<String, String> stated = new LinkedHashMap<>();
    private final boolean words;
    private final boolean reactionsStated;
    private Kind kind;
    private int at;
    private boolean done;
    private Optional<Source> forgotten = Optional.empty();

    SlipPlanter(Solution solution, Random random) {
        this.solution = solution;
        this.random = random;
        this.words = random.nextBoolean();
        this.reactionsStated = random.nextBoolean();
    }

    /** The sheet of a person who makes a slip of {@code wanted} somewhere; empty where the place drawn allows none. */
    Optional<Map<String, String>> plant(Kind wanted) {
        kind = wanted;
        at = random.nextInt(solution.steps().size());
        for (int i = 0; i < solution.steps().size(); i++) {
            int number = i;
            boolean here = i == at;
            solution.steps().get(i).accept(new Step.Visitor<Void>() {
                @Override
                public Void reactions(Step.Reactions step) {
                    reactionsOf(step, here);
                    return null;
                }

                @Override
                public Void joint(Step.AtJoint step) {
                    jointOf(step, here, number);
                    return null;
                }

                @Override
                public Void section(Step.AtSection step) {
                    throw new IllegalArgumentException("slips are planted in simple trusses only");
                }

                @Override
                public Void twoBodies(Step.TwoBodies step) {
                    throw new IllegalArgumentException("slips are planted in simple trusses only");
                }

                @Override
                public Void together(Step.JointsTogether step) {
                    throw new IllegalArgumentException("slips are planted in simple trusses only");
                }
            });
        }
        solution.members().forEach(this::finish);
        return done ? Optional.of(stated) : Optional.empty();
    }

    private void finish(Solution.MemberResult result) {
        if (!stated.containsKey(result.member().name())) {
            stated.put(result.member().name(), result.force() == 0 ? "0" : write(result.force() / 1000));
        }
    }

    private void reactionsOf(Step.Reactions step, boolean here) {
        List<Source> loads = new ArrayList<>();
        step.equations().forEach(e -> e.terms().forEach(t -> {
            if (t.source() instanceof Source.OfLoad) {
                loads.add(t.source());
            }
        }));
        if (here && kind == Kind.LOAD_FORGOTTEN && !loads.isEmpty()) {
            forgotten = Optional.of(loads.get(random.nextInt(loads.size())));
            done = true;
        }
        boolean lasting = random.nextBoolean();
        for (BodyEquation equation : step.equations()) {
            if (equation.role() instanceof AxisEquation.Role.Gives gives) {
                double sum = 0;
                double factor = 0;
                for (BodyEquation.Term term : equation.terms()) {
                    if (term.source().equals(gives.unknown())) {
                        factor += term.factor();
                    } else if (!forgotten.equals(Optional.of(term.source()))) {
                        sum += term.factor() * (term.source() instanceof Source.OfLoad ? term.value() / 1000
                                : carried.get(term.source()));
                    }
                }
                carried.put(gives.unknown(), -sum / factor);
            }
        }
        if (!lasting) {
            forgotten = Optional.empty();
        }
        step.answers().forEach(answer -> {
            Source.OfReaction reaction = (Source.OfReaction) answer.unknown();
            if (reactionsStated) {
                stated.put(reaction.joint() + reaction.letter(), digits(carried.get(reaction)));
            }
        });
    }

    private void jointOf(Step.AtJoint step, boolean here, int number) {
        Map<Source, Double> values = new HashMap<>(carried);
        Source swapped = null;
        Source reversed = null;
        List<Source> known = new ArrayList<>();
        List<Source> loads = new ArrayList<>();
        List<Source> inclined = new ArrayList<>();
        for (AxisEquation equation : step.equations()) {
            for (AxisEquation.Term term : equation.terms()) {
                Source source = term.force().source();
                if (source instanceof Source.OfLoad) {
                    loads.add(source);
                    values.put(source, term.force().value() / 1000);
                } else if (carried.containsKey(source) && source instanceof Source.OfMember
                        && Math.abs(carried.get(source)) > 1e-6) {
                    known.add(source);
                }
                if (Math.abs(term.cosine()) > 0.05 && Math.abs(term.cosine()) < 0.998) {
                    inclined.add(source);
                }
            }
        }
        if (here && kind == Kind.LOAD_FORGOTTEN && !loads.isEmpty()) {
            values.put(pick(loads), 0.0);
            done = true;
        } else if (here && kind == Kind.SINE_COSINE_SWAPPED && !inclined.isEmpty()) {
            swapped = pick(inclined);
            done = true;
        } else if (here && kind == Kind.WRONG_MEMBER_CARRIED && !known.isEmpty()) {
            Source one = pick(known);
            List<Source> others = carried.keySet().stream().filter(s -> s instanceof Source.OfMember
                    && Math.abs(carried.get(s) - carried.get(one)) > 1e-6).toList();
            if (!others.isEmpty()) {
                values.put(one, carried.get(pick(others)));
                done = true;
            }
        } else if (here && kind == Kind.ROUNDED_CARRIED && !known.isEmpty()) {
            Source one = pick(known);
            values.put(one, Figures.round(carried.get(one), 2));
            carried.put(one, values.get(one));
            done = true;
        }
        forgotten.ifPresent(load -> values.computeIfPresent(load, (l, v) -> 0.0));
        solve(step, values, swapped);
        boolean first = true;
        for (Step.Answer answer : step.answers()) {
            Source.OfMember member = answer.unknown() instanceof Source.OfMember m ? m : null;
            double value = carried.get(answer.unknown());
            if (member != null) {
                state(member, value, here && first);
                first = false;
            }
        }
        copyInLine();
    }

    /** Two members in line at a joint seen by inspection carry the same. */
    private void copyInLine() {
        for (int again = 0; again < solution.members().size(); again++) {
            for (Inspection.Finding finding : solution.inspection().findings()) {
                if (finding instanceof Inspection.Finding.ThreeMembers three) {
                    copy(three.first(), three.second());
                    copy(three.second(), three.first());
                } else if (finding instanceof Inspection.Finding.SameForce same) {
                    copy(same.first(), same.second());
                    copy(same.second(), same.first());
                }
            }
        }
    }

    private void copy(Member from, Member to) {
        Source source = new Source.OfMember(from);
        if (carried.containsKey(source) && !stated.containsKey(to.name())) {
            carried.put(new Source.OfMember(to), carried.get(source));
            stated.put(to.name(), write(carried.get(source)));
        }
    }

    private void state(Source.OfMember member, double value, boolean here) {
        String name = member.member().name();
        stated.put(name, write(value));
        if (!here || Math.abs(value) < 1e-6) {
            return;
        }
        if (kind == Kind.SENSE_REVERSED) {
            carried.put(member, -value);
            stated.put(name, write(-value));
            done = true;
        } else if (kind == Kind.WRONG_SENSE_WORD) {
            stated.put(name, digits(Math.abs(value)) + (value > 0 ? " kN C" : " kN T"));
            done = true;
        } else if (kind == Kind.DIGITS_TRANSPOSED) {
            String digits = digits(Math.abs(value));
            List<Double> swaps = Figures.transposed(digits).stream()
                    .filter(v -> Math.abs(value) >= 1 && v >= 1 && v < 1000).toList();
            if (!swaps.isEmpty()) {
                double slipped = Math.copySign(swaps.get(random.nextInt(swaps.size())), value);
                stated.put(name, write(slipped));
                if (random.nextBoolean()) {
                    carried.put(member, slipped);
                }
                done = true;
            }
        }
    }

    /** The equations that give unknowns, with one force's sine and cosine in each other's places. */
    private void solve(Step.AtJoint step, Map<Source, Double> values, Source swapped) {
        List<AxisEquation> used = step.equations().stream()
                .filter(e -> !(e.role() instanceof AxisEquation.Role.Check)).toList();
        List<Source> unknowns = step.answers().stream().map(Step.Answer::unknown).toList();
        double[][] matrix = new double[unknowns.size()][unknowns.size()];
        double[] right = new double[unknowns.size()];
        for (int row = 0; row < unknowns.size(); row++) {
            for (AxisEquation.Term term : used.get(row).terms()) {
                Source source = term.force().source();
                double cosine = source.equals(swapped)
                        ? Math.copySign(Math.sqrt(1 - term.cosine() * term.cosine()), term.cosine()) : term.cosine();
                if (unknowns.contains(source)) {
                    matrix[row][unknowns.indexOf(source)] += cosine;
                } else {
                    right[row] -= cosine * values.getOrDefault(source, 0.0);
                }
            }
        }
        if (unknowns.size() == 1) {
            carried.put(unknowns.get(0), right[0] / matrix[0][0]);
        } else {
            double det = matrix[0][0] * matrix[1][1] - matrix[0][1] * matrix[1][0];
            carried.put(unknowns.get(0), (right[0] * matrix[1][1] - matrix[0][1] * right[1]) / det);
            carried.put(unknowns.get(1), (matrix[0][0] * right[1] - matrix[1][0] * right[0]) / det);
        }
    }

    private String write(double value) {
        if (Math.abs(value) < 1e-6) {
            return "0";
        }
        return words ? digits(Math.abs(value)) + (value > 0 ? " kN T" : " kN C") : digits(value);
    }

    /** To three significant figures. */
    static String digits(double value) {
        if (Math.abs(value) < 1e-6) {
            return "0";
        }
        double rounded = Figures.round(value, 3);
        int decimals = Math.max(0, 2 - (int) Math.floor(Math.log10(Math.abs(rounded))));
        return String.format(Locale.ROOT, "%." + decimals + "f", rounded);
    }

    private <T> T pick(List<T> list) {
        return list.get(random.nextInt(list.size()));
    }
}
