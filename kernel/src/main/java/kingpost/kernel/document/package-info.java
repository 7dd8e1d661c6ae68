/**
 * Notebook files: reading, running from top to bottom without a front end, writing. Read
 * {@link kingpost.kernel.document.Notebook} first, then {@link kingpost.kernel.document.NotebookRun}. What a notebook
 * looks like as a page is the business of {@code page}.
 *
 * <p>Source: notebook format 4.5 (nbformat), and its reference library for the layout of the file.
 */
package kingpost.kernel.document;
