package kingpost.kernel.evaluation;

import java.lang.System.Logger;
import java.lang.System.Logger.Level;
import java.lang.reflect.Field;
import java.lang.reflect.InaccessibleObjectException;
import java.lang.reflect.Method;
import java.util.Collections;
import java.util.HashSet;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import jdk.jshell.JShell;
import jdk.jshell.Snippet;

/**
 * What JShell remembers. By itself it keeps the source, the syntax tree and the compiled class of every statement that
 * it has ever seen, some kilobytes each, although nothing can refer to an expression, a failed statement or an older
 * version of a declaration; and its compiler, which is used again and again, keeps a little of every use.
 *
 * <p>There is no public way to make it forget, so this reaches into its fields. The VM must open the package for that
 * (the jar's manifest does); where it does not, or where a JDK has other fields, nothing is forgotten.
 */
final class SnippetMemory {

    private static final Logger LOG = System.getLogger("kingpost.evaluation");
    private static final int STATEMENTS_BETWEEN = 100;
    private static final List<String> NAMES = List.of("classMap", "methodMap", "varMap", "importMap");
    private static final int ROUNDS_OF_ONE_COMPILER = 10;
    /** The class of one or several snippets, without the classes nested in it. */
    private static final Pattern CLASS = Pattern.compile("(?:REPL\\.)?(\\$JShell\\$\\w+)(?:\\$.*)?");

    private final JShell jshell;
    private int statements;
    private int rounds;
    private boolean closed;

    SnippetMemory(JShell jshell) {
        this.jshell = jshell;
    }

    /** A statement has ended; forgets from time to time. JShell's lock is held. */
    void statementEnded() {
        if (++statements >= STATEMENTS_BETWEEN) {
            statements = 0;
            attempt(this::forget);
        }
    }

    /**
     * A declaration went out of force: if its name is declared again, then under a new number. JShell would give the old
     * one, and count its versions from the first again, although classes of these names are loaded.
     */
    void declarationLost() {
        attempt(() -> forgetNames(inForce()));
    }

    private interface Work {
        void run() throws ReflectiveOperationException;
    }

    private void attempt(Work work) {
        if (closed) {
            return;
        }
        try {
            work.run();
        } catch (ReflectiveOperationException | InaccessibleObjectException | ClassCastException notSo) {
            closed = true;
            LOG.log(Level.DEBUG, "JShell keeps every statement: " + notSo);
        }
    }

    /** Forgets all but the declarations in force; to JShell a statement that has run is in force, too. */
    void forget() throws ReflectiveOperationException {
        Set<Snippet> inForce = inForce();
        Set<String> classes = classesOf(inForce);
        Object maps = Fields.get(jshell, "maps");
        Fields.<Set<Snippet>>get(maps, "snippets").removeIf(each -> !inForce.contains(each));
        List<Snippet> byIndex = Fields.get(maps, "keyIndexToSnippet");
        byIndex.replaceAll(each -> inForce.contains(each) ? each : null);
        Map<String, Set<Integer>> dependencies = Fields.get(maps, "dependencies");
        dependencies.values().forEach(users -> users.removeIf(index -> index >= byIndex.size() || byIndex.get(index) == null));
        dependencies.values().removeIf(Set::isEmpty);
        keepOnly(classes, Fields.get(Fields.get(jshell, "classTracker"), "map"));
        keepOnly(classes, Fields.get(Fields.get(jshell, "outerMap"), "classOuters"));
        keepOnly(classes, Fields.get(Fields.get(Fields.get(jshell, "taskFactory"), "fileManager"), "classObjects"));
        forgetNames(inForce);
        if (++rounds % ROUNDS_OF_ONE_COMPILER == 0) {
            renew(Fields.get(jshell, "taskFactory"));
        }
    }

    private static void renew(Object compiler) throws ReflectiveOperationException {
        Method renew = compiler.getClass().getDeclaredMethod("initTaskPool");
        renew.setAccessible(true);
        renew.invoke(compiler);
    }

    /** Has the next statement compiled by a compiler that has seen nothing of the ones before. */
    void renewCompiler() {
        attempt(() -> renew(Fields.get(jshell, "taskFactory")));
    }

    private Set<Snippet> inForce() {
        Set<Snippet> inForce = Collections.newSetFromMap(new IdentityHashMap<>());
        jshell.snippets().filter(each -> Snippets.isDeclaration(each) && jshell.status(each).isActive()).forEach(inForce::add);
        return inForce;
    }

    private void forgetNames(Set<Snippet> inForce) throws ReflectiveOperationException {
        Field keyOf = Fields.of(Snippet.class, "key");
        Set<Object> keys = Collections.newSetFromMap(new IdentityHashMap<>());
        for (Snippet each : inForce) {
            keys.add(keyOf.get(each));
        }
        Object keyMap = Fields.get(jshell, "keyMap");
        for (String names : NAMES) {
            Fields.<Map<String, ?>>get(keyMap, names).values().removeIf(key -> !keys.contains(key));
        }
    }

    private Set<String> classesOf(Set<Snippet> snippets) throws ReflectiveOperationException {
        Field outer = Fields.of(Snippet.class, "outer");
        Method name = Snippet.class.getDeclaredMethod("classFullName");
        name.setAccessible(true);
        var classes = new HashSet<String>();
        for (Snippet each : snippets) {
            if (outer.get(each) != null) {
                classes.add(wrapper((String) name.invoke(each)));
            }
        }
        return classes;
    }

    private static void keepOnly(Set<String> classes, Map<String, ?> byName) {
        byName.keySet().removeIf(name -> !classes.contains(wrapper(name)));
    }

    private static String wrapper(String className) {
        Matcher name = CLASS.matcher(className);
        return name.matches() ? name.group(1) : className;
    }
}
