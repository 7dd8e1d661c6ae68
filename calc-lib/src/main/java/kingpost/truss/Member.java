package kingpost.truss;

/**
 * A straight member between two joints, pinned at both.
 *
 * @param name as the user wrote it: "AB" or "L0-L1"
 * @param from name of the first joint
 * @param to   name of the second joint
 */
public record Member(String name, String from, String to) {

    /** Whether one end is at {@code joint}. */
    public boolean meets(String joint) {
        return from.equals(joint) || to.equals(joint);
    }

    /** The joint at the other end from {@code joint}, which must be one of the ends. */
    public String otherEnd(String joint) {
        return from.equals(joint) ? to : from;
    }
}
