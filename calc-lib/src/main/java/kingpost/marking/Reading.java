package kingpost.marking;

/** What an answer as written turned out to say. */
public sealed interface Reading {

    <R> R accept(Visitor<R> visitor);

    /**
     * A force.
     *
     * @param value    in the truss's force unit, tension positive; a reaction along its positive direction
     * @param halfUnit half of one unit in the last digit stated, in the truss's force unit; 0 where the answer is
     *                 exact, as a fraction, a surd or zero
     * @param figures  significant figures stated; trailing zeros count
     * @param said     how the sense was given
     * @param digits   the decimal as written without sign, unit or sense; empty for a fraction, a surd or a word
     * @param scale    truss's force units in one unit of {@code digits}
     */
    record Force(double value, double halfUnit, int figures, Said said, String digits, double scale)
            implements Reading {
        public boolean isZero() {
            return value == 0;
        }

        Force reversed() {
            return new Force(-value, halfUnit, figures, said, digits, scale);
        }

        Force times(double factor) {
            return new Force(value * factor, halfUnit * factor, figures, said, digits, scale * factor);
        }

        @Override
        public <R> R accept(Visitor<R> visitor) {
            return visitor.force(this);
        }
    }

    /** Nothing was answered. */
    record Blank() implements Reading {
        @Override
        public <R> R accept(Visitor<R> visitor) {
            return visitor.blank(this);
        }
    }

    /**
     * It could not be read, so it is left for a person to mark.
     *
     * @param reason what is wrong and what to do
     */
    record Unread(String reason) implements Reading {
        @Override
        public <R> R accept(Visitor<R> visitor) {
            return visitor.unread(this);
        }
    }

    /** How the sense of a force was given. */
    enum Said {
        /** Tension or compression, in full or short; for a reaction its way, as in "up". */
        WORD,
        /** A plus or minus sign. */
        SIGN,
        /** Neither: positive by the convention in force. */
        NOTHING
    }

    /** One method for each kind. */
    interface Visitor<R> {
        R force(Force reading);

        R blank(Blank reading);

        R unread(Unread reading);
    }
}
