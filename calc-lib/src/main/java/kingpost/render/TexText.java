package kingpost.render;

import java.util.Map;

/** Text as LaTeX, in its text mode and within mathematics. */
final class TexText {

    private static final Map<String, String> GREEK = Map.ofEntries(
            Map.entry("α", "\\alpha"), Map.entry("β", "\\beta"), Map.entry("γ", "\\gamma"),
            Map.entry("δ", "\\delta"), Map.entry("ε", "\\varepsilon"), Map.entry("η", "\\eta"),
            Map.entry("θ", "\\theta"), Map.entry("κ", "\\kappa"), Map.entry("λ", "\\lambda"),
            Map.entry("μ", "\\mu"), Map.entry("ν", "\\nu"), Map.entry("π", "\\pi"), Map.entry("ρ", "\\rho"),
            Map.entry("σ", "\\sigma"), Map.entry("τ", "\\tau"), Map.entry("φ", "\\varphi"),
            Map.entry("ψ", "\\psi"), Map.entry("ω", "\\omega"), Map.entry("Δ", "\\Delta"),
            Map.entry("Σ", "\\Sigma"), Map.entry("ζ", "\\zeta"), Map.entry("ξ", "\\xi"),
            Map.entry("χ", "\\chi"), Map.entry("Γ", "\\Gamma"), Map.entry("Θ", "\\Theta"),
            Map.entry("Λ", "\\Lambda"), Map.entry("Ξ", "\\Xi"), Map.entry("Π", "\\Pi"),
            Map.entry("Φ", "\\Phi"), Map.entry("Ψ", "\\Psi"), Map.entry("Ω", "\\Omega"));

    private static final Map<Integer, String> IN_MATH = Map.ofEntries(
            at('\\', "\\backslash "), at('{', "\\{"), at('}', "\\}"), at('$', "\\$"), at('&', "\\&"),
            at('#', "\\#"), at('%', "\\%"), at('_', "\\_"), at('^', "{\\wedge}"), at('~', "{\\sim}"),
            at('<', "{<}"), at('>', "{>}"), at('|', "\\vert "), at('`', "\\text{‘}"), at('"', "\\text{”}"),
            at('−', "{-}"), at('·', "{\\cdot}"), at('°', "^{\\circ}"), at('′', "\\text{'}"), at('*', "{*}"),
            at('→', "{\\rightarrow}"), at('@', "\\text{@}"), at('-', "\\text{-}"));

    private static final Map<Integer, String> IN_TEXT = Map.ofEntries(
            at('\\', "\\textbackslash{}"), at('{', "\\{"), at('}', "\\}"), at('$', "\\$"), at('&', "\\&"),
            at('#', "\\#"), at('%', "\\%"), at('_', "\\_"), at('^', "\\textasciicircum{}"),
            at('~', "\\textasciitilde{}"), at('<', "\\textless{}"), at('>', "\\textgreater{}"),
            at('|', "\\textbar{}"), at('`', "\\textasciigrave{}"), at('"', "{\\char34}"), at('−', "\\ensuremath{-}"),
            at('·', "\\ensuremath{\\cdot}"), at('°', "\\ensuremath{^{\\circ}}"), at('′', "\\ensuremath{'}"),
            at('²', "\\ensuremath{^2}"), at('³', "\\ensuremath{^3}"), at('⁴', "\\ensuremath{^4}"),
            at('→', "\\ensuremath{\\rightarrow}"), at('≤', "\\ensuremath{\\le}"), at('≈', "\\ensuremath{\\approx}"),
            at('√', "\\ensuremath{\\surd}"), at('×', "\\ensuremath{\\times}"),
            at('–', "\\textendash{}"), at('—', "\\textemdash{}"),
            at('‘', "`"), at('’', "'"), at('“', "``"), at('”', "''"), at('-', "{-}"), at(0xA0, "~"),
            at(0x202F, "\\,"));

    private TexText() {
    }

    private static Map.Entry<Integer, String> at(int character, String tex) {
        return Map.entry(character, tex);
    }

    /** The text in a paragraph. */
    static String paragraph(String text) {
        StringBuilder out = new StringBuilder();
        text.codePoints().forEach(c -> {
            String greek = GREEK.get(Character.toString(c));
            String tex = greek == null ? IN_TEXT.get(c) : "\\ensuremath{" + greek + "}";
            out.append(tex == null ? Character.toString(c) : tex);
        });
        return out.toString();
    }

    /**
     * The text upright within mathematics. What LaTeX, KaTeX and MathJax all print as it stands goes into
     * {@code \text}; other characters become commands that all three know.
     */
    static String inMath(String text) {
        StringBuilder out = new StringBuilder();
        StringBuilder run = new StringBuilder();
        text.codePoints().forEach(c -> {
            String greek = GREEK.get(Character.toString(c));
            String tex = greek == null ? IN_MATH.get(c) : greek + " ";
            if (tex == null) {
                run.appendCodePoint(c);
            } else {
                flush(run, out);
                out.append(tex);
            }
        });
        flush(run, out);
        return out.toString();
    }

    /** The character's command if it is a Greek letter, else "". */
    static String greek(String letter) {
        return GREEK.getOrDefault(letter, "");
    }

    private static void flush(StringBuilder run, StringBuilder out) {
        if (!run.isEmpty()) {
            out.append("\\text{").append(run).append('}');
            run.setLength(0);
        }
    }
}
