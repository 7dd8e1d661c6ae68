package kingpost.render;

/** Tells the label of an axis (x, y, z, x′) from other subscripts: it is a variable and slants. */
final class AxisLabel {

    private AxisLabel() {
    }

    static boolean matches(String subscript) {
        return subscript.matches("[xyz]′{0,2}");
    }
}
