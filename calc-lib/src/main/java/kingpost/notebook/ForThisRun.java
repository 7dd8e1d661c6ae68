package kingpost.notebook;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import kingpost.calculation.SettingProblem;
import kingpost.derivation.Block.Prose;
import kingpost.derivation.Phrase;
import kingpost.render.Edition;
import kingpost.render.Exhibit;
import kingpost.render.Showable;
import kingpost.units.CalculationException;
import kingpost.units.EngineeringFormat;
import kingpost.units.Quantity;

/** Reads values that take the place of the notebook's for one run, and shows that they do. */
final class ForThisRun {

    private ForThisRun() {
    }

    /**
     * The note that a value was set.
     *
     * @param exhibit its forms; a parameter is data, so that every edition shows it
     */
    private record Note(Exhibit exhibit) implements Showable {
        @Override
        public Map<String, Object> show() {
            return exhibit.show();
        }

        @Override
        public Optional<Map<String, Object>> show(Edition edition) {
            return edition == Edition.SOLUTION ? Optional.of(show())
                    : Optional.of(exhibit.madeFor(edition, exhibit.toString(), true).show());
        }

        @Override
        public String toString() {
            return exhibit.toString();
        }
    }

    static Quantity quantity(String name, String text) {
        try {
            return Quantity.parse(text);
        } catch (CalculationException e) {
            throw new SettingProblem("Parameter " + name + ": " + e.getMessage(), e);
        }
    }

    static Quantity quantity(String name, Quantity inNotebook, String text) {
        Quantity set = quantity(name, text);
        SettingProblem.require(name, inNotebook, set);
        say(name, EngineeringFormat.given().format(set), EngineeringFormat.given().format(inNotebook));
        return set;
    }

    static double number(String name, double inNotebook, String text) {
        try {
            double set = Double.parseDouble(text.strip());
            say(name, text.strip(), String.valueOf(inNotebook));
            return set;
        } catch (NumberFormatException e) {
            throw wrong(name, text, String.valueOf(inNotebook), "a number without a unit", e);
        }
    }

    static int whole(String name, int inNotebook, String text) {
        try {
            int set = Integer.parseInt(text.strip());
            say(name, String.valueOf(set), String.valueOf(inNotebook));
            return set;
        } catch (NumberFormatException e) {
            throw wrong(name, text, String.valueOf(inNotebook), "a whole number", e);
        }
    }

    static boolean truth(String name, boolean inNotebook, String text) {
        String word = text.strip();
        if (!word.equals("true") && !word.equals("false")) {
            throw wrong(name, text, String.valueOf(inNotebook), "true or false", null);
        }
        say(name, word, String.valueOf(inNotebook));
        return word.equals("true");
    }

    static String words(String name, String inNotebook, String text) {
        say(name, "\"" + text + "\"", "\"" + inNotebook + "\"");
        return text;
    }

    private static SettingProblem wrong(String name, String text, String inNotebook, String wanted, Throwable cause) {
        return new SettingProblem("Parameter " + name + ": it is set to \"" + text + "\", and the notebook gives "
                + inNotebook + "; set " + wanted + ".", cause);
    }

    private static void say(String name, String set, String inNotebook) {
        Prose words = new Prose(Phrase.EMPTY.strong(name).text(" is set to " + set + " for this run; the notebook says "
                + inNotebook + "."));
        CellDisplay.sink().display(new Note(Exhibit.of(List.of(words), "parameter",
                Map.of("name", name, "set", set, "inNotebook", inNotebook))), Optional.empty());
    }
}
