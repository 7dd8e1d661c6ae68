/**
 * Other trusses like a given one, for a class: the same joints and members on other slopes and spans under other
 * loads, with numbers that come out clean, and as hard as the first.
 *
 * <p>Read {@link kingpost.variant.Variants} first. Geometry is chosen so that members have whole-number slopes (3-4-5,
 * 5-12-13 ...), loads so that forces are whole numbers or short decimals; both are decided in fractions. Nothing is
 * null. Tension positive; x right, y up.
 */
package kingpost.variant;
