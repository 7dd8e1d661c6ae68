package kingpost.truss;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import kingpost.truss.TrussDraft.SupportEntry;

/** Turns the supports as written into supports, and finds what is wrong with them. */
final class SupportCheck {

    private final Map<String, Joint> joints;
    private final boolean space;
    private final Problems problems;
    private final List<Support> supports = new ArrayList<>();

    SupportCheck(Map<String, Joint> joints, Problems problems) {
        this.joints = joints;
        this.space = joints.values().stream().anyMatch(j -> j.z().getValue() != 0);
        this.problems = problems;
    }

    List<Support> check(List<SupportEntry> entries) {
        entries.forEach(this::add);
        return supports;
    }

    private void add(SupportEntry entry) {
        String kind = entry.kind().name().toLowerCase(java.util.Locale.ROOT);
        String subject = "Support at " + entry.joint();
        if (entry.joint().isBlank()) {
            problems.add("Support", "the " + kind + " names no joint", "write what it holds, as in " + kind + "(\"A\""
                    + (entry.kind() == Support.Kind.LINK ? ", 90)" : ")"));
            return;
        }
        if (!joints.containsKey(entry.joint())) {
            problems.add(subject, "there is no joint " + entry.joint() + " for the " + kind,
                    "add the joint or correct the name");
            return;
        }
        if (!holdsAllWays(entry) && entry.normal() == null) {
            problems.add(subject, "the direction of the " + kind + " is " + entry.given(), entry.given().startsWith("(")
                    ? "give finite numbers that are not all zero" : "give a finite angle or a direction");
            return;
        }
        if (entry.kind() == Support.Kind.BALL && !space) {
            problems.add(subject, "a ball holds a joint in space, but the truss is planar",
                    "write pin(\"" + entry.joint() + "\"), or give the joints their z");
            return;
        }
        Support support = new Support(entry.joint(), entry.kind(), reactions(entry));
        if (isFree(support, subject)) {
            supports.add(support);
        }
    }

    private List<Direction> reactions(SupportEntry entry) {
        if (!holdsAllWays(entry)) {
            return List.of(entry.normal());
        }
        return space ? List.of(Direction.RIGHT, Direction.UP, Direction.NEAR)
                : List.of(Direction.RIGHT, Direction.UP);
    }

    private static boolean holdsAllWays(SupportEntry entry) {
        return entry.kind() == Support.Kind.PIN || entry.kind() == Support.Kind.BALL;
    }

    private boolean isFree(Support support, String subject) {
        if (!space && support.reactions().stream().anyMatch(d -> d.z() != 0)) {
            problems.add(subject, "its direction has a part towards the reader, but the truss is planar",
                    "give a direction in the plane");
            return false;
        }
        for (Support other : supports) {
            if (other.joint().equals(support.joint()) && !mayShare(other, support)) {
                problems.add(subject, "the joint is already held by a "
                        + other.kind().name().toLowerCase(java.util.Locale.ROOT), sameLine(other, support)
                        ? "leave out the second, which holds it in the same direction"
                        : "give it one support, or links only");
                return false;
            }
        }
        return true;
    }

    private static boolean mayShare(Support a, Support b) {
        return a.kind() == Support.Kind.LINK && b.kind() == Support.Kind.LINK && !sameLine(a, b);
    }

    private static boolean sameLine(Support a, Support b) {
        if (a.reactions().size() != 1 || b.reactions().size() != 1) {
            return a.kind() == b.kind();
        }
        Direction p = a.reactions().get(0);
        Direction q = b.reactions().get(0);
        double cosine = p.cosX() * q.cosX() + p.cosY() * q.cosY() + p.cosZ() * q.cosZ();
        return Math.abs(cosine) > 1 - 1e-12;
    }
}
