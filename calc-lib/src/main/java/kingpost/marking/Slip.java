package kingpost.marking;

import java.util.List;

/**
 * A slip that explains one or more wrong answers.
 *
 * @param kind    what went wrong
 * @param where   where it went wrong
 * @param subject the force it happened to: "AB", "Ax", "the 12 kN load at D"; empty where it is not one force
 * @param other   what took its place: another member's name, or a number; empty where nothing did
 */
public record Slip(Kind kind, Place where, String subject, String other) {

    /** What went wrong. */
    public enum Kind {
        /** The size is right, and used rightly, but called by the wrong sense. */
        WRONG_SENSE_WORD("right size, wrong sense word"),
        /** Tension taken for compression or the reverse, or a force put into an equation against its true sense. */
        SENSE_REVERSED("sense reversed"),
        /** No sense is stated for any member of a sheet. */
        SENSE_NOT_STATED("sense not stated"),
        /** Sine and cosine of a force's angle have changed places. */
        SINE_COSINE_SWAPPED("sine and cosine swapped"),
        /** Two digits side by side have changed places. */
        DIGITS_TRANSPOSED("digits transposed"),
        /** A load was left out. */
        LOAD_FORGOTTEN("load forgotten"),
        /** A reaction or a member found before was left out of a joint. */
        FORCE_FORGOTTEN("force forgotten"),
        /** The force of one member was used, or written down, for another. */
        WRONG_MEMBER_CARRIED("wrong member's value carried"),
        /** A value was rounded before it was used. */
        ROUNDED_CARRIED("rounded value carried"),
        /** The decimal point or a unit's prefix is wrong. */
        POWER_OF_TEN("decimal point or unit prefix"),
        /** A load was put at another joint. */
        LOAD_MISPLACED("load at the wrong joint"),
        /** A force given by an angle or a slope was taken in another direction. */
        DIRECTION_MISREAD("direction misread"),
        /** The answers of two members have changed places. */
        VALUES_EXCHANGED("two values exchanged"),
        /** The truss was read as in a mirror. */
        MIRRORED("mirror image"),
        /** The span was parted into another number of panels. */
        WRONG_PANELS("wrong number of panels"),
        /** Sines and cosines were taken of degrees as of radians. */
        ANGLE_IN_RADIANS("angles in radians"),
        /** A slope in per cent was taken for an angle in degrees. */
        SLOPE_AS_DEGREES("slope taken as degrees"),
        /** It is wrong, and none of the above explains it. */
        UNEXPLAINED("wrong, not explained");

        private final String words;

        Kind(String words) {
            this.words = words;
        }

        /** As a person says it. */
        public String words() {
            return words;
        }
    }

    /** Where a slip happened. */
    public sealed interface Place {

        <R> R accept(Visitor<R> visitor);

        /** In the equations of a joint. */
        record AtJoint(String joint) implements Place {
            @Override
            public <R> R accept(Visitor<R> visitor) {
                return visitor.joint(this);
            }
        }

        /** In equations of several joints that are solved together. */
        record AtJoints(List<String> joints) implements Place {
            public AtJoints {
                joints = List.copyOf(joints);
            }

            @Override
            public <R> R accept(Visitor<R> visitor) {
                return visitor.joints(this);
            }
        }

        /** In the equations of a part of the truss; {@code cut} are the members cut. */
        record AtSection(List<String> cut) implements Place {
            public AtSection {
                cut = List.copyOf(cut);
            }

            @Override
            public <R> R accept(Visitor<R> visitor) {
                return visitor.section(this);
            }
        }

        /** In the equations of the whole truss. */
        record InReactions() implements Place {
            @Override
            public <R> R accept(Visitor<R> visitor) {
                return visitor.reactions(this);
            }
        }

        /**
         * When an answer was written down.
         *
         * @param carried whether the value written was also the one used afterwards
         */
        record InAnswer(boolean carried) implements Place {
            @Override
            public <R> R accept(Visitor<R> visitor) {
                return visitor.answer(this);
            }
        }

        /** Everywhere. */
        record Throughout() implements Place {
            @Override
            public <R> R accept(Visitor<R> visitor) {
                return visitor.throughout(this);
            }
        }

        /** One method for each kind. */
        interface Visitor<R> {
            R joint(AtJoint place);

            R joints(AtJoints place);

            R section(AtSection place);

            R reactions(InReactions place);

            R answer(InAnswer place);

            R throughout(Throughout place);
        }
    }
}
