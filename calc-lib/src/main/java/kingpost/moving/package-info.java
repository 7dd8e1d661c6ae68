/**
 * Loads that move along a chord: influence lines of member forces, reactions and panel shears, and the largest effect of
 * a train of wheels or of a uniform load of any extent. No prose and no figures.
 *
 * <p>Read {@link kingpost.moving.InfluenceLine} first. Ordinates are effect per unit of a load straight down, tension
 * positive; places along the chord are x in the truss's length unit; effects of loads are in N. Nothing is null.
 */
package kingpost.moving;
