package kingpost.marking;

import java.util.List;

/** What is said of one answer. */
public sealed interface Verdict {

    <R> R accept(Visitor<R> visitor);

    /**
     * It is right to three significant figures.
     *
     * @param coarse whether it is stated to fewer figures than three, and right to those
     * @param early  whether it is off by no more than rounding before the end makes it
     */
    record Right(boolean coarse, boolean early) implements Verdict {
        Right(boolean coarse) {
            this(coarse, false);
        }

        @Override
        public <R> R accept(Visitor<R> visitor) {
            return visitor.right(this);
        }
    }

    /**
     * It is wrong by a slip made here.
     *
     * @param candidates the likeliest first; more than one where they explain the sheet as well
     */
    record Slipped(List<Slip> candidates) implements Verdict {
        public Slipped {
            candidates = List.copyOf(candidates);
        }

        /** The likeliest slip. */
        public Slip slip() {
            return candidates.get(0);
        }

        @Override
        public <R> R accept(Visitor<R> visitor) {
            return visitor.slipped(this);
        }
    }

    /**
     * It is wrong, but follows correctly from slips made before.
     *
     * @param from those slips
     */
    record FollowThrough(List<Slip> from) implements Verdict {
        public FollowThrough {
            from = List.copyOf(from);
        }

        @Override
        public <R> R accept(Visitor<R> visitor) {
            return visitor.followThrough(this);
        }
    }

    /** It is wrong, and no single slip explains it. */
    record Unexplained() implements Verdict {
        @Override
        public <R> R accept(Visitor<R> visitor) {
            return visitor.unexplained(this);
        }
    }

    /** Nothing was answered. */
    record NotAnswered() implements Verdict {
        @Override
        public <R> R accept(Visitor<R> visitor) {
            return visitor.notAnswered(this);
        }
    }

    /**
     * It could not be read, and is left for a person to mark.
     *
     * @param reason why, and what to do
     */
    record NotRead(String reason) implements Verdict {
        @Override
        public <R> R accept(Visitor<R> visitor) {
            return visitor.notRead(this);
        }
    }

    /** One method for each kind. */
    interface Visitor<R> {
        R right(Right verdict);

        R slipped(Slipped verdict);

        R followThrough(FollowThrough verdict);

        R unexplained(Unexplained verdict);

        R notAnswered(NotAnswered verdict);

        R notRead(NotRead verdict);
    }
}
