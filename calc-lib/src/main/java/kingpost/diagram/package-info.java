/**
 * Figures: what a truss, a joint or a result looks like on paper. Pure functions from the records of {@code truss} and
 * {@code statics} to SVG documents; nothing is computed here but places on the sheet. One class for each kind of
 * figure. No prose beyond legends, titles and descriptions.
 *
 * <p>Read {@link kingpost.diagram.TrussFigure} first, then {@link kingpost.diagram.LabelPlacer}. Places on the sheet
 * are in pixels with y downwards; nothing is null.
 */
package kingpost.diagram;
