package kingpost.kernel.evaluation;

import java.lang.System.Logger;
import java.lang.System.Logger.Level;
import java.lang.reflect.Field;
import java.lang.reflect.InaccessibleObjectException;
import java.lang.reflect.Method;
import java.util.ArrayList;
import java.util.Collections;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import jdk.jshell.JShell;
import jdk.jshell.Snippet;

/**
 * What is declared before a statement, to go back to when the statement fails. JShell by itself takes the old
 * declaration of a name away before it looks at the new one, and keeps a variable whose initializer failed. The classes
 * of the old declarations, with the values of variables, are still loaded, so only JShell's own books are turned back.
 *
 * <p>There is no public way for this; where the VM does not open the package, JShell's ways stay.
 */
final class StandingDeclarations {

    private static final Logger LOG = System.getLogger("kingpost.evaluation");

    /** What a statement may change of a snippet that was there before it. */
    private record State(Object outer, Object status, Object unresolved, Object diagnostics, int version) {

        static State of(Snippet snippet) throws ReflectiveOperationException {
            return new State(field("outer").get(snippet), field("status").get(snippet), field("unresolved").get(snippet),
                    field("diagnostics").get(snippet), newest(snippet));
        }

        /** All but the version, for classes of the later ones may be loaded, and their names must not come again. */
        void restore(Snippet snippet, int newest) throws ReflectiveOperationException {
            field("outer").set(snippet, outer);
            field("status").set(snippet, status);
            field("unresolved").set(snippet, unresolved);
            field("diagnostics").set(snippet, diagnostics);
            field("seq").set(snippet, newest > version ? newest + 1 : version);
        }
    }

    private final JShell jshell;
    private final Map<Snippet, State> standing = new IdentityHashMap<>();
    private final List<Snippet> byNumber;
    private final Set<Object> compiled = Collections.newSetFromMap(new IdentityHashMap<>());

    private StandingDeclarations(JShell jshell) throws ReflectiveOperationException {
        this.jshell = jshell;
        byNumber = new ArrayList<>(byNumber());
        for (Snippet each : jshell.snippets().filter(s -> Snippets.isDeclaration(s) && jshell.status(s).isActive()).toList()) {
            standing.put(each, State.of(each));
        }
        compiled.addAll(classFiles().values());
    }

    /** What is declared now; empty where JShell's books are closed. JShell's lock is held. */
    static Optional<StandingDeclarations> of(JShell jshell) {
        try {
            return Optional.of(new StandingDeclarations(jshell));
        } catch (ReflectiveOperationException | InaccessibleObjectException closed) {
            LOG.log(Level.DEBUG, "A failed declaration cannot be taken back: " + closed);
            return Optional.empty();
        }
    }

    /** Whether the compiler has made the class of this snippet since. */
    boolean isCompiledSince(Snippet snippet) {
        try {
            Method className = Snippet.class.getDeclaredMethod("classFullName");
            className.setAccessible(true);
            Object classFile = classFiles().get((String) className.invoke(snippet));
            return classFile != null && !compiled.contains(classFile);
        } catch (ReflectiveOperationException changed) {
            throw new IllegalStateException("What the compiler made could not be found.", changed);
        }
    }

    /** Goes back: what was declared then is in force, and what was declared since is not. */
    void restore() {
        try {
            Set<Snippet> snippets = Fields.get(Fields.get(jshell, "maps"), "snippets");
            Map<Object, Integer> newest = new IdentityHashMap<>();
            for (Snippet each : snippets) {
                newest.merge(field("key").get(each), newest(each), Math::max);
                if (!standing.containsKey(each)) {
                    field("status").set(each, Snippet.Status.DROPPED);
                }
            }
            for (Map.Entry<Snippet, State> each : standing.entrySet()) {
                each.getValue().restore(each.getKey(), newest.getOrDefault(field("key").get(each.getKey()), 0));
            }
            snippets.retainAll(standing.keySet());
            snippets.addAll(standing.keySet());
            List<Snippet> numbered = byNumber();
            for (int i = 0; i < numbered.size(); i++) {
                numbered.set(i, i < byNumber.size() ? byNumber.get(i) : null);
            }
        } catch (ReflectiveOperationException changed) {
            throw new IllegalStateException("What was declared before the statement could not be restored.", changed);
        }
    }

    private List<Snippet> byNumber() throws ReflectiveOperationException {
        return Fields.get(Fields.get(jshell, "maps"), "keyIndexToSnippet");
    }

    private Map<String, ?> classFiles() throws ReflectiveOperationException {
        return Fields.get(Fields.get(Fields.get(jshell, "taskFactory"), "fileManager"), "classObjects");
    }

    private static int newest(Snippet snippet) throws ReflectiveOperationException {
        return field("seq").getInt(snippet);
    }

    private static Field field(String name) throws ReflectiveOperationException {
        return Fields.of(Snippet.class, name);
    }
}
