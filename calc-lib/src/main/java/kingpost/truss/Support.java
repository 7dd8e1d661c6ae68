package kingpost.truss;

import java.util.List;

/**
 * What holds a joint: one reaction for each direction it blocks.
 *
 * @param joint     name of the joint
 * @param kind      its trade name
 * @param reactions directions in which its reactions are counted positive, as they act on the truss: x and y for a
 *                  pin, x, y and z for a ball, the normal for a roller, the axis for a link
 */
public record Support(String joint, Kind kind, List<Direction> reactions) {

    /** Trade names. */
    public enum Kind { PIN, ROLLER, LINK, BALL }

    public Support {
        reactions = List.copyOf(reactions);
    }
}
