/**
 * What a cell sees: trade words and nothing else. Read {@code preload.txt} (a resource of this package)
 * for what is in scope, then
 * {@code Truss}. The work is done in the packages below; a class here joins them and chooses the form in which a
 * value is shown.
 *
 * <p>Nothing is null. Tension positive; x right, y up; moments counter-clockwise; a reaction acts on the truss.
 */
package kingpost.notebook;
