package kingpost.kernel.session;

/** Positions in code: Unicode code points on the wire, UTF-16 units in Java. */
final class CodePoints {

    private CodePoints() { }

    /** The UTF-16 position of a code-point position; beyond the end is the end. */
    static int toUtf16(String code, int position) {
        int length = code.codePointCount(0, code.length());
        return code.offsetByCodePoints(0, Math.max(0, Math.min(position, length)));
    }

    /** The code-point position of a UTF-16 position; beyond the end is the end. */
    static int fromUtf16(String code, int position) {
        return code.codePointCount(0, Math.max(0, Math.min(position, code.length())));
    }
}
