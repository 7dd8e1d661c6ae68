package kingpost.statics;

import java.util.List;

/**
 * An equilibrium equation of a whole body: moments about a point, in space about a line, or forces along an axis.
 *
 * @param kind     which
 * @param terms    every force that has a part in it, unknowns first
 * @param role     what it was used for
 * @param residual N or N·m, the sum with every value put in
 */
public record BodyEquation(Kind kind, List<Term> terms, AxisEquation.Role role, double residual) {

    public BodyEquation {
        terms = List.copyOf(terms);
    }

    /** Which equation. */
    public sealed interface Kind {

        /**
         * Moments, counter-clockwise positive.
         *
         * @param joint    the joint about which, or "" for a point that is no joint
         * @param point    the point, in the numbers of the truss's length unit
         * @param passing  unknowns whose lines meet there, and so drop out
         */
        record Moment(String joint, Vector point, List<Source> passing) implements Kind {
            public Moment {
                passing = List.copyOf(passing);
            }
        }

        /**
         * In space: moments about a line, positive by the right-hand rule.
         *
         * @param through   the joint that it passes
         * @param to        the other joint that it passes, or "" where it runs along an axis
         * @param axis      its direction, with the label "x", "y", "z" or "" where it joins two joints
         * @param point     the place of {@code through}, in the numbers of the truss's length unit
         * @param passing   unknowns that meet it or run along it, and so drop out
         */
        record MomentAbout(String through, String to, AxisEquation.Axis axis, Vector point, List<Source> passing)
                implements Kind {
            public MomentAbout {
                passing = List.copyOf(passing);
            }
        }

        /** Forces along an axis. */
        record Along(AxisEquation.Axis axis) implements Kind {
        }
    }

    /**
     * @param source where the force comes from
     * @param at     the joint at which it acts
     * @param value  N along its direction; {@code NaN} only while unknown
     * @param known  whether it was known before this equation
     * @param factor for a moment about a line: its moment about it for a force of 1, in the truss's length unit; for a
     *               moment about a point: lever arm in the truss's length unit, positive when the force turns
     *               counter-clockwise; for a sum: cosine with the axis
     * @param parts  for a moment of an inclined force: its x and y parts each with its own arm; empty where the force
     *               is vertical or horizontal
     */
    public record Term(Source source, String at, double value, boolean known, double factor, List<Part> parts) {
        public Term {
            parts = List.copyOf(parts);
        }
    }

    /**
     * One component of an inclined force.
     *
     * @param cosine cosine of the force with the component's axis (x or y)
     * @param arm    lever arm in the truss's length unit with the sign of its moment for a positive component
     */
    public record Part(String axis, double cosine, double arm) {
    }
}
