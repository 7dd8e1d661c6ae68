package kingpost.kernel.evaluation;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import jdk.jshell.SnippetEvent;

/** Where each of JShell's snippets stands in the cell it came from; declarations are kept, the rest forgotten. */
final class Origins {

    /**
     * @param cell   the cell's number
     * @param text   its source
     * @param offset where the snippet begins in it
     */
    record Origin(int cell, CellText text, int offset) {

        /** The cell's line of a 1-based line of the snippet. */
        int cellLine(int snippetLine) {
            return text.lineOf(offset) + snippetLine - 1;
        }
    }

    private final Map<String, Origin> bySnippet = new ConcurrentHashMap<>();

    void put(String snippetId, Origin origin) {
        bySnippet.put(snippetId, origin);
    }

    /** Puts down where these come from; the origins that the same numbers had before. */
    Map<String, Origin> put(List<SnippetEvent> events, Origin origin) {
        var earlier = new HashMap<String, Origin>();
        for (SnippetEvent event : events) {
            String id = event.snippet().id();
            Optional.ofNullable(bySnippet.put(id, origin)).ifPresent(before -> earlier.put(id, before));
        }
        return earlier;
    }

    void forget(String snippetId) {
        bySnippet.remove(snippetId);
    }

    /** The origin, or null. */
    Origin of(String snippetId) {
        return bySnippet.get(snippetId);
    }
}
