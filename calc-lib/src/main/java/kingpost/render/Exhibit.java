package kingpost.render;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;

import kingpost.derivation.Block;
import kingpost.derivation.Block.Prose;
import kingpost.derivation.Derivation;
import kingpost.derivation.Figure;
import kingpost.derivation.Table;
import kingpost.svg.Png;

/**
 * A derivation, table or figure in all the forms in which front ends show it alike.
 *
 * <ul>
 * <li>A derivation is Markdown, because only there do all of them typeset mathematics; LaTeX for conversion to PDF.
 * Its HTML is not among the forms that front ends choose from, as some would choose it and then leave out the
 * mathematics: it is the {@code html} member of the machine-readable form, for a page without scripts.</li>
 * <li>A table is HTML with style attributes only, which stays whole in outputs that are not trusted.</li>
 * <li>A figure is SVG, and PNG for pages that do not draw SVG.</li>
 * </ul>
 *
 * @param forms MIME type to content, as {@link Showable#show()} has it
 */
public record Exhibit(Map<String, Object> forms) implements Showable {

    /** The machine-readable form, which front ends skip. */
    public static final String RESULT = "application/vnd.kingpost.result+json";

    private static final String PLAIN = "text/plain";
    private static final double DOTS_PER_PIXEL = 2;

    public Exhibit {
        forms = Collections.unmodifiableMap(new LinkedHashMap<>(forms));
    }

    public static Exhibit of(Derivation derivation) {
        String markdown = new MarkdownRenderer().render(derivation);
        Map<String, Object> result = result("derivation");
        result.put("title", derivation.title());
        result.put("html", new HtmlRenderer().render(derivation));
        Map<String, Object> forms = new LinkedHashMap<>();
        forms.put(PLAIN, new PlainRenderer().render(derivation));
        forms.put("text/markdown", markdown);
        forms.put("text/latex", PortableLatex.of(new LatexRenderer().render(derivation), markdown));
        forms.put(RESULT, result);
        return new Exhibit(forms);
    }

    /**
     * A derivation that says more to machines than its text.
     *
     * @param kind    what the machine-readable form says it is
     * @param numbers members of the machine-readable form: the content unrounded
     */
    public static Exhibit of(Derivation derivation, String kind, Map<String, ?> numbers) {
        return of(derivation).with(kind, numbers);
    }

    /** Blocks without a title. */
    public static Exhibit of(List<Block> blocks, String kind, Map<String, ?> numbers) {
        String markdown = joined(blocks, new MarkdownRenderer());
        Map<String, Object> result = result(kind);
        result.put("html", joined(blocks, new HtmlRenderer()));
        Map<String, Object> forms = new LinkedHashMap<>();
        forms.put(PLAIN, joined(blocks, new PlainRenderer()));
        forms.put("text/markdown", markdown);
        forms.put("text/latex", PortableLatex.of(joined(blocks, new LatexRenderer()), markdown));
        forms.put(RESULT, result);
        return new Exhibit(forms).with(kind, numbers);
    }

    private static String joined(List<Block> blocks, Renderer renderer) {
        return blocks.stream().map(renderer::render).collect(Collectors.joining("\n"));
    }

    /**
     * The same, marked as made for an edition.
     *
     * @param about what it is about, such as a problem: of several that are about the same, a document shows the fullest
     * @param whole whether it holds all that there is to show about it
     */
    public Exhibit madeFor(Edition edition, String about, boolean whole) {
        return with(edition.word(), Map.of("edition", edition.word(), "about", about, "whole", whole));
    }

    private Exhibit with(String kind, Map<String, ?> numbers) {
        Map<String, Object> result = new LinkedHashMap<>();
        if (forms.get(RESULT) instanceof Map<?, ?> before) {
            before.forEach((key, value) -> result.put((String) key, value));
        }
        result.put("kind", kind);
        result.putAll(numbers);
        Map<String, Object> all = new LinkedHashMap<>(forms);
        all.put(RESULT, result);
        return new Exhibit(all);
    }

    /**
     * A table.
     *
     * @param kind    what the machine-readable form says it is
     * @param numbers members of the machine-readable form: the table's content unrounded
     */
    public static Exhibit of(Table table, String kind, Map<String, ?> numbers) {
        Map<String, Object> result = result(kind);
        result.putAll(numbers);
        Map<String, Object> forms = new LinkedHashMap<>();
        forms.put(PLAIN, new PlainRenderer().render(table));
        forms.put("text/html", HtmlRenderer.withoutInlineMathMl().render(table));
        forms.put("text/latex", new LatexRenderer().render(table));
        forms.put(RESULT, result);
        return new Exhibit(forms);
    }

    public static Exhibit of(Figure figure) {
        Prose words = new Prose(figure.caption().sentence(figure.description()));
        Map<String, Object> forms = new LinkedHashMap<>();
        forms.put(PLAIN, new PlainRenderer().render(words));
        forms.put("image/svg+xml", figure.svg().toText());
        forms.put("image/png", Png.base64(figure.svg(), DOTS_PER_PIXEL));
        return new Exhibit(forms);
    }

    private static Map<String, Object> result(String kind) {
        Map<String, Object> result = new LinkedHashMap<>();
        result.put("version", 1);
        result.put("kind", kind);
        return result;
    }

    @Override
    public Map<String, Object> show() {
        return forms;
    }

    /** Nothing tells whether it holds answers, so only the solution shows it. */
    @Override
    public Optional<Map<String, Object>> show(Edition edition) {
        return edition == Edition.SOLUTION ? Optional.of(forms) : Optional.empty();
    }

    /** The plain text. */
    @Override
    public String toString() {
        return ((String) forms.get(PLAIN)).stripTrailing();
    }
}
