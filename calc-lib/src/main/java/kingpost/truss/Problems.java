package kingpost.truss;

import java.util.ArrayList;
import java.util.List;

/** Collects problems, so that one does not hide the next. */
final class Problems {

    private final List<TrussProblems.Problem> found = new ArrayList<>();

    void add(String subject, String wrong, String remedy) {
        TrussProblems.Problem problem = new TrussProblems.Problem(subject, wrong, remedy);
        if (!found.contains(problem)) {
            found.add(problem);
        }
    }

    int count() {
        return found.size();
    }

    boolean any() {
        return !found.isEmpty();
    }

    void throwIfAny() {
        if (any()) {
            throw new TrussProblems(found);
        }
    }
}
