/**
 * Marks what someone states as the forces of a truss: which answers are right, and for the wrong ones the likeliest
 * slip, found by working the truss again with slips put in and seeing which of them gives the answers stated.
 *
 * <p>Read {@link kingpost.marking.Marker} first. Three steps, each in its own classes: reading ({@code AnswerSheet},
 * {@code AnswerReader}), explaining ({@code Working}, {@code Tweak}, {@code Search}), telling ({@code MarkedSheet},
 * {@code Feedback}, {@code ResultSheet}).
 *
 * <p>Numbers are {@code double} in the truss's own force unit; tension positive; x right, y up; a reaction acts on
 * the truss. Nothing is null.
 */
package kingpost.marking;
