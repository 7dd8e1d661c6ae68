/**
 * A notebook as one HTML page that stands alone: no script, nothing fetched from elsewhere, figures inline,
 * mathematics as MathML. Read {@link kingpost.kernel.page.NotebookPage} first.
 *
 * <p>Everything that comes from a notebook goes through {@link kingpost.kernel.page.SafeHtml} on its way to the page.
 */
package kingpost.kernel.page;
