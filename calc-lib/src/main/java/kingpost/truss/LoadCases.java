package kingpost.truss;

import java.util.List;
import java.util.Optional;

/**
 * The loads of a truss by cases, and the combinations of cases that are to be looked at.
 *
 * @param cases        in the order written; empty where the loads were written without cases
 * @param combinations in the order written
 */
public record LoadCases(List<LoadCase> cases, List<Combination> combinations) {

    public static final LoadCases NONE = new LoadCases(List.of(), List.of());

    public LoadCases {
        cases = List.copyOf(cases);
        combinations = List.copyOf(combinations);
    }

    public boolean isEmpty() {
        return cases.isEmpty();
    }

    public Optional<LoadCase> named(String name) {
        return cases.stream().filter(c -> c.name().equals(name)).findFirst();
    }

    /**
     * A combination of these cases.
     *
     * @param formula as in {@code "1.2 dead + 1.6 snow"}
     * @throws TrussProblems when it cannot be read, or names a case that is not there
     */
    public Combination combination(String formula) {
        Problems problems = new Problems();
        Optional<Combination> read = new CombinationReader(cases.stream().map(LoadCase::name).toList(), problems)
                .read("", formula);
        problems.throwIfAny();
        return read.orElseThrow();
    }

    /** Loads that act together, such as all that is dead load. */
    public record LoadCase(String name, List<Load> loads) {
        public LoadCase {
            loads = List.copyOf(loads);
        }
    }

    /**
     * Cases that act at the same time, each with its factor.
     *
     * @param name  as the user calls it, or what it is made of: "1.2 dead + 1.6 snow"
     * @param parts at least one
     */
    public record Combination(String name, List<Part> parts) {
        public Combination {
            parts = List.copyOf(parts);
        }

        /** @param factor by which the loads of the case are multiplied; not zero */
        public record Part(double factor, String loadCase) {
        }
    }
}
