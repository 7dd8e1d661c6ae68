package kingpost.kernel.evaluation;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * How our own words are written in a cell; calc-lib decides it, in a text file. There a line that is not indented
 * names what the indented lines below it show.
 */
final class Examples {

    /** The list's place on the class path. */
    static final String RESOURCE = "/kingpost/notebook/examples.txt";
    private static final String GIVEN = "given";
    private static final String NAME = "{}";

    /**
     * An example.
     *
     * @param code      the lines of a cell
     * @param runnable  whether it can be run without writing files, asking or fetching
     */
    record Example(String code, boolean runnable) {
        private Example of(String member) {
            return new Example(code.replace(NAME, member), runnable);
        }
    }

    private final Map<String, Example> byName;

    private Examples(Map<String, Example> byName) {
        this.byName = byName;
    }

    /** Those on the class path; none when the file is not there. */
    static Examples ofTheNotebookLanguage() {
        try (InputStream in = Examples.class.getResourceAsStream(RESOURCE)) {
            return new Examples(in == null ? Map.of() : parse(new String(in.readAllBytes(), StandardCharsets.UTF_8)));
        } catch (IOException broken) {
            throw new UncheckedIOException(broken);
        }
    }

    private static Map<String, Example> parse(String text) {
        var found = new LinkedHashMap<String, Example>();
        List<String> names = List.of();
        var code = new ArrayList<String>();
        for (String line : (text + "\n#").lines().toList()) {
            boolean indented = line.startsWith("    ");
            if (indented) {
                code.add(line.substring(4));
            } else if (!code.isEmpty() && !line.isBlank()) {
                add(found, names, code);
                code.clear();
            }
            if (!indented && !line.isBlank() && !line.startsWith("#")) {
                names = List.of(line.strip().split("\\s+"));
            }
        }
        return found;
    }

    private static void add(Map<String, Example> found, List<String> names, List<String> code) {
        boolean runnable = !names.contains("!");
        names.forEach(name -> found.put(name, new Example(String.join("\n", code), runnable)));
    }

    /** What every example may use. */
    String given() {
        return Optional.ofNullable(byName.get(GIVEN)).map(Example::code).orElse("");
    }

    /**
     * The example of a member of a class, or of the class itself.
     *
     * @param owner  the class's name, with or without its package; a nested class with its outer one
     * @param member as {@link Signature} gives it: {@code force(String)}, a field's name, or nothing for the class
     */
    Optional<Example> of(String owner, String member) {
        String type = simple(owner);
        if (member.isEmpty()) {
            return Optional.ofNullable(byName.get(type));
        }
        String name = member.replaceFirst("\\(.*", "");
        return Optional.ofNullable(byName.get(type + "." + member))
                .or(() -> Optional.ofNullable(byName.get(type + "." + name)))
                .or(() -> Optional.ofNullable(byName.get(type + ".*"))).map(example -> example.of(name));
    }

    /** Every example that is named, with what it is of. */
    Map<String, Example> all() {
        var all = new LinkedHashMap<>(byName);
        all.remove(GIVEN);
        return all;
    }

    /** Without the package, whose parts begin with small letters. */
    private static String simple(String owner) {
        return owner.replaceFirst("^(?:[a-z_]\\w*\\.)+", "");
    }
}
