package kingpost.marking;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.OptionalInt;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import kingpost.marking.AnswerSheet.Stated;
import kingpost.marking.AnswerSheet.StatedStep;
import kingpost.marking.Reading.Blank;
import kingpost.marking.Reading.Force;
import kingpost.marking.Reading.Unread;
import kingpost.marking.Slip.Place;
import kingpost.units.Quantity;

/**
 * Reads one person's answers.
 *
 * <p>As text, answers stand on lines of their own or behind commas or semicolons: {@code AB = 12.5 kN C, AD: -3; CD 0}.
 * A line may begin with {@code joint D:} or {@code reactions:}, which tells the order of working. A line
 * {@code compression positive} turns round the sense of numbers without a word. {@code ΣFx: AB + 0.6 AF = 0} is an
 * equation of the joint named before it; {@code reactions:} stands before equations of the whole truss, {@code section BC CE EF:}
 * before those of a part, and {@code ΣM_A: 12 Dy - 48 = 0} takes moments.
 */
final class SheetReader {

    private static final Pattern HEAD = Pattern.compile("(?i)^\\s*(?:at\\s+)?(?:joint\\s+(?<joint>[^\\s:]+)"
            + "|(?:section|cut)\\s+(?:through\\s+)?(?<cut>[^:=]+?)|reactions?|whole(?:\\s+truss)?)\\s*:\\s*(?<rest>.*)$");
    private static final Pattern STEP = Pattern.compile("(?i)[\\s\u2190-\u2193\u21ba\u21bb\u27f2\u27f3+]*(?<sum>\u03a3|\u2211|sum(?: of)?)?\\s*"
            + "(?:F\\s*_?\\{?(?<axis>[xyz])\\}?|M(?:oments?)?\\s*(?:about|at|@)?\\s*_?[{(]?(?<about>[\\p{L}\\p{N}]+)[})]?)"
            + "\\s*(?:=\\s*0\\s*)?[:=](?<equation>.+)");
    private static final Pattern NO_SUBJECT = Pattern.compile("\\s*[\\d.][^=:]*");

    private final Unknowns unknowns;
    private final Map<String, Stated> answers = new LinkedHashMap<>();
    private final List<StatedStep> steps = new ArrayList<>();
    private final List<String> order = new ArrayList<>();
    private Place body = new Place.Throughout();
    private Convention convention;

    SheetReader(Unknowns unknowns, Convention convention) {
        this.unknowns = unknowns;
        this.convention = convention;
    }

    /** The sheet that {@code text} is. */
    AnswerSheet read(String student, String text) {
        lines(text);
        return sheet(student);
    }

    /** Takes in lines of a sheet. */
    void lines(String text) {
        List<String> lines = text.lines().filter(line -> !line.isBlank()).toList();
        lines.forEach(line -> Convention.declaredBy(line).ifPresent(declared -> convention = declared));
        lines.stream().filter(line -> Convention.declaredBy(line).isEmpty()).forEach(this::line);
    }

    /** The sheet of a map from a force's name to a text, a number in the truss's force unit, or a quantity. */
    AnswerSheet read(String student, Map<String, ?> stated) {
        stated.forEach((subject, value) -> answer(subject, textOf(value)));
        return sheet(student);
    }

    /** The answers taken in so far. */
    AnswerSheet sheet(String student) {
        return new AnswerSheet(student, List.copyOf(answers.values()), steps, order);
    }

    /** Takes in one answer. */
    void answer(String subject, String text) {
        OptionalInt unknown = unknowns.find(subject);
        if (unknown.isEmpty()) {
            put(new Stated(subject.strip(), text, new Unread("\"" + subject.strip()
                    + "\": no member and no reaction of this truss has this name; correct it.")));
            return;
        }
        AnswerReader reader = new AnswerReader(unknowns.truss().forceUnit(), convention);
        int number = unknown.getAsInt();
        Reading reading = unknowns.isMember(number) ? reader.member(text)
                : reader.reaction(text, unknowns.reaction(number).direction());
        put(new Stated(unknowns.name(number), text, reading));
    }

    private void put(Stated stated) {
        answers.merge(stated.subject(), stated, SheetReader::both);
    }

    /** Two answers for one force: the same twice is one; else a person must choose. */
    private static Stated both(Stated before, Stated now) {
        if (now.reading() instanceof Blank || sameForce(before.reading(), now.reading())) {
            return before;
        }
        if (before.reading() instanceof Blank) {
            return now;
        }
        return new Stated(before.subject(), before.text().strip() + " and " + now.text().strip(),
                new Unread(before.subject() + ": it is stated twice, as \"" + before.text().strip() + "\" and as \""
                        + now.text().strip() + "\"; keep one of them."));
    }

    private static boolean sameForce(Reading before, Reading now) {
        return before instanceof Force a && now instanceof Force b && a.value() == b.value();
    }

    private void line(String line) {
        Matcher head = HEAD.matcher(line);
        boolean headed = head.matches() && (head.group("joint") == null || isJoint(head.group("joint")));
        if (headed && head.group("joint") != null) {
            order.add(head.group("joint"));
        }
        body = headed ? body(head) : body;
        parts(headed ? head.group("rest") : line).forEach(this::part);
    }

    private static Place body(Matcher head) {
        if (head.group("joint") != null) {
            return new Place.AtJoint(head.group("joint"));
        }
        return head.group("cut") == null ? new Place.InReactions()
                : new Place.AtSection(List.of(head.group("cut").strip().split("\\s*(?:,|;|\\band\\b|\\s)\\s*")));
    }

    private boolean isJoint(String name) {
        return unknowns.truss().joint(name).isPresent();
    }

    /** Splits at semicolons and commas, but not at a comma that stands within a number. */
    private static List<String> parts(String line) {
        List<String> parts = new ArrayList<>();
        for (String part : line.split(";|,(?!\\d)|(?<!\\d),")) {
            if (!parts.isEmpty() && NO_SUBJECT.matcher(part).matches()) {
                parts.set(parts.size() - 1, parts.get(parts.size() - 1) + "," + part);
            } else if (!parts.isEmpty() && !part.isBlank() && AnswerWords.isAll(part)) {
                parts.set(parts.size() - 1, parts.get(parts.size() - 1) + " " + part);
            } else if (!part.isBlank()) {
                parts.add(part);
            }
        }
        return parts;
    }

    private void part(String part) {
        Matcher step = STEP.matcher(part);
        if (step.matches() && isStep(step)) {
            String axis = step.group("axis") == null ? "" : step.group("axis").toLowerCase(Locale.ROOT);
            String about = step.group("about") == null ? "" : step.group("about");
            steps.add(new StatedStep(body, axis, about, step.group("equation").strip(), part.strip()));
            return;
        }
        String[] sides = part.strip().split("\\s*[=:]\\s*|\\s+", 2);
        String text = sides.length > 1 ? sides[1] : "";
        List<String> subjects = new ArrayList<>(List.of(sides[0]));
        String[] next = text.split("\\s*=\\s*", 2);
        while (next.length > 1 && unknowns.find(next[0]).isPresent()) {
            subjects.add(next[0]);
            text = next[1];
            next = text.split("\\s*=\\s*", 2);
        }
        for (String subject : subjects) {
            answer(subject, text);
        }
    }

    /** Without a word for a sum, "Fx" may be the reaction of a joint F, and "MN" a member. */
    private boolean isStep(Matcher step) {
        if (step.group("about") != null && !isJoint(step.group("about"))) {
            return false;
        }
        String name = step.group("axis") == null ? "M" + step.group("about") : "F" + step.group("axis");
        return step.group("sum") != null || unknowns.find(name).isEmpty();
    }

    private String textOf(Object value) {
        if (value instanceof Quantity quantity) {
            return Double.toString(quantity.in(unknowns.truss().forceUnit()));
        }
        return value == null ? "" : value.toString();
    }
}
