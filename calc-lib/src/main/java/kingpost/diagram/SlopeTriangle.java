package kingpost.diagram;

import java.util.Optional;
import kingpost.statics.Vector;

/** The whole numbers of a slope, where it has small ones: 3 and 4, 5 and 12. */
final class SlopeTriangle {

    private static final int LARGEST = 40;

    private SlopeTriangle() {
    }

    /** Run and rise, both positive; empty where no whole numbers up to 40 give the slope. */
    static Optional<long[]> of(Vector along) {
        double run = Math.abs(along.x());
        double rise = Math.abs(along.y());
        for (int i = 1; i <= LARGEST; i++) {
            double larger = Math.max(run, rise);
            double other = i * Math.min(run, rise) / larger;
            if (Math.abs(other - Math.rint(other)) < 1e-9 && Math.rint(other) >= 1) {
                long small = Math.round(other);
                return Optional.of(run >= rise ? new long[] {i, small} : new long[] {small, i});
            }
        }
        return Optional.empty();
    }
}
