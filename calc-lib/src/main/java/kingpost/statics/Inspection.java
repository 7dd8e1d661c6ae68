package kingpost.statics;

import java.util.List;
import kingpost.truss.Load;
import kingpost.truss.Member;
import kingpost.truss.Support;

/**
 * What looking at the truss tells before any equation is written.
 *
 * @param findings   in the order found, round by round
 * @param nearMisses joints that look like a rule but are not
 */
public record Inspection(List<Finding> findings, List<NearMiss> nearMisses) {

    public Inspection {
        findings = List.copyOf(findings);
        nearMisses = List.copyOf(nearMisses);
    }

    /** Members found to carry nothing, in the order found. */
    public List<Member> zeroForceMembers() {
        return findings.stream().flatMap(f -> f.zero().stream()).distinct().toList();
    }

    /** Something a joint shows by inspection. */
    public sealed interface Finding {

        /** The joint that shows it. */
        String joint();

        /** 1 on the first look; 2 when it shows only after members found in round 1 are taken away, and so on. */
        int round();

        /** Members it shows to carry nothing. */
        List<Member> zero();

        <R> R accept(Visitor<R> visitor);

        /** Two members, not in line, no load, no reaction: both carry nothing. Common practice, no source. */
        record TwoMembers(String joint, int round, Member first, Member second) implements Finding {
            @Override
            public List<Member> zero() {
                return List.of(first, second);
            }

            @Override
            public <R> R accept(Visitor<R> visitor) {
                return visitor.twoMembers(this);
            }
        }

        /** A single member left, no load, no reaction: it carries nothing. */
        record SingleMember(String joint, int round, Member member) implements Finding {
            @Override
            public List<Member> zero() {
                return List.of(member);
            }

            @Override
            public <R> R accept(Visitor<R> visitor) {
                return visitor.singleMember(this);
            }
        }

        /**
         * Three members, two in line, no load, no reaction: the third carries nothing and the two in line carry the
         * same force. Common practice, no source.
         */
        record ThreeMembers(String joint, int round, Member idle, Member first, Member second) implements Finding {
            @Override
            public List<Member> zero() {
                return List.of(idle);
            }

            @Override
            public <R> R accept(Visitor<R> visitor) {
                return visitor.threeMembers(this);
            }
        }

        /**
         * Every load and reaction, and every member but one, lie in one line: the one across it carries nothing.
         *
         * @param idle     the member across the line
         * @param carrying the members in the line with the loads and reactions; empty where a reaction takes the
         *                 load alone
         */
        record LoadInLine(String joint, int round, Member idle, List<Member> carrying) implements Finding {
            public LoadInLine {
                carrying = List.copyOf(carrying);
            }

            @Override
            public List<Member> zero() {
                return List.of(idle);
            }

            @Override
            public <R> R accept(Visitor<R> visitor) {
                return visitor.loadInLine(this);
            }
        }

        /**
         * Three members of a space truss that do not lie in one plane, no load, no reaction: none of them carries
         * anything. Common practice, no source.
         */
        record NotInOnePlane(String joint, int round, List<Member> members) implements Finding {
            public NotInOnePlane {
                members = List.copyOf(members);
            }

            @Override
            public List<Member> zero() {
                return members;
            }

            @Override
            public <R> R accept(Visitor<R> visitor) {
                return visitor.notInOnePlane(this);
            }
        }

        /**
         * In a space truss every load and reaction, and every member but one, lie in one plane: the one out of it
         * carries nothing. Common practice, no source.
         *
         * @param idle    the member out of the plane
         * @param inPlane the other members
         * @param loaded  whether a load or a reaction acts, in the plane
         */
        record OutOfPlane(String joint, int round, Member idle, List<Member> inPlane, boolean loaded)
                implements Finding {
            public OutOfPlane {
                inPlane = List.copyOf(inPlane);
            }

            @Override
            public List<Member> zero() {
                return List.of(idle);
            }

            @Override
            public <R> R accept(Visitor<R> visitor) {
                return visitor.outOfPlane(this);
            }
        }

        /** Two members in line and nothing else: they carry the same force; neither need be zero. */
        record SameForce(String joint, int round, Member first, Member second) implements Finding {
            @Override
            public List<Member> zero() {
                return List.of();
            }

            @Override
            public <R> R accept(Visitor<R> visitor) {
                return visitor.sameForce(this);
            }
        }

        /** One method for each finding. */
        interface Visitor<R> {
            R twoMembers(TwoMembers finding);

            R singleMember(SingleMember finding);

            R threeMembers(ThreeMembers finding);

            R loadInLine(LoadInLine finding);

            R sameForce(SameForce finding);

            R notInOnePlane(NotInOnePlane finding);

            R outOfPlane(OutOfPlane finding);
        }
    }

    /**
     * A joint whose members look like a rule, but something acts there.
     *
     * @param joint    the joint
     * @param members  the members that the rule would have spoken of: the two, or the third with the two in line
     * @param rule     two or three: which rule it looks like
     * @param loads    loads that act there
     * @param supports supports that act there
     */
    public record NearMiss(String joint, List<Member> members, int rule, List<Load> loads, List<Support> supports) {
        public NearMiss {
            members = List.copyOf(members);
            loads = List.copyOf(loads);
            supports = List.copyOf(supports);
        }
    }
}
