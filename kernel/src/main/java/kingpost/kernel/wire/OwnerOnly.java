package kingpost.kernel.wire;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.FileSystems;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.attribute.FileAttribute;
import java.nio.file.attribute.PosixFilePermissions;

/** Files that hold a secret. */
final class OwnerOnly {

    private OwnerOnly() { }

    /** Puts a new file in place of the old in one step; where the system has owners, only this one may read it. */
    static void replace(Path path, String text) throws IOException {
        Path folder = path.toAbsolutePath().getParent();
        Path fresh = Files.createTempFile(folder, ".kingpost-", ".json", rights());
        try {
            Files.writeString(fresh, text, StandardCharsets.UTF_8);
            Files.move(fresh, path, StandardCopyOption.REPLACE_EXISTING, StandardCopyOption.ATOMIC_MOVE);
        } finally {
            Files.deleteIfExists(fresh);
        }
    }

    private static FileAttribute<?>[] rights() {
        return FileSystems.getDefault().supportedFileAttributeViews().contains("posix")
                ? new FileAttribute<?>[] {PosixFilePermissions.asFileAttribute(
                        PosixFilePermissions.fromString("rw-------"))}
                : new FileAttribute<?>[0];
    }
}
