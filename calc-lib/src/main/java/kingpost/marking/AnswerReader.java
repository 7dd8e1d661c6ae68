package kingpost.marking;

import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import javax.measure.Unit;
import kingpost.marking.Reading.Blank;
import kingpost.marking.Reading.Force;
import kingpost.marking.Reading.Said;
import kingpost.marking.Reading.Unread;
import kingpost.truss.Direction;

/**
 * Reads one answer: "12.5 kN C", "T 12.5", "-12.5", "12√2 kN (tension)", "10/√3", "16 2/3", "zero", or nothing.
 *
 * <p>A number without a unit is in the truss's force unit. A comma is a decimal comma; before three figures it is refused,
 * as it may part a thousand from the rest. A minus sign may be any of the dashes that word processors put in its
 * place. What is not understood in full is not read at all.
 */
final class AnswerReader {

    private static final String DECIMAL = "(?:\\d+(?:\\.\\d*)?|\\.\\d+)(?:[eE][+-]?\\d+)?";
    private static final String ROOT = "\u221a\\s*\\(?\\s*(?<radicand>\\d+)\\s*\\)?";
    private static final String OVER = "(?<divisor>\\d+(?:\\.\\d+)?)?\\s*(?:\u221a\\s*\\(?\\s*(?<below>\\d+)\\s*\\)?)?";
    private static final Pattern FORM = Pattern.compile("(?<before>(?:[^\\d.+\\-\u221a]|\\.(?!\\d))*?)\\s*(?<sign>[+-]?)\\s*"
            + "(?=\\.?\\d|\u221a)(?:(?<whole>\\d+)\\s+(?=\\d+\\s*/\\s*\\d))?(?<number>" + DECIMAL + ")?"
            + "(?:\\s*/\\s*(?<first>\\d+)\\s*\\)?(?=\\s*[*\u00b7\u00d7]?\\s*\u221a))?\\s*(?:[*\u00b7\u00d7]?\\s*" + ROOT + ")?"
            + "(?:\\s*/\\s*(?=[\\d\u221a])" + OVER + ")?(?<after>.*)");
    private static final Pattern COMMA = Pattern.compile("(?<![\\d.,])(\\d+),(\\d+)(?![.,]?\\d)");
    private static final Pattern EQUALLY = Pattern.compile("\\s*[=\u2248]\\s*");
    private static final Set<String> NOTHING =
            Set.of("", "-", "--", "---", "?", "??", "???", "blank", "no answer", "not answered", "...", "\u2026");
    private static final Set<String> ZERO = Set.of("zero", "none", "nil", "zero force", "zero-force", "no force",
            "zero force member", "zero-force member", "zero member", "unloaded", "nothing");

    private final Unit<?> forceUnit;
    private final Convention convention;

    AnswerReader(Unit<?> forceUnit, Convention convention) {
        this.forceUnit = forceUnit;
        this.convention = convention;
    }

    /** An answer for a member. */
    Reading member(String text) {
        return read(text, Optional.empty());
    }

    /** An answer for a reaction whose positive direction is {@code along}. */
    Reading reaction(String text, Direction along) {
        return read(text, Optional.of(along));
    }

    private Reading read(String text, Optional<Direction> along) {
        String plain = withPoints(plain(text));
        String words = plain.toLowerCase(Locale.ROOT);
        if (NOTHING.contains(words)) {
            return new Blank();
        }
        if (ZERO.contains(words)) {
            return zero(Said.WORD);
        }
        if (plain.matches(".*\\d\\s*,\\s*\\d.*")) {
            return unread(text, "a comma before three figures may be a decimal comma or mark thousands; write 1.25 or 1250");
        }
        if (EQUALLY.matcher(plain).find()) {
            return twice(text, plain, along);
        }
        Matcher form = FORM.matcher(plain.replace("sqrt", "\u221a"));
        if (!form.matches() || form.group("number") == null && form.group("radicand") == null) {
            return unread(text, "there is no number in it; write it as 12.5 C, or zero");
        }
        try {
            return force(text, form, along);
        } catch (NotRead e) {
            return unread(text, e.getMessage());
        }
    }

    private Reading force(String text, Matcher form, Optional<Direction> along) throws NotRead {
        AnswerWords words = AnswerWords.of(form.group("before") + " " + form.group("after"), forceUnit, along);
        double size = size(form);
        double scale = words.unitIn(forceUnit);
        boolean plainDecimal = Stream.of("radicand", "divisor", "below", "whole", "first")
                .allMatch(part -> form.group(part) == null);
        if (size == 0) {
            return zero(words.sign() == 0 ? Said.NOTHING : Said.WORD);
        }
        if (!Double.isFinite(size)) {
            return unread(text, "the number is out of range; write it in full");
        }
        String digits = plainDecimal ? form.group("number") : "";
        double value = signed(size * scale, form.group("sign"), words.sign(), along.isPresent());
        Said said = words.sign() != 0 ? Said.WORD : form.group("sign").isEmpty() ? Said.NOTHING : Said.SIGN;
        return new Force(value, plainDecimal ? Figures.halfUnit(digits) * scale : 0,
                plainDecimal ? Figures.count(digits) : 9, said, digits, scale);
    }

    /** "10\u221a2 = 14.1 kN C": the same force in two forms; what is said after the last holds for it. */
    private Reading twice(String text, String plain, Optional<Direction> along) {
        String[] forms = EQUALLY.split(plain);
        Reading last = read(forms[forms.length - 1], along);
        for (int i = 0; i < forms.length - 1 && last instanceof Force said; i++) {
            boolean same = read(forms[i], along) instanceof Force other && Math.abs(Math.abs(other.value())
                    - Math.abs(said.value())) <= Math.max(said.halfUnit(), other.halfUnit()) * (1 + 1e-6)
                    && (other.value() == said.value() || other.said() == Said.NOTHING
                    || Math.signum(other.value()) == Math.signum(said.value()));
            last = same ? last : unread(text, "its two sides do not say the same force; keep one of them");
        }
        return last instanceof Unread unread && !unread.reason().startsWith("\"" + text.strip())
                ? unread(text, "it is not one force; write it as 12.5 C") : last;
    }

    private static double size(Matcher form) {
        double size = part(form, "number") / part(form, "first");
        if (form.group("radicand") == null) {
            size = size / part(form, "divisor") / Math.sqrt(part(form, "below"));
            return form.group("whole") == null ? size : size + part(form, "whole");
        }
        return size * Math.sqrt(part(form, "radicand")) / part(form, "divisor") / Math.sqrt(part(form, "below"));
    }

    /** The number of one part of the form; 1 where it is not written. */
    private static double part(Matcher form, String part) {
        return form.group(part) == null ? 1 : Double.parseDouble(form.group(part));
    }

    private double signed(double size, String sign, int word, boolean reaction) throws NotRead {
        int written = sign.equals("-") ? -1 : 1;
        int natural = convention == Convention.COMPRESSION_POSITIVE && !reaction ? -1 : 1;
        if (word == 0) {
            return size * written * natural;
        }
        boolean minusFits = word != natural;
        if (sign.equals("-") && !minusFits) {
            throw new NotRead("the minus sign and the word say opposite things; keep one of them");
        }
        return size * word;
    }

    private static Force zero(Said said) {
        return new Force(0, 0, 9, said, "", 1);
    }

    private static Unread unread(String text, String reason) {
        return new Unread("\"" + text.strip() + "\": " + reason + ".");
    }

    /**
     * With a point for each decimal comma; a comma before three figures stays, as it may mark thousands, unless only a zero
     * stands before it.
     */
    static String withPoints(String text) {
        return COMMA.matcher(text).replaceAll(match -> match.group(2).length() == 3 && !match.group(1).matches("0+")
                ? match.group() : match.group(1) + "." + match.group(2));
    }

    /** Dashes that stand for a minus as "-", blanks of all kinds as one space, no quotation marks around it. */
    static String plain(String text) {
        return text.replaceAll("[\u2010-\u2015\u2212\uFE58\uFE63\uFF0D]", "-").replace('\uFF0B', '+')
                .replaceAll("[\\s\u00A0\u2000-\u200B\u202F\u205F\u3000\uFEFF]+", " ").strip()
                .replaceAll("^[\"'\u2018-\u201F]+|[\"'\u2018-\u201F]+$", "")
                .replaceAll("^(=|:|~|\u2248|approx\\.?|about|ca\\.?)\\s*", "").replaceAll("(?<=[^.])[.;,]$", "").strip();
    }

    /** Why an answer is not read. */
    static final class NotRead extends Exception {
        private static final long serialVersionUID = 1L;

        NotRead(String reason) {
            super(reason);
        }
    }
}
