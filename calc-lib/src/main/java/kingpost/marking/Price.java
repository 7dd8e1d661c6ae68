package kingpost.marking;

/**
 * How much each supposition costs, in slips. The explanation that costs least is named; explanations within
 * {@link #TIE} of it are named beside it. A kind that has many places to happen in costs a little more, as one of many
 * fits by chance more easily.
 */
final class Price {

    static final double TIE = 0.12;
    /** The least that any slip costs. */
    static final double SLIP = 0.9;
    static final double SENSE_WORD = 0.9;
    static final double SENSE_SIGN = 1.0;
    /** A word that is wrong and also used wrongly. */
    static final double SENSE_WORD_CARRIED = 1.03;
    /** Of a force that is not stated. */
    static final double SENSE_UNSTATED = 1.16;
    static final double SENSE_IN_EQUATION = 1.16;
    static final double SWAP = 1.0;
    static final double SWAP_IN_ONE_EQUATION = 1.15;
    static final double SWAP_OF_ONE_THROUGHOUT = 1.05;
    static final double SWAP_THROUGHOUT = 1.0;
    static final double LOAD = 1.0;
    static final double LOAD_IN_ONE_EQUATION = 1.08;
    static final double FORCE = 1.14;
    static final double TRANSPOSED = 1.02;
    static final double POWER_OF_TEN = 1.04;
    static final double ROUNDED = 1.05;
    static final double WRONG_MEMBER = 1.15;
    static final double WRONG_MEMBER_WRITTEN = 1.2;
    private static final double UNSEEN = 0.6;
    private static final double UNSEEN_LIKELY = 0.15;
    /** An answer that nothing explains: less than two slips, more than one. */
    static final double UNEXPLAINED = 1.6;
    /** An answer that is right although the working gives another. */
    static final double ANOTHER_WAY = 0.5;
    /** A member found from its other end than the way of the worked solution has it. */
    static final double ANOTHER_END = 0.01;
    /** A member found by a section in between, where the working has it from a joint. */
    static final double DETOUR = 0.12;
    /** A truss read in another way than it was given, and worked rightly so. */
    static final double MISREAD = 1.06;
    /** The unknown of a joint that is usually found second, found first. */
    static final double ANOTHER_FIRST = 0.02;
    /** An answer that agrees only within the rounding of what it was made from. */
    static final double NEARLY = 0.03;
    /** An answer that is off by no more than early rounding makes it. */
    static final double NEAR = 0.2;
    /** An answer that agrees only to the fewer figures in which it is stated. */
    static final double COARSELY = 0.1;

    private Price() {
    }

    /** What a slip costs more that shows in no answer where it is made, for want of evidence. */
    static double unseen(Slip.Kind kind) {
        return kind == Slip.Kind.LOAD_FORGOTTEN || kind == Slip.Kind.SINE_COSINE_SWAPPED ? UNSEEN_LIKELY : UNSEEN;
    }
}
