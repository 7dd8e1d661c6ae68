package kingpost.marking;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import kingpost.units.Quantity;

/**
 * One person's answers, marked.
 *
 * @param truss   name of the truss
 * @param student as written, may be empty
 * @param answers in the order stated
 * @param steps   equations stated, in order
 * @param slips   the likeliest explanation of all that is wrong, in the order of working; what nothing explains is left
 *                out
 * @param others  other explanations as good, each the slips that it has in place of {@code slips}
 */
public record MarkedSheet(String truss, String student, List<MarkedAnswer> answers, List<MarkedStep> steps,
                          List<Slip> slips, List<List<Slip>> others) {

    public MarkedSheet {
        answers = List.copyOf(answers);
        steps = List.copyOf(steps);
        slips = List.copyOf(slips);
        others = others.stream().map(List::copyOf).toList();
    }

    /**
     * One answer, marked.
     *
     * @param subject  the force's name
     * @param text     the answer as written
     * @param right    the right answer; empty where the subject is no force of the truss
     * @param isMember whether it is a member's force, which has a sense, or a reaction
     * @param verdict  what is said of it
     */
    public record MarkedAnswer(String subject, String text, Optional<Quantity> right, boolean isMember,
                               Verdict verdict) {
    }

    /**
     * One stated equation, marked.
     *
     * @param where    the body on which it is said to hold: "joint B", "whole truss", "part cut at BC, CE, EF"
     * @param text     as written
     * @param judged   what it is worth
     * @param findings what is wrong in it, in sentences; none where it is right
     * @param reason   why it could not be read; empty where it could
     */
    public record MarkedStep(String where, String text, Judged judged, List<String> findings, String reason) {
        public MarkedStep {
            findings = List.copyOf(findings);
        }

        /** Whether it is right, be it with wrong values carried into it. */
        public boolean isRight() {
            return judged == Judged.RIGHT || judged == Judged.FOLLOWS;
        }
    }

    /** What a stated equation turns out to be. */
    public enum Judged {
        /** It holds. */
        RIGHT,
        /** It would hold, and a wrong value found before is carried into it. */
        FOLLOWS,
        /** One thing in it is wrong, and can be named. */
        SLIPPED,
        /** More than that is wrong in it. */
        WRONG,
        /** It is left for a person to read. */
        NOT_READ
    }

    /** The same marks for other answers, as when some are added that were asked for and not stated. */
    public MarkedSheet with(List<MarkedAnswer> others) {
        return new MarkedSheet(truss, student, others, steps, slips, this.others);
    }

    /** The answer for a force, if there is one. */
    public Optional<MarkedAnswer> answer(String subject) {
        return answers.stream().filter(a -> a.subject().equals(subject)).findFirst();
    }

    public int right() {
        return count(v -> v instanceof Verdict.Right);
    }

    /** Answers that follow correctly from an earlier slip. */
    public int followThrough() {
        return count(v -> v instanceof Verdict.FollowThrough);
    }

    /** Answers wrong by a slip that is named. */
    public int slipped() {
        return count(v -> v instanceof Verdict.Slipped);
    }

    public int unexplained() {
        return count(v -> v instanceof Verdict.Unexplained);
    }

    public int notAnswered() {
        return count(v -> v instanceof Verdict.NotAnswered);
    }

    /** Answers that a person must mark, as they could not be read. */
    public int notRead() {
        return count(v -> v instanceof Verdict.NotRead);
    }

    private int count(Predicate<Verdict> wanted) {
        return (int) answers.stream().filter(a -> wanted.test(a.verdict())).count();
    }

    /** Every slip that may be named for this sheet, the likeliest explanation's first. */
    public List<Slip> allSlips() {
        List<Slip> all = new ArrayList<>(slips);
        others.forEach(other -> other.stream().filter(slip -> !all.contains(slip)).forEach(all::add));
        return all;
    }
}
