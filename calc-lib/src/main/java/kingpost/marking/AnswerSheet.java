package kingpost.marking;

import java.util.List;

/**
 * What one person stated.
 *
 * @param student   as written, may be empty
 * @param answers   in the order stated, at most one for each force
 * @param steps     equations stated, in order
 * @param order     joints in the order in which the person says they were worked; empty where nothing is said of it
 */
public record AnswerSheet(String student, List<Stated> answers, List<StatedStep> steps, List<String> order) {

    public AnswerSheet {
        answers = List.copyOf(answers);
        steps = List.copyOf(steps);
        order = List.copyOf(order);
    }

    /**
     * One answer.
     *
     * @param subject the force's name in the truss, or as written where it is not one of the truss's
     * @param text    the answer as written
     * @param reading what it says
     */
    public record Stated(String subject, String text, Reading reading) {
    }

    /**
     * One equation.
     *
     * @param body     on which it is said to hold; {@code Throughout} where nothing is said of it
     * @param axis     x, y or z for a sum of forces; empty for moments
     * @param about    the joint about which moments are taken; empty for a sum of forces
     * @param equation behind the name of the sum
     * @param text     as written
     */
    public record StatedStep(Slip.Place body, String axis, String about, String equation, String text) {
    }
}
