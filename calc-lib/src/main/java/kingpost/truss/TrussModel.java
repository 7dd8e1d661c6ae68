package kingpost.truss;

import java.util.List;
import java.util.Optional;
import javax.measure.Unit;

/**
 * A truss as it was written down, checked: immutable, every name resolved, every length and force in the truss's own
 * units. Made by {@code TrussBuilder}.
 *
 * @param name       what the user calls it
 * @param lengthUnit unit of the coordinates
 * @param forceUnit  unit in which forces are reported
 * @param joints     in the order given
 * @param members    in the order given
 * @param supports   at most one for each joint, save that several links may hold one joint
 * @param loads      in the order given; several may act at one joint; those of all load cases
 * @param cases      the same loads by load cases, where they were written so
 */
public record TrussModel(String name, Unit<?> lengthUnit, Unit<?> forceUnit, List<Joint> joints,
                         List<Member> members, List<Support> supports, List<Load> loads, LoadCases cases) {

    /** A truss whose loads are not parted into cases. */
    public TrussModel(String name, Unit<?> lengthUnit, Unit<?> forceUnit, List<Joint> joints,
                      List<Member> members, List<Support> supports, List<Load> loads) {
        this(name, lengthUnit, forceUnit, joints, members, supports, loads, LoadCases.NONE);
    }

    public TrussModel {
        joints = List.copyOf(joints);
        members = List.copyOf(members);
        supports = List.copyOf(supports);
        loads = List.copyOf(loads);
    }

    /** The same truss under other loads, without cases. */
    public TrussModel under(String otherName, List<Load> otherLoads) {
        return new TrussModel(otherName, lengthUnit, forceUnit, joints, members, supports, otherLoads);
    }

    /** Whether it is a space truss: some joint does not lie in the plane z = 0. */
    public boolean isSpace() {
        return joints.stream().anyMatch(j -> j.z().getValue() != 0);
    }

    public Optional<Joint> joint(String joint) {
        return joints.stream().filter(j -> j.name().equals(joint)).findFirst();
    }

    /** The member of that name; its ends may also be given the other way round ("BA" for "AB"). */
    public Optional<Member> member(String member) {
        return members.stream().filter(m -> isCalled(m, member)).findFirst();
    }

    public List<Member> membersAt(String joint) {
        return members.stream().filter(m -> m.meets(joint)).toList();
    }

    public List<Load> loadsAt(String joint) {
        return loads.stream().filter(l -> l.joint().equals(joint)).toList();
    }

    public List<Support> supportsAt(String joint) {
        return supports.stream().filter(s -> s.joint().equals(joint)).toList();
    }

    /** Number of reaction components, r. */
    public int reactionCount() {
        return supports.stream().mapToInt(s -> s.reactions().size()).sum();
    }

    static boolean isCalled(Member m, String name) {
        return m.name().equals(name) || (m.to() + m.from()).equals(name) || (m.from() + m.to()).equals(name)
                || (m.to() + "-" + m.from()).equals(name) || (m.from() + "-" + m.to()).equals(name);
    }
}
