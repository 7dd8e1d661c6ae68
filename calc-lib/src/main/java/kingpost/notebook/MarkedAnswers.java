package kingpost.notebook;

import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import kingpost.marking.Feedback;
import kingpost.marking.MarkedSheet;
import kingpost.marking.Marker;
import kingpost.marking.Points;
import kingpost.render.Edition;
import kingpost.render.Exhibit;
import kingpost.render.HtmlPage;
import kingpost.render.Showable;

/** One person's answers, marked, in a notebook: a table with a verdict and points for each, and the likeliest slips. */
public final class MarkedAnswers implements Showable {

    private final MarkedSheet sheet;
    private final Points points;
    private final Marker marker;

    /** Asked for every member. */
    MarkedAnswers(Marker marker, MarkedSheet stated) {
        this(marker, marker.asking(stated, marker.members()), Points.USUAL);
    }

    MarkedAnswers(Marker marker, MarkedSheet sheet, Points points) {
        this.marker = marker;
        this.sheet = sheet;
        this.points = points;
    }

    /** Verdicts and slips as records. */
    public MarkedSheet facts() {
        return sheet;
    }

    /** What was earned, out of what, and what is open until a person has read the rest. */
    public Points.Score score() {
        return points.of(sheet);
    }

    /** The same answers for a question that asked for these forces only. */
    public MarkedAnswers asked(String forces) {
        List<String> asked = Stream.of(forces.strip().split("[\\s,;]+")).filter(name -> !name.isEmpty()).toList();
        List<MarkedSheet.MarkedAnswer> stated = sheet.answers().stream()
                .filter(answer -> !(answer.verdict() instanceof kingpost.marking.Verdict.NotAnswered)).toList();
        return new MarkedAnswers(marker, marker.asking(sheet.with(stated), asked), points);
    }

    /** The same answers at other prices: for a right one, one that follows, one wrong by a slip that is named. */
    public MarkedAnswers points(int right, int follows, int slip) {
        return new MarkedAnswers(marker, sheet, new Points(right, follows, slip));
    }

    /** Writes the feedback to a file: one HTML page that stands alone. */
    public SavedFiles save(String file) {
        Path path = Path.of(file).toAbsolutePath();
        return SavedFiles.into(path.getParent(), Map.of(path.getFileName().toString(), page()));
    }

    String page() {
        return HtmlPage.of(Feedback.of(sheet, points));
    }

    private Exhibit exhibit() {
        Map<String, Object> numbers = new LinkedHashMap<>();
        numbers.put("student", sheet.student());
        numbers.put("points", score().points());
        numbers.put("outOf", score().outOf());
        numbers.put("open", score().open());
        return Exhibit.of(Feedback.of(sheet, points), "marking", numbers);
    }

    @Override
    public Map<String, Object> show() {
        return exhibit().show();
    }

    /** It is about a person, so neither a handout nor a key shows it. */
    @Override
    public Optional<Map<String, Object>> show(Edition edition) {
        return edition == Edition.SOLUTION ? Optional.of(show()) : Optional.empty();
    }

    @Override
    public String toString() {
        return exhibit().toString();
    }
}
