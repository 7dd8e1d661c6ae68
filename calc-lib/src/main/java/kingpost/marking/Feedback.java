package kingpost.marking;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import kingpost.derivation.Block;
import kingpost.derivation.Block.Listing;
import kingpost.derivation.Block.Prose;
import kingpost.derivation.Block.Section;
import kingpost.derivation.Derivation;
import kingpost.derivation.Phrase;
import kingpost.derivation.Table;
import kingpost.derivation.Table.Column;
import kingpost.marking.MarkedSheet.Judged;
import kingpost.marking.MarkedSheet.MarkedAnswer;
import kingpost.marking.MarkedSheet.MarkedStep;
import kingpost.units.EngineeringFormat;
import kingpost.units.Quantity;

/** What one person is told: points, each answer with its verdict, what went wrong, and what a person must still read. */
public final class Feedback {

    private static final EngineeringFormat THREE = EngineeringFormat.standard().keepingUnits();

    private final MarkedSheet sheet;
    private final Points points;

    private Feedback(MarkedSheet sheet, Points points) {
        this.sheet = sheet;
        this.points = points;
    }

    public static Derivation of(MarkedSheet sheet, Points points) {
        return new Feedback(sheet, points).derivation();
    }

    private Derivation derivation() {
        List<Block> blocks = new ArrayList<>();
        blocks.add(new Prose(summary()));
        if (!sheet.answers().isEmpty()) {
            blocks.add(answers());
        }
        if (!sheet.steps().isEmpty()) {
            blocks.add(Section.of("Equations", List.of(steps())));
        }
        slips().ifPresent(blocks::add);
        unread().ifPresent(blocks::add);
        String name = sheet.student().isEmpty() ? "answers marked" : sheet.student();
        return new Derivation(sheet.truss() + ": " + name, blocks);
    }

    private Phrase summary() {
        Points.Score score = points.of(sheet);
        Phrase phrase = Phrase.EMPTY.strong(score.points() + " of " + score.outOf() + " points")
                .text(score.open() == 0 ? "." : ", and up to " + score.open() + " more when a person has read the rest.");
        List<String> counts = new ArrayList<>();
        count(counts, sheet.right(), "right");
        count(counts, sheet.followThrough(), "following correctly from an earlier slip");
        count(counts, sheet.slipped(), "wrong by a slip that can be named");
        count(counts, sheet.unexplained(), "wrong");
        count(counts, sheet.notAnswered(), "not answered");
        count(counts, sheet.notRead(), "not read");
        if (!sheet.steps().isEmpty()) {
            long right = sheet.steps().stream().filter(MarkedStep::isRight).count();
            phrase = phrase.sentence("Equations: " + right + " of " + sheet.steps().size() + " right.");
        }
        return counts.isEmpty() ? phrase.sentence("No answer was stated.")
                : phrase.sentence("Answers: " + String.join("; ", counts) + ".");
    }

    private static void count(List<String> counts, int number, String what) {
        if (number > 0) {
            counts.add(number + " " + what);
        }
    }

    private Table answers() {
        List<List<Phrase>> rows = new ArrayList<>();
        for (MarkedAnswer answer : sheet.answers()) {
            boolean open = answer.verdict() instanceof Verdict.NotRead;
            rows.add(List.of(Phrase.of(answer.subject()), Phrase.of(stated(answer)), Phrase.of(right(answer)),
                    Phrase.of(answer.verdict().accept(new VerdictWords())),
                    Phrase.of(open ? "" : Integer.toString(points.of(answer.verdict())))));
        }
        return new Table(Phrase.EMPTY, List.of(Column.left("Force"), Column.left("Stated"), Column.left("Right answer"),
                Column.left("Verdict"), Column.right("Points")), rows, true);
    }

    private Table steps() {
        List<List<Phrase>> rows = sheet.steps().stream().map(step -> List.of(Phrase.of(step.where()), Phrase.of(step.text()),
                Phrase.of(words(step)), Phrase.of(step.judged() == Judged.NOT_READ ? "" : Integer.toString(points.of(step)))))
                .toList();
        return new Table(Phrase.EMPTY, List.of(Column.left("Where"), Column.left("As written"), Column.left("Verdict"),
                Column.right("Points")), rows, true);
    }

    private static String words(MarkedStep step) {
        return switch (step.judged()) {
            case RIGHT -> "right";
            case FOLLOWS -> "right, with a wrong value carried";
            case SLIPPED, WRONG -> String.join(" ", step.findings());
            case NOT_READ -> "not marked: " + step.reason() + ". A person must read it.";
        };
    }

    private static String stated(MarkedAnswer answer) {
        return answer.text().replaceAll("\\s+", " ").replaceAll("^-(?=[\\d.])", "\u2212");
    }

    private static String right(MarkedAnswer answer) {
        return answer.right().map(force -> answer.isMember() ? member(force) : THREE.format(force)).orElse("");
    }

    private static String member(Quantity force) {
        if (force.getValue() == 0) {
            return "0";
        }
        return THREE.format(Quantity.of(Math.abs(force.getValue()), force.getUnit()))
                + (force.getValue() > 0 ? " tension" : " compression");
    }

    private Optional<Block> slips() {
        List<Block> blocks = new ArrayList<>();
        if (!sheet.slips().isEmpty()) {
            blocks.add(new Listing(sheet.slips().size() > 1, sheet.slips().stream()
                    .map(slip -> Phrase.of((SlipWords.of(slip) + " " + SlipWords.advice(slip)).strip())).toList()));
            encouragement().ifPresent(words -> blocks.add(Prose.of(words)));
        }
        for (List<Slip> other : sheet.others().subList(0, Math.min(2, sheet.others().size()))) {
            if (!other.isEmpty()) {
                blocks.add(Prose.of("As likely: " + String.join(" ", other.stream().map(SlipWords::of).toList())));
            }
        }
        return blocks.isEmpty() ? Optional.empty()
                : Optional.of(Section.of(sheet.slips().size() > 1 ? "The likeliest slips" : "The likeliest slip",
                blocks));
    }

    /** What is sound in a sheet with slips. */
    private Optional<String> encouragement() {
        boolean explained = sheet.unexplained() == 0 && sheet.notAnswered() == 0 && sheet.notRead() == 0;
        if (!explained || sheet.followThrough() == 0 && sheet.right() == 0) {
            return Optional.empty();
        }
        boolean one = sheet.slips().size() == 1;
        return Optional.of(sheet.followThrough() == 0 ? "Everything else is right."
                : "Everything else is right, or follows correctly from " + (one ? "this slip" : "these slips")
                + ": the way of working is sound.");
    }

    private Optional<Block> unread() {
        List<Phrase> reasons = sheet.answers().stream().filter(answer -> answer.verdict() instanceof Verdict.NotRead)
                .map(answer -> Phrase.of(reason(answer, ((Verdict.NotRead) answer.verdict()).reason()))).toList();
        return reasons.isEmpty() ? Optional.empty()
                : Optional.of(Section.of("For a person to read", List.of(new Listing(false, reasons))));
    }

    private static String reason(MarkedAnswer answer, String reason) {
        return reason.replace("\"", "").startsWith(answer.subject()) ? reason : answer.subject() + ", " + reason;
    }
}
