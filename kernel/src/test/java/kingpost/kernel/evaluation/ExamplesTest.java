package kingpost.kernel.evaluation;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.lang.reflect.Executable;
import java.lang.reflect.Field;
import java.lang.reflect.Method;
import java.lang.reflect.Modifier;
import java.net.URISyntaxException;
import java.nio.file.FileSystem;
import java.nio.file.FileSystems;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import kingpost.notebook.Truss;
import kingpost.render.Showable;
import kingpost.truss.TrussBuilder;
import kingpost.units.Quantity;
import kingpost.units.StructuralUnits;
import org.junit.jupiter.api.Test;

/** Every public word of the notebook language has an example, and no example is of a word that is not there. */
class ExamplesTest {

    /** What the agent and libraries use; nobody writes it in a cell. */
    private static final Set<String> NO_WORDS = Set.of("CellDisplay", "CellDisplay.Sink", "CommRegistry", "NamesInQuotes",
            "Comm.registry");
    /** Methods that every value has. */
    private static final Set<String> COMMON = Set.of("equals", "hashCode", "toString");

    private final Examples examples = Examples.ofTheNotebookLanguage();

    private static List<Class<?>> types() throws IOException, URISyntaxException {
        List<Class<?>> types = new ArrayList<>(List.of(Quantity.class, TrussBuilder.class, StructuralUnits.class));
        Path place = Path.of(Truss.class.getProtectionDomain().getCodeSource().getLocation().toURI());
        if (Files.isDirectory(place)) {
            collect(place.resolve("kingpost/notebook"), types);
        } else {
            try (FileSystem jar = FileSystems.newFileSystem(place)) {
                collect(jar.getPath("kingpost/notebook"), types);
            }
        }
        return types.stream().filter(type -> Modifier.isPublic(type.getModifiers()) && !NO_WORDS.contains(name(type))).toList();
    }

    private static void collect(Path folder, List<Class<?>> types) throws IOException {
        try (Stream<Path> files = Files.list(folder)) {
            files.map(file -> file.getFileName().toString()).filter(file -> file.matches("[A-Z].*\\.class"))
                    .map(file -> "kingpost.notebook." + file.replace(".class", "")).map(ExamplesTest::type).forEach(types::add);
        }
    }

    private static Class<?> type(String name) {
        try {
            return Class.forName(name);
        } catch (ClassNotFoundException impossible) {
            throw new IllegalStateException(impossible);
        }
    }

    private static String name(Class<?> type) {
        return (type.getEnclosingClass() == null ? "" : name(type.getEnclosingClass()) + ".") + type.getSimpleName();
    }

    private static List<Method> words(Class<?> type) {
        return Arrays.stream(type.getDeclaredMethods()).filter(method -> Modifier.isPublic(method.getModifiers())
                && !method.isSynthetic() && !COMMON.contains(method.getName()) && !isShown(type, method)
                && !NO_WORDS.contains(name(type) + "." + method.getName())).toList();
    }

    /** What the front end asks a value for, and the names that completion asks it for. */
    private static boolean isShown(Class<?> type, Method method) {
        return Showable.class.isAssignableFrom(type) && method.getName().equals("show")
                || method.getName().equals("names") && method.getReturnType() == List.class && method.getParameterCount() == 1;
    }

    private static String member(Executable method) {
        return method.getName() + Arrays.stream(method.getParameterTypes()).map(Class::getSimpleName)
                .collect(Collectors.joining(",", "(", ")"));
    }

    private static List<Field> constants(Class<?> type) {
        return Arrays.stream(type.getDeclaredFields()).filter(field -> Modifier.isPublic(field.getModifiers())).toList();
    }

    @Test
    void thereIsOneOfEveryPublicTypeMethodAndConstant() throws Exception {
        var missing = new ArrayList<String>();
        for (Class<?> type : types()) {
            if (examples.of(name(type), "").isEmpty()) {
                missing.add(name(type));
            }
            words(type).stream().map(ExamplesTest::member).filter(member -> examples.of(name(type), member).isEmpty())
                    .forEach(member -> missing.add(name(type) + "." + member));
            constants(type).stream().map(Field::getName).filter(field -> examples.of(name(type), field).isEmpty())
                    .forEach(field -> missing.add(name(type) + "." + field));
        }
        assertEquals(List.of(), missing);
    }

    @Test
    void eachShowsTheWordItIsOf() throws Exception {
        var silent = new ArrayList<String>();
        for (Class<?> type : types()) {
            for (Method method : words(type)) {
                String code = examples.of(name(type), member(method)).orElseThrow().code();
                // what every loop calls is not written
                if (!code.contains(method.getName() + "(") && !method.getName().equals("iterator")) {
                    silent.add(name(type) + "." + member(method));
                }
            }
        }
        assertEquals(List.of(), silent);
    }

    @Test
    void noneIsOfAWordThatIsNotThere() throws Exception {
        Map<String, Class<?>> byName = types().stream().collect(Collectors.toMap(ExamplesTest::name, type -> type));
        for (String name : examples.all().keySet()) {
            boolean there = name.equals("!") || byName.containsKey(name) || byName.entrySet().stream()
                    .anyMatch(type -> name.startsWith(type.getKey() + ".") && has(type.getValue(),
                            name.substring(type.getKey().length() + 1)));
            assertTrue(there, name);
        }
    }

    private static boolean has(Class<?> type, String word) {
        return word.equals("*") || words(type).stream().anyMatch(method -> word.equals(method.getName())
                || word.equals(member(method))) || constants(type).stream().anyMatch(field -> word.equals(field.getName()));
    }
}
