package kingpost.statics;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.List;

/**
 * The stiff parts of a plane truss: triangles grown by joints that hang on them with two members, and joined where
 * two parts share two joints. A compound truss is made of a few of these.
 */
final class Clusters {

    private final Network network;
    private final List<BitSet> clusters = new ArrayList<>();
    private final BitSet taken = new BitSet();

    Clusters(Network network) {
        this.network = network;
        for (int m = 0; m < network.members(); m++) {
            if (!taken.get(m)) {
                seed(m);
            }
        }
        while (join()) {
            continue;
        }
    }

    /** Sets of joints; two sets share one joint at most. */
    List<BitSet> joints() {
        return clusters;
    }

    /** A member starts a part; on its own it is one of two joints. */
    private void seed(int member) {
        BitSet cluster = new BitSet();
        int first = network.firstJoint(member);
        cluster.set(first);
        cluster.set(network.otherEnd(member, first));
        grow(cluster);
        for (int m = 0; m < network.members(); m++) {
            if (isInside(m, cluster)) {
                taken.set(m);
            }
        }
        clusters.add(cluster);
    }

    private void grow(BitSet cluster) {
        List<Integer> front = new ArrayList<>(cluster.stream().boxed().toList());
        for (int i = 0; i < front.size(); i++) {
            int joint = front.get(i);
            for (int u : network.unknownsAt(joint)) {
                int other = network.isMember(u) ? network.otherEnd(u, joint) : joint;
                if (!cluster.get(other) && isHeld(other, cluster)) {
                    cluster.set(other);
                    front.add(other);
                }
            }
        }
    }

    /** Whether two members that are not in line hold a joint to a part. */
    private boolean isHeld(int joint, BitSet cluster) {
        Vector first = null;
        for (int u : network.unknownsAt(joint)) {
            if (network.isMember(u) && cluster.get(network.otherEnd(u, joint))) {
                Vector unit = network.unit(u, joint);
                if (first != null && !Network.inLine(first, unit)) {
                    return true;
                }
                first = first == null ? unit : first;
            }
        }
        return false;
    }

    private boolean isInside(int member, BitSet cluster) {
        int first = network.firstJoint(member);
        return cluster.get(first) && cluster.get(network.otherEnd(member, first));
    }

    /** Joins the first two parts that share two joints. */
    private boolean join() {
        for (int i = 0; i < clusters.size(); i++) {
            for (int k = i + 1; k < clusters.size(); k++) {
                BitSet shared = (BitSet) clusters.get(i).clone();
                shared.and(clusters.get(k));
                if (shared.cardinality() >= 2) {
                    clusters.get(i).or(clusters.remove(k));
                    grow(clusters.get(i));
                    return true;
                }
            }
        }
        return false;
    }
}
