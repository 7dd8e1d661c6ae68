package kingpost.truss;

import static kingpost.truss.JointIndex.x;
import static kingpost.truss.JointIndex.y;
import static kingpost.truss.JointIndex.z;

import java.util.Collection;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** Finds joints at one place, joints on a member, and joints that no member meets. Crossing members are legal. */
final class GeometryCheck {

    /** Two joints nearer than this part of the truss's extent are at one place. */
    private static final double SAME_PLACE = 1e-9;
    /** A joint nearer to a member than this part of the member's length is on it. */
    private static final double ON_MEMBER = 1e-6;

    private final Map<String, Joint> joints = new LinkedHashMap<>();
    private final Map<String, Integer> order = new HashMap<>();
    private final Set<String> doubled = new HashSet<>();
    private final JointIndex index;
    private final Problems problems;

    /** {@code faulty}: joints with a problem of their own, which are not looked at here. */
    GeometryCheck(Map<String, Joint> all, Set<String> faulty, Problems problems) {
        joints.putAll(all);
        joints.keySet().removeAll(faulty);
        joints.keySet().forEach(name -> order.put(name, order.size()));
        this.index = new JointIndex(joints.values());
        this.problems = problems;
    }

    void check(Collection<Member> members) {
        joints.values().forEach(this::checkPlace);
        members.stream().filter(m -> joints.containsKey(m.from()) && joints.containsKey(m.to()))
                .forEach(this::checkClear);
    }

    /** {@code unread}: names of members that could not be read; a joint that one may mean is not called lonely. */
    void checkJoined(Collection<Member> members, List<String> unread) {
        Set<String> joined = new HashSet<>();
        members.forEach(m -> joined.addAll(List.of(m.from(), m.to())));
        for (String name : joints.keySet()) {
            if (!joined.contains(name) && unread.stream().noneMatch(w -> w.startsWith(name) || w.endsWith(name))) {
                problems.add("Joint " + name, "no member meets it", "add a member to it or leave it out");
            }
        }
    }

    private void checkPlace(Joint joint) {
        double near = SAME_PLACE * index.extent();
        for (Joint other : index.near(joint, joint, near)) {
            boolean before = order.get(other.name()) < order.get(joint.name());
            if (before && !doubled.contains(other.name()) && distance(joint, other) <= near) {
                doubled.add(joint.name());
                problems.add("Joints " + other.name() + " and " + joint.name(),
                        "both are at " + JointCheck.place(joint), "move one or leave it out");
                return;
            }
        }
    }

    private void checkClear(Member member) {
        Joint from = joints.get(member.from());
        Joint to = joints.get(member.to());
        for (Joint joint : index.near(from, to, ON_MEMBER * distance(from, to))) {
            if (joint != from && joint != to && !doubled.contains(joint.name()) && isInside(joint, from, to)) {
                problems.add("Member " + member.name(), "it passes through joint " + joint.name(),
                        "give two members, " + from.name() + "-" + joint.name() + " and " + joint.name() + "-"
                                + to.name() + ", or move the joint");
            }
        }
    }

    private static boolean isInside(Joint joint, Joint from, Joint to) {
        double length = distance(from, to);
        double along = ((x(joint) - x(from)) * (x(to) - x(from)) + (y(joint) - y(from)) * (y(to) - y(from))
                + (z(joint) - z(from)) * (z(to) - z(from))) / (length * length);
        if (length == 0 || along <= 0 || along >= 1) {
            return false;
        }
        double dx = x(joint) - x(from) - along * (x(to) - x(from));
        double dy = y(joint) - y(from) - along * (y(to) - y(from));
        double dz = z(joint) - z(from) - along * (z(to) - z(from));
        return Math.sqrt(dx * dx + dy * dy + dz * dz) <= ON_MEMBER * length;
    }

    private static double distance(Joint a, Joint b) {
        double dx = x(a) - x(b);
        double dy = y(a) - y(b);
        double dz = z(a) - z(b);
        return Math.sqrt(dx * dx + dy * dy + dz * dz);
    }
}
