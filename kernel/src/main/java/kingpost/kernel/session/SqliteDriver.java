package kingpost.kernel.session;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.FileSystems;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.FileAttribute;
import java.nio.file.attribute.PosixFilePermissions;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.SQLException;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Stream;

/**
 * Opens SQLite files for their owner only. The driver unpacks its native library into a folder of this process that
 * is removed as soon as the library is loaded, so that a kernel which is killed leaves nothing behind.
 */
final class SqliteDriver {

    private static final String UNPACK_PROPERTY = "org.sqlite.tmpdir";

    private SqliteDriver() { }

    /**
     * @throws HistoryException when file or driver cannot be used
     */
    static Connection connect(Path file) throws SQLException {
        try {
            createForOwner(file);
            Path unpacked = Files.createTempDirectory("kingpost-native-" + ProcessHandle.current().pid() + "-");
            System.setProperty(UNPACK_PROPERTY, unpacked.toString());
            try {
                return DriverManager.getConnection("jdbc:sqlite:" + file);
            } finally {
                remove(unpacked);
            }
        } catch (IOException | UncheckedIOException e) {
            throw new HistoryException("cannot be made (" + e + ")", e);
        }
    }

    private static void createForOwner(Path file) throws IOException {
        boolean owned = FileSystems.getDefault().supportedFileAttributeViews().contains("posix");
        Path folder = file.toAbsolutePath().getParent();
        if (!Files.isDirectory(folder)) {
            Files.createDirectories(folder, rights(owned, "rwx------"));
        }
        if (!Files.exists(file)) {
            createUnlessAnotherKernelDoes(file, rights(owned, "rw-------"));
        } else if (owned) {
            Files.setPosixFilePermissions(file, PosixFilePermissions.fromString("rw-------"));
        }
    }

    private static void createUnlessAnotherKernelDoes(Path file, FileAttribute<?>... rights) throws IOException {
        try {
            Files.createFile(file, rights);
        } catch (FileAlreadyExistsException e) {
            // made in this moment, with the same rights
        }
    }

    private static FileAttribute<?>[] rights(boolean owned, String rights) {
        return owned ? new FileAttribute<?>[] {PosixFilePermissions.asFileAttribute(
                PosixFilePermissions.fromString(rights))} : new FileAttribute<?>[0];
    }

    /** Where a loaded library cannot be removed (Windows), it goes when the process ends. */
    private static void remove(Path folder) throws IOException {
        List<Path> files;
        try (Stream<Path> found = Files.walk(folder)) {
            files = found.sorted(Comparator.reverseOrder()).toList();
        }
        for (Path file : files) {
            if (!file.toFile().delete()) {
                file.toFile().deleteOnExit();
            }
        }
    }
}
