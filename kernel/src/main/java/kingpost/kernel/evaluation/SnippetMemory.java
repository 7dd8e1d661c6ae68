package kingpost.kernel.evaluation;

import java.lang.System.Logger;
import java.lang.System.Logger.Level;
import java.lang.reflect.Field;
import java.lang.reflect.InaccessibleObjectException;
import java.lang.reflect.Method;
import java.util.Collection;
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
import kingpost.kernel.pipe.Kind;

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
        if (++statements < STATEMENTS_BETWEEN || closed) {
            return;
        }
        statements = 0;
        try {
            forget();
        } catch (ReflectiveOperationException | InaccessibleObjectException | ClassCastException notSo) {
            closed = true;
            LOG.log(Level.DEBUG, "JShell keeps every statement: " + notSo);
        }
    }

    /** Forgets all but the declarations in force; to JShell a statement that has run is in force, too. */
    void forget() throws ReflectiveOperationException {
        Set<Snippet> inForce = Collections.newSetFromMap(new IdentityHashMap<>());
        jshell.snippets().filter(each -> Snippets.isDeclaration(each) && jshell.status(each).isActive()).forEach(inForce::add);
        Set<String> classes = classesOf(inForce);
        Object maps = get(jshell, "maps");
        this.<Collection<Snippet>>field(maps, "snippets").removeIf(each -> !inForce.contains(each));
        List<Snippet> byIndex = field(maps, "keyIndexToSnippet");
        byIndex.replaceAll(each -> inForce.contains(each) ? each : null);
        Map<String, Set<Integer>> dependencies = field(maps, "dependencies");
        dependencies.values().forEach(users -> users.removeIf(index -> index >= byIndex.size() || byIndex.get(index) == null));
        dependencies.values().removeIf(Set::isEmpty);
        keepOnly(classes, field(get(jshell, "classTracker"), "map"));
        keepOnly(classes, field(get(jshell, "outerMap"), "classOuters"));
        Object compiler = get(jshell, "taskFactory");
        keepOnly(classes, field(get(compiler, "fileManager"), "classObjects"));
        Map<String, ?> variables = field(get(jshell, "keyMap"), "varMap");
        variables.keySet().removeIf(name -> name.startsWith(Kind.TEMPORARY));
        if (++rounds % ROUNDS_OF_ONE_COMPILER == 0) {
            renew(compiler);
        }
    }

    private static void renew(Object compiler) throws ReflectiveOperationException {
        Method renew = compiler.getClass().getDeclaredMethod("initTaskPool");
        renew.setAccessible(true);
        renew.invoke(compiler);
    }

    /** Has the next statement compiled by a compiler that has seen nothing of the ones before. */
    void renewCompiler() {
        try {
            renew(get(jshell, "taskFactory"));
        } catch (ReflectiveOperationException | InaccessibleObjectException notSo) {
            LOG.log(Level.DEBUG, "JShell keeps its compiler: " + notSo);
        }
    }

    private Set<String> classesOf(Set<Snippet> snippets) throws ReflectiveOperationException {
        Field outer = accessible(Snippet.class, "outer");
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

    @SuppressWarnings("unchecked")
    private <T> T field(Object owner, String name) throws ReflectiveOperationException {
        return (T) get(owner, name);
    }

    private static Object get(Object owner, String name) throws ReflectiveOperationException {
        return accessible(owner.getClass(), name).get(owner);
    }

    private static Field accessible(Class<?> owner, String name) throws ReflectiveOperationException {
        Field field = owner.getDeclaredField(name);
        field.setAccessible(true);
        return field;
    }
}
