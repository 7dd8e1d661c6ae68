package kingpost.truss;

import java.util.List;
import java.util.stream.Collectors;
import kingpost.units.CalculationException;

/** Everything that is wrong with a truss as it was written down: all of it at once, one line for each problem. */
public final class TrussProblems extends CalculationException {

    private static final long serialVersionUID = 1L;

    private final transient List<Problem> problems;

    TrussProblems(List<Problem> problems) {
        super(problems.stream().map(Problem::toString).collect(Collectors.joining("\n")));
        this.problems = List.copyOf(problems);
    }

    /** In the order in which the truss was written: units, joints, members, supports, loads. */
    public List<Problem> problems() {
        return problems;
    }

    /**
     * One problem.
     *
     * @param subject what it is about: "Member AB"
     * @param wrong   what is wrong, with value and unit
     * @param remedy  what to do
     */
    public record Problem(String subject, String wrong, String remedy) {
        @Override
        public String toString() {
            return subject + ": " + wrong + "; " + remedy + ".";
        }
    }
}
