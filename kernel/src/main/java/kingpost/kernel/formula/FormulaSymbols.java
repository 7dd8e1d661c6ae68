package kingpost.kernel.formula;

import java.util.HashMap;
import java.util.Map;
import java.util.Set;

/** What each command without an argument stands for. */
final class FormulaSymbols {

    /** Plus and minus signs, which bind to the right when nothing stands on their left. */
    static final Set<String> SIGNS = Set.of("+", "\u2212", "\u00b1", "\u2213");

    /** Operators after which a sign is a sum. */
    static final Set<String> CLOSERS = Set.of(")", "]", "}", "!", "\u27e9", "\u2032", "\u2033", "\u2034");

    /** Names set upright, as they stand. */
    static final Set<String> FUNCTIONS = Set.of("sin", "cos", "tan", "cot", "sec", "csc", "arcsin", "arccos", "arctan",
            "sinh", "cosh", "tanh", "ln", "log", "exp", "arg", "deg", "det", "dim", "gcd", "ker");

    /** Function names whose limits go below. */
    static final Set<String> LIMIT_FUNCTIONS = Set.of("lim", "max", "min", "sup", "inf");

    /** Operators whose limits go above and below. */
    static final Set<String> LIMIT_OPERATORS = Set.of("\u2211", "\u220f", "\u22c3", "\u22c2");

    static final Map<String, String> LETTERS = pairs("""
            alpha α beta β gamma γ delta δ epsilon ϵ varepsilon ε zeta ζ eta η theta θ vartheta ϑ iota ι kappa κ
            lambda λ mu μ nu ν xi ξ omicron ο pi π varpi ϖ rho ρ varrho ϱ sigma σ varsigma ς tau τ upsilon υ phi ϕ
            varphi φ chi χ psi ψ omega ω Gamma Γ Delta Δ Theta Θ Lambda Λ Xi Ξ Pi Π Sigma Σ Upsilon Υ Phi Φ Psi Ψ
            Omega Ω ell ℓ hbar ℏ infty ∞ partial ∂ nabla ∇ emptyset ∅ varnothing ∅ forall ∀ exists ∃ angle ∠
            triangle △ square □ degree ° checkmark ✓ dots … ldots … cdots ⋯ vdots ⋮ ddots ⋱ imath ı jmath ȷ
            Re ℜ Im ℑ prime ′ perthousand ‰ diameter ⌀ measuredangle ∡""");

    static final Map<String, String> OPERATORS = pairs("""
            times × cdot ⋅ div ÷ pm ± mp ∓ ast ∗ star ⋆ circ ∘ bullet ∙ oplus ⊕ otimes ⊗ wedge ∧ vee ∨ land ∧ lor ∨
            cap ∩ cup ∪ setminus ∖ neg ¬ lnot ¬ leq ≤ le ≤ geq ≥ ge ≥ leqslant ⩽ geqslant ⩾ ll ≪ gg ≫ neq ≠ ne ≠
            approx ≈ equiv ≡ cong ≅ sim ∼ simeq ≃ propto ∝ perp ⊥ parallel ∥ mid ∣ in ∈ notin ∉ ni ∋ subset ⊂
            subseteq ⊆ supset ⊃ supseteq ⊇ to → rightarrow → leftarrow ← gets ← uparrow ↑ downarrow ↓ updownarrow ↕
            leftrightarrow ↔ Rightarrow ⇒ implies ⟹ Leftarrow ⇐ impliedby ⟸ Leftrightarrow ⇔ iff ⟺ Uparrow ⇑
            Downarrow ⇓ longrightarrow ⟶ longleftarrow ⟵ Longrightarrow ⟹ mapsto ↦ nearrow ↗ searrow ↘ swarrow ↙
            nwarrow ↖ curvearrowleft ↶ curvearrowright ↷ circlearrowleft ↺ circlearrowright ↻ rightleftharpoons ⇌
            therefore ∴ because ∵ colon : vert | lvert | rvert | Vert ‖ lVert ‖ rVert ‖ langle ⟨ rangle ⟩
            lfloor ⌊ rfloor ⌋ lceil ⌈ rceil ⌉ lbrace { rbrace } lbrack [ rbrack ] backslash \\ triangleq ≜ doteq ≐
            sum ∑ prod ∏ int ∫ iint ∬ oint ∮ bigcup ⋃ bigcap ⋂ surd √ lt < gt >""");

    /** Widths of spaces; TeX's own, in em. */
    static final Map<String, String> SPACES = Map.of(",", "0.167em", ":", "0.222em", ">", "0.222em", ";", "0.278em",
            "!", "-0.167em", " ", "0.25em", "quad", "1em", "qquad", "2em", "enspace", "0.5em", "thinspace", "0.167em");

    /** Marks that stand over (or, with a leading underscore, under) their argument. */
    static final Map<String, String> ACCENTS = pairs("""
            vec → overrightarrow → hat ^ widehat ^ bar ‾ overline ‾ tilde ~ widetilde ~ dot ˙ ddot ¨ overbrace ⏞
            check ˇ breve ˘ acute ´ grave ` underline __ underbrace _⏟""");

    private FormulaSymbols() {
    }

    private static Map<String, String> pairs(String table) {
        Map<String, String> map = new HashMap<>();
        String[] words = table.strip().split("\\s+");
        for (int i = 0; i < words.length; i += 2) {
            map.put(words[i], words[i + 1]);
        }
        return Map.copyOf(map);
    }
}
