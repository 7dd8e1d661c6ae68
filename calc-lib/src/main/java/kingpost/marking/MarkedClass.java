package kingpost.marking;

import java.util.List;
import kingpost.truss.TrussModel;

/**
 * The answers of a class, marked.
 *
 * @param truss    the truss
 * @param sheets   in the order of the table
 * @param problems what in the table could not be used, each with its line or column
 */
public record MarkedClass(TrussModel truss, List<MarkedSheet> sheets, List<String> problems) {

    public MarkedClass {
        sheets = List.copyOf(sheets);
        problems = List.copyOf(problems);
    }
}
