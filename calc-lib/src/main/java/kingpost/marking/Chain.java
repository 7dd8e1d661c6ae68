package kingpost.marking;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;

/**
 * A list that grows at its end without being copied, so that many states may share their beginnings.
 *
 * @param before all but the last; {@code null} for the empty chain
 * @param last   {@code null} for the empty chain
 * @param size   how many
 */
record Chain<T>(Chain<T> before, T last, int size) {

    static <T> Chain<T> empty() {
        return new Chain<>(null, null, 0);
    }

    Chain<T> and(T next) {
        return new Chain<>(this, next, size + 1);
    }

    List<T> list() {
        List<T> list = new ArrayList<>(size);
        for (Chain<T> at = this; at.size > 0; at = at.before) {
            list.add(at.last);
        }
        Collections.reverse(list);
        return list;
    }
}
