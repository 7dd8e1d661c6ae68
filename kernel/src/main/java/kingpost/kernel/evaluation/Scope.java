package kingpost.kernel.evaluation;

import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import kingpost.notebook.Preload;

/** What is in scope in a fresh cell: what calc-lib says, as far as the class path has it. */
final class Scope {

    private static final Pattern STATIC = Pattern.compile("import static ([\\w.]+)\\.(\\*|\\w+);");

    private Scope() {
    }

    /** Import declarations, in order. */
    static List<String> imports() {
        return Preload.imports().stream().filter(Scope::isThere).toList();
    }

    private static boolean isThere(String line) {
        Matcher owner = STATIC.matcher(line);
        return !owner.matches()
                || Scope.class.getResource("/" + owner.group(1).replace('.', '/') + ".class") != null;
    }
}
