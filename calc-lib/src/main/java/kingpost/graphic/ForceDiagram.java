package kingpost.graphic;

import java.util.List;
import kingpost.statics.Checks;
import kingpost.statics.Solution;
import kingpost.statics.Solution.Sense;
import kingpost.statics.Vector;
import kingpost.truss.Member;
import kingpost.truss.TrussModel;

/** The reciprocal diagram of a truss: one figure in which every joint's force polygon lies; or why there is none. */
public sealed interface ForceDiagram {

    /** The truss. */
    TrussModel truss();

    <R> R accept(Visitor<R> visitor);

    /**
     * Draws the diagram of a solved truss with lines parallel to its members; the solved forces serve to lay off loads
     * and reactions, and to measure what the lines give.
     *
     * @throws kingpost.units.CalculationException for a space truss
     */
    static ForceDiagram of(Solution solution) {
        return DiagramWork.of(new PlaneTruss(solution, "Force diagram"));
    }

    /**
     * The diagram.
     *
     * @param truss   the truss
     * @param spaces  lettered ones outside, clockwise, then numbered ones inside, from the left
     * @param outside loads and reactions, clockwise from the force at the left end that space A follows
     * @param members one line for each member, in the truss's order
     * @param steps   the order of drawing after loads and reactions
     * @param gap     N, between the end of the last load or reaction and the start of the first
     * @param scale   N, the largest force in the truss or on it
     */
    record Drawn(TrussModel truss, List<Space> spaces, List<Line> outside, List<Line> members, List<Step> steps,
                 double gap, double scale) implements ForceDiagram {
        public Drawn {
            spaces = List.copyOf(spaces);
            outside = List.copyOf(outside);
            members = List.copyOf(members);
            steps = List.copyOf(steps);
        }

        /** N, the largest distance between a member's line and its solved force. */
        public double difference() {
            return members.stream().mapToDouble(Line::difference).max().orElse(0);
        }

        /** The larger of gap and difference over the largest force. */
        public double worst() {
            return Math.max(gap, difference()) / scale;
        }

        public boolean closes() {
            return worst() <= Checks.TOLERANCE;
        }

        /** "ab" for two letters, else "a-1". */
        public String name(Line line) {
            String from = spaces.get(line.from()).point();
            String to = spaces.get(line.to()).point();
            return from.length() == 1 && to.length() == 1 && Character.isLetter(from.charAt(0))
                    && Character.isLetter(to.charAt(0)) ? from + to : from + "-" + to;
        }

        public Line line(Member member) {
            return members.get(truss.members().indexOf(member));
        }

        @Override
        public <R> R accept(Visitor<R> visitor) {
            return visitor.drawn(this);
        }
    }

    /**
     * A part of the paper that members and outside forces bound.
     *
     * @param name   as written on the truss: "A", "3"
     * @param joints round it: of a space inside all its corners; of one outside the joints along which it lies, clockwise
     * @param at     N, its point in the diagram
     */
    record Space(String name, List<String> joints, Vector at) {
        public Space {
            joints = List.copyOf(joints);
        }

        /** Whether it lies inside the truss. */
        public boolean isInside() {
            return Character.isDigit(name.charAt(0));
        }

        /** Its point's name in the diagram: "a", "3". */
        public String point() {
            return name.toLowerCase(java.util.Locale.ROOT);
        }
    }

    /**
     * A line of the diagram, which is a force on {@code joint}: going clockwise round that joint one crosses it from one
     * space to the other.
     *
     * @param side       whose force, and on which side of the joint it lies
     * @param joint      for a member its first end
     * @param from       number of the space before it
     * @param to         number of the space after it
     * @param vector     N, from point to point
     * @param force      N, as drawn: for a member along it, tension positive; else its size
     * @param solved     N, the same as solved by equations
     * @param difference N, between the line and the solved force as vectors
     */
    record Line(Side side, String joint, int from, int to, Vector vector, double force, double solved,
                double difference) {

        public Cause cause() {
            return side.cause();
        }

        /** What the line says of a member; a force below rounding is none. */
        public Sense sense() {
            return solved == 0 ? Sense.ZERO : force > 0 ? Sense.TENSION : Sense.COMPRESSION;
        }
    }

    /** A step of the drawing; {@code closing} lines join points that were there already, and so are checks. */
    sealed interface Step {

        /** Number of the space whose point is found. */
        int found();

        List<Member> closing();

        /** Through two known points, parallels to two members of a joint meet in the new point. */
        record AtJoint(String joint, int found, Member one, Member other, List<Member> closing) implements Step {
            public AtJoint {
                closing = List.copyOf(closing);
            }
        }

        /** No joint has a single space left to find: a force known from a section is laid off from a known point. */
        record LaidOff(Member member, int from, int found, List<Member> closing) implements Step {
            public LaidOff {
                closing = List.copyOf(closing);
            }
        }
    }

    /** There is no diagram. */
    record NotDrawn(TrussModel truss, Why why) implements ForceDiagram {
        @Override
        public <R> R accept(Visitor<R> visitor) {
            return visitor.notDrawn(this);
        }
    }

    /** Why there is no diagram. */
    sealed interface Why {

        /** Two members cross, so that the spaces on the paper are not those between members. */
        record Crossing(Member one, Member other) implements Why {
        }

        /** A load or reaction acts at a joint that the truss encloses, and so parts no spaces outside. */
        record InnerForce(Cause cause, String joint) implements Why {
        }

        /** The truss is in pieces that no member joins. */
        record InPieces(String one, String other) implements Why {
        }

        /** Nothing acts on the truss. */
        record NoForces() implements Why {
        }
    }

    /** One method for each result. */
    interface Visitor<R> {
        R drawn(Drawn diagram);

        R notDrawn(NotDrawn result);
    }
}
