package kingpost.truss;

/** Along what the length is measured on which a spread load is given. */
public enum Measured {
    /** On plan: the horizontal projection, as snow is given. */
    ON_PLAN,
    /** Along the slope: the length of the member itself, as the weight of a covering is given. */
    ALONG_SLOPE
}
