package kingpost.kernel.document;

import java.time.Duration;
import kingpost.kernel.evaluation.Outcome;

/** Something that happens while a notebook runs, told as it happens. */
public sealed interface RunEvent {

    /** The cell concerned. */
    Place place();

    <R> R accept(Visitor<R> visitor);

    /** Receives the events of a run, on the thread that runs it. */
    @FunctionalInterface
    interface Listener {
        void on(RunEvent event);
    }

    /** One case for each kind of event. */
    interface Visitor<R> {
        R started(Started started);

        R ended(Ended ended);

        R failed(Failed failed);

        R skipped(Skipped skipped);
    }

    /**
     * Where a code cell stands.
     *
     * @param number    among the code cells, from 1
     * @param of        how many code cells the notebook has
     * @param firstLine the cell's first line that is not blank; empty if there is none
     */
    record Place(int number, int of, String firstLine) { }

    /** The cell begins. */
    record Started(Place place) implements RunEvent {
        @Override
        public <R> R accept(Visitor<R> visitor) {
            return visitor.started(this);
        }
    }

    /** The cell ended well. */
    record Ended(Place place, Duration took) implements RunEvent {
        @Override
        public <R> R accept(Visitor<R> visitor) {
            return visitor.ended(this);
        }
    }

    /**
     * The cell failed.
     *
     * @param expected true: its tag says that it may
     */
    record Failed(Place place, Duration took, Outcome.Failed failure, boolean expected) implements RunEvent {
        @Override
        public <R> R accept(Visitor<R> visitor) {
            return visitor.failed(this);
        }
    }

    /** The cell is not run. */
    record Skipped(Place place, Reason reason) implements RunEvent {
        /** Why: its tag says so, it is blank, or an earlier cell failed. */
        public enum Reason { TAGGED, BLANK, AFTER_FAILURE }

        @Override
        public <R> R accept(Visitor<R> visitor) {
            return visitor.skipped(this);
        }
    }
}
