/**
 * What a truss is: joints, members, supports, loads, and the builder that checks them. No statics: nothing here
 * knows a force in a member. Read {@link kingpost.truss.TrussModel} first, then {@code TrussBuilder}.
 *
 * <p>Nothing is null. x right, y up, z towards the reader; angles in degrees counter-clockwise from x.
 */
package kingpost.truss;
