package kingpost.statics;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import kingpost.units.CalculationException;

/** A truss that statics does not solve: it moves, it has more members than statics can tell, or joints get stuck. */
public final class NotSolvable extends CalculationException {

    private static final long serialVersionUID = 1L;

    private final transient Determinacy determinacy;
    private final transient List<String> stuckAt;

    private NotSolvable(String message, Determinacy determinacy, List<String> stuckAt) {
        super(message);
        this.determinacy = determinacy;
        this.stuckAt = List.copyOf(stuckAt);
    }

    static NotSolvable because(String truss, Determinacy determinacy) {
        return new NotSolvable("Truss " + truss + ": " + determinacy.accept(new Reason()), determinacy, List.of());
    }

    static NotSolvable stuck(String truss, Determinacy determinacy, List<String> joints) {
        return new NotSolvable("Truss " + truss + ": joint by joint the work stops with more than "
                + (determinacy.count().dimension() == 2 ? "two" : "three") + " unknowns at joints "
                + String.join(", ", joints) + "; it is a compound truss and needs a section.", determinacy, joints);
    }

    /** What counting and rank said, unless joints got stuck in a determinate truss. */
    public Optional<Determinacy> determinacy() {
        return Optional.ofNullable(determinacy);
    }

    /** Joints that the work by joints does not reach; empty when the truss is not determinate. */
    public List<String> stuckAt() {
        return stuckAt;
    }

    private static final class Reason implements Determinacy.Visitor<String> {

        @Override
        public String determinate(Determinacy.Determinate determinacy) {
            throw new IllegalArgumentException("a determinate truss is solvable");
        }

        @Override
        public String indeterminate(Determinacy.Indeterminate d) {
            return "it is statically indeterminate to degree " + d.degree() + " (" + counts(d.count())
                    + "), so equilibrium alone does not give its forces; " + remedy(d) + ".";
        }

        private static String remedy(Determinacy.Indeterminate d) {
            List<String> all = new ArrayList<>(d.removable());
            all.addAll(d.removableReactions().stream().map(r -> "the reaction " + r).toList());
            String many = d.degree() == 1 ? "one" : d.degree() + ", chosen so that the rest holds,";
            return "take away " + many + " of " + list(all);
        }

        @Override
        public String mechanism(Determinacy.Mechanism d) {
            String moving = list(d.motion().keySet().stream().sorted().toList());
            String joints = d.motion().size() == 1 ? "joint " + moving : "joints " + moving;
            return switch (d.cause()) {
                case TOO_FEW -> "it is a mechanism (" + counts(d.count()) + "): " + joints
                        + " can move; add " + missing(d) + ".";
                case REACTIONS_DO_NOT_HOLD -> "its reactions do not hold it (" + counts(d.count())
                        + (d.count().dimension() == 3 ? "): together they leave it free to move or to turn as a whole; "
                        : "): they are parallel or meet in one point, so that the whole truss can move; ")
                        + "turn or move a support.";
                case MEMBERS_MISPLACED -> "it is a mechanism although the count is right (" + counts(d.count()) + "): "
                        + joints + " can move; brace them with a member taken from where there is one too many.";
            };
        }

        private static String missing(Determinacy.Mechanism d) {
            int missing = d.count().equations() - d.count().unknowns();
            return missing == 1 ? "one member or reaction there" : missing + " members or reactions";
        }

        private static String counts(Determinacy.Count c) {
            return "m + r = " + c.members() + " + " + c.reactions() + " = " + c.unknowns() + ", " + c.dimension()
                    + "j = " + c.equations();
        }

        private static String list(List<String> names) {
            return names.size() <= 12 ? String.join(", ", names)
                    : String.join(", ", names.subList(0, 12)) + " and " + (names.size() - 12) + " more";
        }
    }
}
