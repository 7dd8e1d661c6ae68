/**
 * Graphic statics of plane trusses: the force polygon of a joint, and the reciprocal diagram of a whole truss with
 * Bow's notation, drawn line by line as on a board. Geometry only: figures are {@code diagram}'s, words
 * {@code explain}'s.
 *
 * <p>Read {@link kingpost.graphic.ForceDiagram} first. Forces are vectors in N on a joint; x right, y up. Going
 * clockwise round a joint, a force leads from the space before it to the space after it, and so in the diagram. Nothing
 * is null.
 *
 * <p>Source: R. H. Bow, Economics of Construction in relation to Framed Structures, 1873 (the notation); J. C. Maxwell,
 * "On reciprocal figures and diagrams of forces", Philosophical Magazine, 1864.
 */
package kingpost.graphic;
