/**
 * Derivations, tables and figures in the formats that front ends show: LaTeX in Markdown, MathML in HTML, LaTeX, and
 * plain text. Read {@link kingpost.render.Renderer} first, then {@link kingpost.render.Exhibit}, which puts the formats
 * together as a notebook wants them.
 *
 * <p>No words are made here. Every text of the tree is escaped by the one class of its format that knows how
 * ({@link kingpost.render.TexText}, {@link kingpost.render.MarkdownText}, {@link kingpost.render.HtmlText}), so that no
 * name can bring markup with it. Nothing is null.
 */
package kingpost.render;
