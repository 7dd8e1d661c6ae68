package kingpost.kernel.agent;

import java.io.IOException;
import java.io.InputStream;
import java.lang.invoke.MethodHandles;
import java.net.URL;
import java.net.URLClassLoader;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.concurrent.ConcurrentNavigableMap;
import java.util.concurrent.ConcurrentSkipListMap;

/** Loads what JShell compiled from cells, and the libraries that cells added. */
final class CellLoader extends URLClassLoader {

    private static final String ANCHOR = "REPL.CellAnchor";
    /** Before Java 19 a lambda cannot call its body in a hidden class. */
    private static final boolean LAMBDAS_MAY_HIDE = Runtime.version().feature() >= 19;

    private final ConcurrentNavigableMap<String, byte[]> compiled = new ConcurrentSkipListMap<>();
    private MethodHandles.Lookup besideCells;

    CellLoader(ClassLoader parent) {
        super("cells", new URL[0], parent);
    }

    void keep(String name, byte[] bytes) {
        compiled.put(name, bytes);
    }

    void add(String path) {
        try {
            addURL(Path.of(path).toUri().toURL());
        } catch (java.net.MalformedURLException impossible) {
            throw new IllegalArgumentException(path + ": not a usable path.", impossible);
        }
    }

    /**
     * A class that is called once and that no other class names: as a hidden class, which the VM forgets when nothing
     * that it made is left. A class with others nested in it stays, because those name it.
     */
    Class<?> loadForOnce(String name) throws ReflectiveOperationException, IOException {
        String next = compiled.higherKey(name);
        boolean alone = next == null || !next.startsWith(name + "$");
        byte[] bytes = compiled.get(name);
        if (bytes == null || !alone || !LAMBDAS_MAY_HIDE && hasLambdas(bytes)) {
            return loadClass(name);
        }
        compiled.remove(name);
        return besideCells().defineHiddenClass(bytes, false).lookupClass();
    }

    /** Looks for the names that the compiler gives to the bodies of lambdas. */
    private static boolean hasLambdas(byte[] classFile) {
        return new String(classFile, StandardCharsets.ISO_8859_1).contains("lambda$");
    }

    private MethodHandles.Lookup besideCells() throws ReflectiveOperationException, IOException {
        if (besideCells == null) {
            try (InputStream in = getParent().getResourceAsStream(ANCHOR.replace('.', '/') + ".class")) {
                byte[] bytes = in.readAllBytes();
                Class<?> anchor = defineClass(ANCHOR, bytes, 0, bytes.length);
                besideCells = (MethodHandles.Lookup) anchor.getMethod("lookup").invoke(null);
            }
        }
        return besideCells;
    }

    @Override
    protected Class<?> findClass(String name) throws ClassNotFoundException {
        byte[] bytes = compiled.remove(name);
        return bytes == null ? super.findClass(name) : defineClass(name, bytes, 0, bytes.length);
    }
}
