package kingpost.diagram;

import java.util.List;
import kingpost.statics.Vector;
import kingpost.svg.Span;

/**
 * A force as a free body draws it.
 *
 * @param label  its symbol, or its value
 * @param key    its name in plain letters
 * @param colour of arrow and label
 * @param way    the way it points on the sheet, length 1
 * @param side   for a member: the way to its other end, on which side its arrow must lie
 * @param slope  its direction in numbers that may be exact: 3 and 4 for a slope of 3 to 4
 * @param dashed whether it carries nothing and is drawn as a dashed end without a head
 * @param words  what it is, as a sentence
 */
record BodyForce(List<Span> label, String key, String colour, Place way, Place side, Vector slope, boolean dashed,
                 String words) {

    BodyForce {
        label = List.copyOf(label);
    }

    /** Whether its arrow may lie on either side of the joint. */
    boolean isFree() {
        return side.norm() == 0;
    }
}
