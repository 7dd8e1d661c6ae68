package kingpost.statics;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.ToDoubleFunction;
import kingpost.truss.Load;
import kingpost.truss.LoadCases;
import kingpost.truss.LoadCases.Combination;
import kingpost.truss.LoadCases.LoadCase;
import kingpost.truss.Member;
import kingpost.truss.TrussModel;
import kingpost.units.CalculationException;

/**
 * The forces of a truss in each of its load cases and combinations, and of each member the largest tension and the
 * largest compression with what governs it. A combination is the sum of its cases, each times its factor: the forces
 * of a determinate truss add up as its loads do.
 *
 * @param truss        with its load cases
 * @param columns      names of what is compared: the combinations, or the cases where no combination is written
 * @param combinations the combinations compared; empty where the cases are compared
 * @param cases        names of the cases
 * @param members      one for each member, in the truss's order
 * @param reactions    one for each reaction component
 */
public record Envelope(TrussModel truss, List<String> columns, List<Combination> combinations, List<String> cases,
                       List<Range<Member>> members, List<Range<Source.OfReaction>> reactions) {

    public Envelope {
        columns = List.copyOf(columns);
        combinations = List.copyOf(combinations);
        cases = List.copyOf(cases);
        members = List.copyOf(members);
        reactions = List.copyOf(reactions);
    }

    /**
     * Forces in N, tension or the reaction's direction positive.
     *
     * @param byCase   in the order of the cases
     * @param byColumn in the order of what is compared
     * @param highest  the largest value above zero, if any
     * @param lowest   the smallest value below zero, if any
     */
    public record Range<T>(T of, List<Double> byCase, List<Double> byColumn, Optional<Extreme> highest,
                           Optional<Extreme> lowest) {
        public Range {
            byCase = List.copyOf(byCase);
            byColumn = List.copyOf(byColumn);
        }
    }

    /** A force in N, and the combination or case that brings it. */
    public record Extreme(double force, String governs) {
    }

    /**
     * The envelope of a truss with load cases.
     *
     * @throws CalculationException when it has none
     * @throws NotSolvable          when it is a mechanism or indeterminate
     */
    public static Envelope of(TrussModel truss) {
        LoadCases cases = truss.cases();
        if (cases.isEmpty()) {
            throw new CalculationException("Envelope: " + truss.name()
                    + " has no load cases; write loadCase(\"dead\") or the like before the loads of each.");
        }
        List<Solution> solved = cases.cases().stream()
                .map(c -> Solver.solve(truss.under(truss.name() + ", " + c.name(), c.loads()))).toList();
        List<String> names = cases.cases().stream().map(LoadCase::name).toList();
        List<Combination> compared = cases.combinations();
        List<List<Combination.Part>> sums = compared.isEmpty()
                ? names.stream().map(name -> List.of(new Combination.Part(1, name))).toList()
                : compared.stream().map(Combination::parts).toList();
        List<String> columns = compared.isEmpty() ? names : compared.stream().map(Combination::name).toList();
        Summing summing = new Summing(solved, names, sums, columns);
        List<Range<Member>> members = new ArrayList<>();
        for (int i = 0; i < truss.members().size(); i++) {
            int number = i;
            members.add(summing.range(truss.members().get(i), s -> s.members().get(number).force()));
        }
        List<Range<Source.OfReaction>> reactions = new ArrayList<>();
        for (int i = 0; i < solved.get(0).reactions().size(); i++) {
            int number = i;
            reactions.add(summing.range(solved.get(0).reactions().get(i).reaction(),
                    s -> s.reactions().get(number).force()));
        }
        return new Envelope(truss, columns, compared, names, members, reactions);
    }

    /** The loads of a combination, each times the factor of its case. */
    public static List<Load> loads(TrussModel truss, Combination combination) {
        List<Load> loads = new ArrayList<>();
        for (Combination.Part part : combination.parts()) {
            truss.cases().named(part.loadCase()).orElseThrow().loads()
                    .forEach(load -> loads.add(part.factor() == 1 ? load : load.times(part.factor())));
        }
        return loads;
    }

    /** Adds up what the cases bring. */
    private record Summing(List<Solution> solved, List<String> names, List<List<Combination.Part>> sums,
                           List<String> columns) {

        /** A sum that is smaller than this part of what it is made of is rounding. */
        private static final double NOISE = 1e-12;

        <T> Range<T> range(T of, ToDoubleFunction<Solution> force) {
            List<Double> byCase = solved.stream().map(force::applyAsDouble).toList();
            List<Double> byColumn = sums.stream().map(parts -> sum(parts, byCase)).toList();
            return new Range<>(of, byCase, byColumn, extreme(byColumn, 1), extreme(byColumn, -1));
        }

        private double sum(List<Combination.Part> parts, List<Double> byCase) {
            double sum = 0;
            double spread = 0;
            for (Combination.Part part : parts) {
                double force = part.factor() * byCase.get(names.indexOf(part.loadCase()));
                sum += force;
                spread += Math.abs(force);
            }
            return Math.abs(sum) <= NOISE * spread ? 0 : sum;
        }

        private Optional<Extreme> extreme(List<Double> forces, int sign) {
            int best = -1;
            for (int i = 0; i < forces.size(); i++) {
                double force = sign * forces.get(i);
                if (force > 0 && (best < 0 || force > sign * forces.get(best))) {
                    best = i;
                }
            }
            return best < 0 ? Optional.empty() : Optional.of(new Extreme(forces.get(best), columns.get(best)));
        }
    }
}
