package kingpost.kernel.agent;

import java.net.URL;
import java.net.URLClassLoader;
import java.nio.file.Path;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;

/** Loads what JShell compiled from cells, and the libraries that cells added. */
final class CellLoader extends URLClassLoader {

    private final Map<String, byte[]> compiled = new ConcurrentHashMap<>();

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

    @Override
    protected Class<?> findClass(String name) throws ClassNotFoundException {
        byte[] bytes = compiled.remove(name);
        return bytes == null ? super.findClass(name) : defineClass(name, bytes, 0, bytes.length);
    }
}
