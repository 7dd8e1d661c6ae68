/**
 * The trade's ready-made forms by span, rise and panels: Pratt, Howe, Warren and the others. Where the joints stand,
 * what they are called and which of them are joined; no statics and no loads. Read {@link kingpost.form.Form} first.
 *
 * <p><b>Axes</b>: the left bearing is at (0, 0), the right one at (span, 0); x right, y up.
 *
 * <p><b>Joints</b> are labelled the same way in every form:
 * <ul>
 * <li>{@code L0, L1 ...}: the lower chord from left to right, the two bearings included;</li>
 * <li>{@code U1, U2 ...}: the upper chord or the rafters from left to right; where posts divide the panels, the joint
 * over {@code L3} is {@code U3};</li>
 * <li>{@code M1, M2 ...}: joints between the chords, from left to right; on a post or over a hanger with the number of
 * that post or hanger.</li>
 * </ul>
 *
 * <p><b>Members</b> are named by their two joints, the left one first and the upper one first in a post: {@code L0-U1},
 * {@code U1-L2}, {@code U2-L2}.
 *
 * <p>Every form is statically determinate and stable on a pin and a roller. Nothing is null.
 */
package kingpost.form;
