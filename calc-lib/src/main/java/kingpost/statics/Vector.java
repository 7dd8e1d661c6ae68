package kingpost.statics;

/** A vector in the truss's axes: x right, y up, z towards the reader. */
public record Vector(double x, double y, double z) {

    public static final Vector X = new Vector(1, 0, 0);
    public static final Vector Y = new Vector(0, 1, 0);
    public static final Vector Z = new Vector(0, 0, 1);

    /** The component along x, y or z by number 0, 1 or 2. */
    public double part(int axis) {
        return axis == 0 ? x : axis == 1 ? y : z;
    }

    public double norm() {
        return Math.sqrt(dot(this));
    }

    public double dot(Vector other) {
        return x * other.x + y * other.y + z * other.z;
    }

    public Vector times(double factor) {
        return new Vector(x * factor, y * factor, z * factor);
    }

    public Vector plus(Vector other) {
        return new Vector(x + other.x, y + other.y, z + other.z);
    }

    public Vector minus(Vector other) {
        return plus(other.times(-1));
    }

    /** Cross product; in the plane only z is left, the moment counter-clockwise. */
    public Vector cross(Vector other) {
        return new Vector(y * other.z - z * other.y, z * other.x - x * other.z, x * other.y - y * other.x);
    }

    /** The same direction with length 1. */
    public Vector unit() {
        return times(1 / norm());
    }
}
