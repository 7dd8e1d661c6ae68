package kingpost.notebook;

import java.util.List;

/** A value whose methods take names in quotes; completion proposes them. */
public interface NamesInQuotes {

    /** Names that {@code method} takes, in the order in which the user gave them; empty where it takes none. */
    List<String> names(String method);
}
