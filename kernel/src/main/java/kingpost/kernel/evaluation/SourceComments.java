package kingpost.kernel.evaluation;

import com.sun.source.tree.ClassTree;
import com.sun.source.tree.CompilationUnitTree;
import com.sun.source.tree.MethodTree;
import com.sun.source.tree.VariableTree;
import com.sun.source.util.DocTrees;
import com.sun.source.util.JavacTask;
import com.sun.source.util.TreePathScanner;
import java.io.IOException;
import java.io.InputStream;
import java.net.URI;
import java.nio.charset.StandardCharsets;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import java.util.stream.Collectors;
import javax.tools.JavaCompiler;
import javax.tools.JavaFileObject;
import javax.tools.SimpleJavaFileObject;
import javax.tools.ToolProvider;

/**
 * Documentation comments of our own API, read from its sources, which are on the class path beside the classes
 * under {@code sources/}.
 */
final class SourceComments {

    private static final String FOLDER = "/sources/";

    private final Map<String, Map<String, String>> byFile = new ConcurrentHashMap<>();

    /**
     * The comment on a member or a class.
     *
     * @param className qualified, with a dot before a nested class
     * @param member    a field's name, or {@code name(Type,Type)} with simple type names; empty for the class itself
     */
    Optional<String> of(String className, String member) {
        String top = topLevel(className);
        String nested = className.substring(top.length());
        Map<String, String> comments = byFile.computeIfAbsent(top, SourceComments::read);
        return Optional.ofNullable(comments.get(nested + "#" + member));
    }

    /** Whether the sources have this class. */
    boolean has(String className) {
        return SourceComments.class.getResource(FOLDER + topLevel(className).replace('.', '/') + ".java") != null;
    }

    /** The name up to its first part in capitals. */
    private static String topLevel(String className) {
        var top = new StringBuilder();
        for (String part : className.split("\\.")) {
            top.append(top.isEmpty() ? "" : ".").append(part);
            if (!part.isEmpty() && Character.isUpperCase(part.charAt(0))) {
                break;
            }
        }
        return top.toString();
    }

    private static Map<String, String> read(String topLevel) {
        try (InputStream in = SourceComments.class.getResourceAsStream(FOLDER + topLevel.replace('.', '/') + ".java")) {
            return in == null ? Map.of() : comments(new String(in.readAllBytes(), StandardCharsets.UTF_8));
        } catch (IOException unreadable) {
            return Map.of();
        }
    }

    private static Map<String, String> comments(String source) throws IOException {
        JavaCompiler compiler = ToolProvider.getSystemJavaCompiler();
        var task = (JavacTask) compiler.getTask(null, null, ignored -> { }, List.of("-proc:none"), null,
                List.of(new Source(source)));
        var found = new HashMap<String, String>();
        for (CompilationUnitTree unit : task.parse()) {
            new Collector(DocTrees.instance(task), found).scan(unit, "");
        }
        return found;
    }

    /** Walks a file; the second argument is the path of nested classes, {@code ".Builder"}. */
    private static final class Collector extends TreePathScanner<Void, String> {
        private final DocTrees trees;
        private final Map<String, String> found;
        private int depth;

        private Collector(DocTrees trees, Map<String, String> found) {
            this.trees = trees;
            this.found = found;
        }

        @Override
        public Void visitClass(ClassTree type, String outer) {
            String path = depth == 0 ? "" : outer + "." + type.getSimpleName();
            keep(path + "#");
            depth++;
            super.visitClass(type, path);
            depth--;
            return null;
        }

        @Override
        public Void visitMethod(MethodTree method, String outer) {
            String parameters = method.getParameters().stream().map(p -> simple(p.getType().toString()))
                    .collect(Collectors.joining(","));
            keep(outer + "#" + method.getName() + "(" + parameters + ")");
            return null;
        }

        @Override
        public Void visitVariable(VariableTree field, String outer) {
            keep(outer + "#" + field.getName());
            return null;
        }

        private void keep(String key) {
            String comment = trees.getDocComment(getCurrentPath());
            if (comment != null) {
                found.put(key, comment);
            }
        }
    }

    /** A type as it is compared: without package, type arguments and variable-arity dots. */
    static String simple(String type) {
        String raw = type.replaceAll("<.*>", "").replace("...", "[]").strip();
        return raw.substring(raw.lastIndexOf('.') + 1);
    }

    private static final class Source extends SimpleJavaFileObject {
        private final String content;

        private Source(String content) {
            super(URI.create("string:///Source.java"), JavaFileObject.Kind.SOURCE);
            this.content = content;
        }

        @Override
        public CharSequence getCharContent(boolean ignoreEncodingErrors) {
            return content;
        }
    }
}
