/**
 * A small tree of SVG elements and its writer; it knows no trusses. Read {@link kingpost.svg.Svg} first, then
 * {@link kingpost.svg.Element}.
 *
 * <p>Coordinates are those of SVG: user units, x right and <b>y down</b>; angles in degrees, clockwise on the screen.
 * Only presentation attributes are written: no style sheet, no script, no reference to anything outside the picture.
 * Every text is escaped when it is written, so element trees may hold what users typed. Pictures lie on a white sheet
 * of their own, so that their inks read on dark pages too. Arguments and results are not null unless said.
 */
package kingpost.svg;
