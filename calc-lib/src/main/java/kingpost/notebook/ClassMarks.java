package kingpost.notebook;

import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import kingpost.marking.Feedback;
import kingpost.marking.MarkedClass;
import kingpost.marking.MarkedSheet;
import kingpost.marking.Points;
import kingpost.marking.ResultSheet;
import kingpost.render.Edition;
import kingpost.render.Exhibit;
import kingpost.render.HtmlPage;
import kingpost.render.Showable;
import kingpost.units.CalculationException;

/** The answers of a class, marked, in a notebook: a row for each sheet, and which slips the class made. */
public final class ClassMarks implements Showable {

    private final MarkedClass marked;
    private final Points points;

    ClassMarks(MarkedClass marked) {
        this(marked, Points.USUAL);
    }

    private ClassMarks(MarkedClass marked, Points points) {
        this.marked = marked;
        this.points = points;
    }

    /** Sheets, verdicts and slips as records. */
    public MarkedClass facts() {
        return marked;
    }

    /** How many sheets there are. */
    public int size() {
        return marked.sheets().size();
    }

    /** The same answers at other prices: for a right one, one that follows, one wrong by a slip that is named. */
    public ClassMarks points(int right, int follows, int slip) {
        return new ClassMarks(marked, new Points(right, follows, slip));
    }

    /**
     * What one student is told.
     *
     * @throws CalculationException when no sheet has that name
     */
    public Exhibit feedback(String student) {
        MarkedSheet sheet = marked.sheets().stream().filter(each -> each.student().equals(student)).findFirst()
                .orElseThrow(() -> new CalculationException("Student " + student + ": no sheet has this name; the names are "
                        + marked.sheets().stream().map(MarkedSheet::student).collect(Collectors.joining(", ")) + "."));
        return Exhibit.of(Feedback.of(sheet, points));
    }

    /** The result sheet for a spreadsheet: a row for each student, a column for each force. */
    public String results() {
        return ResultSheet.csv(marked, points).write();
    }

    /** Writes the result sheet and a feedback page for each student to a folder. */
    public SavedFiles save(String folder) {
        return save(SavedFiles.folder(folder));
    }

    /** Writes the result sheet and a feedback page for each student to a folder. */
    public SavedFiles save(Path folder) {
        Map<String, String> files = new LinkedHashMap<>();
        files.put("results.csv", results());
        for (MarkedSheet sheet : marked.sheets()) {
            String name = SavedFiles.plain(sheet.student());
            String file = "feedback-" + name + ".html";
            for (int again = 2; files.containsKey(file); again++) {
                file = "feedback-" + name + "-" + again + ".html";
            }
            files.put(file, HtmlPage.of(Feedback.of(sheet, points)));
        }
        return SavedFiles.into(folder, files);
    }

    private Exhibit exhibit() {
        List<Map<String, Object>> sheets = marked.sheets().stream().map(sheet -> {
            Map<String, Object> row = new LinkedHashMap<>();
            row.put("student", sheet.student());
            row.put("points", points.of(sheet).points());
            row.put("outOf", points.of(sheet).outOf());
            row.put("open", points.of(sheet).open());
            return row;
        }).toList();
        return Exhibit.of(ResultSheet.summary(marked, points), "class", Map.of("sheets", sheets));
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
