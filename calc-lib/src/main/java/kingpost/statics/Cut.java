package kingpost.statics;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.List;

/** The members from one side of a section to the other. */
final class Cut {

    private Cut() {
    }

    /** Numbers of the members with one end among some joints, in the truss's order. */
    static List<Integer> of(Network network, BitSet part) {
        List<Integer> cut = new ArrayList<>();
        for (int m = 0; m < network.members(); m++) {
            int first = network.firstJoint(m);
            if (part.get(first) != part.get(network.otherEnd(m, first))) {
                cut.add(m);
            }
        }
        return cut;
    }

    /** The joints on the other side. */
    static BitSet other(Network network, BitSet part) {
        BitSet other = new BitSet();
        other.set(0, network.joints());
        other.andNot(part);
        return other;
    }
}
