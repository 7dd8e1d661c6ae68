package kingpost.kernel.evaluation;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import jdk.jshell.spi.ExecutionControl.ClassBytecodes;

/**
 * The classes that a new calc VM needs so that imports, types and methods are back: the newest version of each
 * declaration. Those of expressions and statements are not kept.
 */
final class LoadedClasses {

    /** JShell's names: the declaration's number, then letters that count its versions. */
    private static final Pattern NAME = Pattern.compile("REPL\\.\\$JShell\\$(\\d+)([A-Z]*)(\\$.*)?");

    /** The same for overloads that JShell puts into one class. */
    private static final Pattern WITH_OTHERS = Pattern.compile("REPL\\.\\$JShell\\$(\\d+[A-Z]*(?:_\\d+[A-Z]*)*)(\\$.*)?");

    private final Map<String, Map<String, byte[]>> kept = new LinkedHashMap<>();
    private final List<ClassBytecodes> recent = new ArrayList<>();

    /** Classes that were just loaded. */
    void loaded(ClassBytecodes... classes) {
        recent.addAll(List.of(classes));
    }

    /** Whether a class of the declaration, expression or statement with this number was loaded since the last decision. */
    boolean justLoaded(String number) {
        return recent.stream().anyMatch(each -> isOf(each.name(), number));
    }

    /** What was loaded since the last decision belongs to a declaration: keep it. */
    void keepRecent() {
        for (ClassBytecodes each : recent) {
            Matcher name = NAME.matcher(each.name());
            String declaration = name.matches() ? name.group(1) : each.name();
            String version = name.matches() ? name.group(2) : "";
            kept.computeIfPresent(declaration, (d, classes) ->
                    classes.keySet().stream().allMatch(other -> version.equals(version(other))) ? classes : null);
            kept.computeIfAbsent(declaration, d -> new LinkedHashMap<>()).put(each.name(), each.bytecodes());
        }
        recent.clear();
    }

    /** Whether this is the class of the declaration with this number. */
    static boolean isOf(String className, String declaration) {
        Matcher name = WITH_OTHERS.matcher(className);
        return name.matches() && List.of(name.group(1).split("[A-Z_]+")).contains(declaration);
    }

    private static String version(String className) {
        Matcher name = NAME.matcher(className);
        return name.matches() ? name.group(2) : "";
    }

    /** What was loaded since the last decision was for once. */
    void dropRecent() {
        recent.clear();
    }

    Map<String, byte[]> all() {
        var all = new LinkedHashMap<String, byte[]>();
        kept.values().forEach(all::putAll);
        return all;
    }
}
