/**
 * Forces in trusses: counting, stability, zero-force inspection, joint order, the equations of each joint, checks. No
 * prose and no figures: what is found is told as records, and {@code explain} finds the words.
 *
 * <p>Read {@link kingpost.statics.Solution} first; {@code Solver} makes it. Inside this package numbers are
 * {@code double} in SI (N, m) unless a name says otherwise; a {@code Quantity} leaves it. Tension positive; x right, y
 * up; moments counter-clockwise; a reaction acts on the truss. Nothing is null.
 */
package kingpost.statics;
