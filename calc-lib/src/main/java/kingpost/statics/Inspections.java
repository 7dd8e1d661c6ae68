package kingpost.statics;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.TreeSet;
import kingpost.statics.Inspection.Finding;
import kingpost.statics.Inspection.NearMiss;
import kingpost.truss.Load;
import kingpost.truss.Member;
import kingpost.truss.TrussModel;

/**
 * Looks at every joint for members that carry nothing, takes those away and looks again, round by round, until
 * nothing more is found. A round sees the truss as the last round left it, and looks only where something changed.
 *
 * <p>The rules are common practice, no source: see {@link Inspection.Finding}.
 */
public final class Inspections {

    /** In the plane no rule speaks of a joint with more members: two may lie in a line, and one across. */
    private static final int MOST_IN_A_RULE = 3;

    private final Network network;
    /** Round in which a member was found to carry nothing; 0 for one that was not. */
    private final int[] zeroSince;
    /** Members at a joint that were not found to carry nothing. */
    private final int[] carrying;
    private final boolean[] usedUp;
    private final int[] twin;
    private final List<Finding> findings = new ArrayList<>();
    private TreeSet<Integer> changed = new TreeSet<>();

    Inspections(Network network) {
        this.network = network;
        zeroSince = new int[network.members()];
        usedUp = new boolean[network.joints()];
        carrying = new int[network.joints()];
        for (int m = 0; m < network.members(); m++) {
            for (int joint : network.jointsOf(m)) {
                carrying[joint]++;
            }
        }
        twin = new int[network.members()];
        Arrays.setAll(twin, m -> m);
        for (int j = 0; j < network.joints(); j++) {
            changed.add(j);
        }
        for (int round = 1; !changed.isEmpty(); round++) {
            lookRound(round);
        }
    }

    /** What inspection shows of a truss. */
    public static Inspection of(TrussModel model) {
        return new Inspections(new Network(model)).result();
    }

    Inspection result() {
        return new Inspection(findings, nearMisses());
    }

    /** Whether inspection found that an unknown carries nothing. */
    boolean isZero(int unknown) {
        return network.isMember(unknown) && zeroSince[unknown] > 0;
    }

    /** Whether both equations of a joint were used by inspection. */
    boolean isUsedUp(int joint) {
        return usedUp[joint];
    }

    /** One member for all those in line that carry the same force; every other unknown stands for itself. */
    int leader(int unknown) {
        if (!network.isMember(unknown)) {
            return unknown;
        }
        int leader = unknown;
        while (twin[leader] != leader) {
            twin[leader] = twin[twin[leader]];
            leader = twin[leader];
        }
        return leader;
    }

    private void lookRound(int round) {
        TreeSet<Integer> joints = changed;
        changed = new TreeSet<>();
        for (int joint : joints) {
            look(joint, round);
        }
    }

    private void look(int joint, int round) {
        if (network.dimension() == 2 && carrying[joint] > MOST_IN_A_RULE) {
            return;
        }
        List<Integer> live = live(joint, round);
        if (live.stream().allMatch(this::isZero)) {
            return;
        }
        if (network.dimension() == 3) {
            lookInSpace(joint, live, round);
        } else if (network.loadsAt(joint).isEmpty() && !network.isSupported(joint)) {
            lookAtFree(joint, live, round);
        } else {
            lookAtLoaded(joint, live, round);
        }
    }

    private void lookAtFree(int joint, List<Integer> live, int round) {
        String name = network.name(joint);
        if (live.size() == 1) {
            findings.add(new Finding.SingleMember(name, round, network.member(live.get(0))));
            found(live.get(0), round);
            usedUp[joint] = true;
        } else if (live.size() == 2 && !inLine(joint, live.get(0), live.get(1))) {
            findings.add(new Finding.TwoMembers(name, round, network.member(live.get(0)), network.member(live.get(1))));
            live.forEach(m -> found(m, round));
            usedUp[joint] = true;
        } else if (live.size() == 2 && !usedUp[joint]) {
            findings.add(new Finding.SameForce(name, round, network.member(live.get(0)), network.member(live.get(1))));
            pair(joint, live);
        } else if (live.size() == 3 && live.stream().noneMatch(this::isZero)) {
            lookForPair(joint, live, round);
        }
    }

    private void lookForPair(int joint, List<Integer> live, int round) {
        int idle = outOfLine(joint, live);
        if (idle >= 0) {
            List<Integer> pair = live.stream().filter(m -> m != idle).toList();
            findings.add(new Finding.ThreeMembers(network.name(joint), round, network.member(idle),
                    network.member(pair.get(0)), network.member(pair.get(1))));
            found(idle, round);
            pair(joint, pair);
        }
    }

    private void lookAtLoaded(int joint, List<Integer> live, int round) {
        List<Vector> acting = acting(joint);
        Vector line = acting.get(0);
        if (!acting.stream().allMatch(a -> Network.inLine(line, a))) {
            return;
        }
        List<Integer> across = live.stream().filter(m -> !Network.inLine(line, network.unit(m, joint))).toList();
        if (across.size() == 1 && !isZero(across.get(0))) {
            List<Member> carrying = live.stream().filter(m -> !across.contains(m)).map(network::member).toList();
            findings.add(new Finding.LoadInLine(network.name(joint), round, network.member(across.get(0)), carrying));
            found(across.get(0), round);
        }
    }

    /** A member that all the others at a joint, and all that acts there, leave alone across their line or plane. */
    private void lookInSpace(int joint, List<Integer> live, int round) {
        List<Vector> acting = acting(joint);
        if (acting.isEmpty() && live.size() <= 3 && lookAtFew(joint, live, round)) {
            return;
        }
        for (int member : live) {
            List<Integer> others = live.stream().filter(m -> m != member).toList();
            List<Vector> rest = new ArrayList<>(acting);
            others.forEach(m -> rest.add(network.unit(m, joint)));
            Spanned spanned = Spanned.by(rest);
            if (!isZero(member) && spanned.rank() < 3 && !spanned.contains(network.unit(member, joint))) {
                List<Member> carrying = others.stream().map(network::member).toList();
                findings.add(spanned.rank() == 1 && !acting.isEmpty()
                        ? new Finding.LoadInLine(network.name(joint), round, network.member(member), carrying)
                        : new Finding.OutOfPlane(network.name(joint), round, network.member(member), carrying,
                                !acting.isEmpty()));
                found(member, round);
            }
        }
    }

    /** Up to three members and nothing else, as in the plane; true when a rule spoke that leaves no equation over. */
    private boolean lookAtFew(int joint, List<Integer> live, int round) {
        Spanned all = Spanned.by(live.stream().map(m -> network.unit(m, joint)).toList());
        if (live.size() == 3 && all.rank() == 3 && live.stream().noneMatch(this::isZero)) {
            findings.add(new Finding.NotInOnePlane(network.name(joint), round,
                    live.stream().map(network::member).toList()));
            live.forEach(m -> found(m, round));
            usedUp[joint] = true;
        } else if (all.rank() < 3) {
            lookAtFree(joint, live, round);
        }
        return usedUp[joint];
    }

    /** In space nothing is told of them: too many joints look like a rule from one side. */
    private List<NearMiss> nearMisses() {
        List<NearMiss> misses = new ArrayList<>();
        for (int joint = 0; joint < network.joints() && network.dimension() == 2; joint++) {
            List<Integer> live = live(joint, Integer.MAX_VALUE);
            boolean acted = !network.loadsAt(joint).isEmpty() || network.isSupported(joint);
            if (acted && live.size() == 2 && !inLine(joint, live.get(0), live.get(1))) {
                misses.add(nearMiss(joint, live, 2));
            } else if (acted && live.size() == 3 && outOfLine(joint, live) >= 0) {
                int idle = outOfLine(joint, live);
                List<Integer> ordered = new ArrayList<>(live);
                ordered.remove(Integer.valueOf(idle));
                ordered.add(0, idle);
                misses.add(nearMiss(joint, ordered, 3));
            }
        }
        return misses;
    }

    private NearMiss nearMiss(int joint, List<Integer> members, int rule) {
        String name = network.name(joint);
        List<Load> loads = network.loadsAt(joint).stream().map(Source.OfLoad::load).toList();
        return new NearMiss(name, members.stream().map(network::member).toList(), rule, loads,
                network.isSupported(joint) ? network.model().supportsAt(name) : List.of());
    }

    private void found(int member, int round) {
        if (!isZero(member)) {
            zeroSince[member] = round;
            for (int joint : network.jointsOf(member)) {
                carrying[joint]--;
                changed.add(joint);
            }
        }
    }

    private void pair(int joint, List<Integer> pair) {
        twin[leader(pair.get(1))] = leader(pair.get(0));
        usedUp[joint] = true;
    }

    /** Members that had not been found idle when a round began. */
    private List<Integer> live(int joint, int round) {
        List<Integer> live = new ArrayList<>();
        for (int u : network.unknownsAt(joint)) {
            if (network.isMember(u) && (zeroSince[u] == 0 || zeroSince[u] >= round)) {
                live.add(u);
            }
        }
        return live;
    }

    /** Of three members at a joint the one beside two in line, or -1. */
    private int outOfLine(int joint, List<Integer> three) {
        for (int i = 0; i < 3; i++) {
            if (inLine(joint, three.get((i + 1) % 3), three.get((i + 2) % 3))) {
                return three.get(i);
            }
        }
        return -1;
    }

    private boolean inLine(int joint, int a, int b) {
        return Network.inLine(network.unit(a, joint), network.unit(b, joint));
    }

    private List<Vector> acting(int joint) {
        List<Vector> acting = new ArrayList<>();
        network.forcesAt(joint).forEach(f -> acting.add(f.unit()));
        for (int u : network.unknownsAt(joint)) {
            if (!network.isMember(u)) {
                acting.add(network.unit(u, joint));
            }
        }
        return acting;
    }
}
