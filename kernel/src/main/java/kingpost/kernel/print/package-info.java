/**
 * A page as PDF: paper, running head, fonts, mathematics, figures. Read {@link kingpost.kernel.print.PrintedPage}
 * first, then {@link kingpost.kernel.print.MathLayout}. Nothing is fetched: fonts come from the jar, pictures from the
 * page itself.
 *
 * <p>The library that lays the page out has no typesetter for mathematics that is still kept up, and those on offer
 * elsewhere draw their letters as shapes, so that a reader could not select them. The small one here sets what MathML
 * Core has as text in the page's own fonts.
 */
package kingpost.kernel.print;
