package kingpost.marking;

import kingpost.marking.MarkedSheet.Judged;
import kingpost.marking.MarkedSheet.MarkedStep;

/**
 * What an answer is worth, and an equation as much. An answer that follows correctly from an earlier slip is worth as
 * much as a right one unless told otherwise: the slip is paid for once, where it was made.
 *
 * @param right    for a right answer, and the most that an answer can bring
 * @param follows  for one that follows correctly from an earlier slip
 * @param slip     for one that is wrong by a slip that could be named
 */
public record Points(int right, int follows, int slip) {

    /** Two for right, two for following, one for a slip that is named; common practice, no source. */
    public static final Points USUAL = new Points(2, 2, 1);

    public Points {
        if (right < 1 || follows < 0 || slip < 0 || follows > right || slip > right) {
            throw new kingpost.units.CalculationException("Points " + right + ", " + follows + ", " + slip
                    + ": a right answer must be worth 1 or more, and nothing more than a right answer or less than 0;"
                    + " give them in the order right, follows, slip.");
        }
    }

    /**
     * What a sheet earned.
     *
     * @param points earned by what could be marked
     * @param outOf  the most that can be earned
     * @param open   how many of those depend on answers that a person must read
     */
    public record Score(int points, int outOf, int open) {
        @Override
        public String toString() {
            return points + " of " + outOf + (open == 0 ? "" : " (" + open + " open)");
        }
    }

    /** What a verdict is worth; nothing yet for what could not be read. */
    public int of(Verdict verdict) {
        return verdict.accept(new Verdict.Visitor<Integer>() {
            @Override
            public Integer right(Verdict.Right verdict) {
                return right;
            }

            @Override
            public Integer slipped(Verdict.Slipped verdict) {
                return slip;
            }

            @Override
            public Integer followThrough(Verdict.FollowThrough verdict) {
                return follows;
            }

            @Override
            public Integer unexplained(Verdict.Unexplained verdict) {
                return 0;
            }

            @Override
            public Integer notAnswered(Verdict.NotAnswered verdict) {
                return 0;
            }

            @Override
            public Integer notRead(Verdict.NotRead verdict) {
                return 0;
            }
        });
    }

    /** What a stated equation is worth: as much as an answer. */
    public int of(MarkedStep step) {
        return switch (step.judged()) {
            case RIGHT -> right;
            case FOLLOWS -> follows;
            case SLIPPED -> slip;
            case WRONG, NOT_READ -> 0;
        };
    }

    /** What a sheet earned; something stated under a name that is no force of the truss is worth nothing either way. */
    public Score of(MarkedSheet sheet) {
        int points = sheet.answers().stream().mapToInt(answer -> of(answer.verdict())).sum()
                + sheet.steps().stream().mapToInt(this::of).sum();
        int counted = sheet.steps().size()
                + (int) sheet.answers().stream().filter(answer -> answer.right().isPresent()).count();
        long open = sheet.steps().stream().filter(step -> step.judged() == Judged.NOT_READ).count()
                + sheet.answers().stream().filter(answer -> answer.right().isPresent()
                && answer.verdict() instanceof Verdict.NotRead).count();
        return new Score(points, counted * right, (int) open * right);
    }
}
