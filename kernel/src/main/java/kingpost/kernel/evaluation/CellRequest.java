package kingpost.kernel.evaluation;

import java.util.Map;

/**
 * One cell to run.
 *
 * @param code            the cell's source, as the user wrote it
 * @param silent          true: results are not wanted (streams still flow)
 * @param allowInput      true: a read from {@code System.in} may ask the user through {@link CellOutput#input}
 * @param userExpressions name to expression, evaluated after the cell if it succeeded
 */
public record CellRequest(String code, boolean silent, boolean allowInput, Map<String, String> userExpressions) {

    public CellRequest {
        userExpressions = Map.copyOf(userExpressions);
    }

    public static CellRequest of(String code) {
        return new CellRequest(code, false, false, Map.of());
    }
}
