package kingpost.kernel.session;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import kingpost.kernel.message.Replies.PastCell;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class SqliteHistoryTest extends HistoryStoreContract {

    @TempDir
    Path folder;

    private Path file() {
        return folder.resolve("new/history.sqlite");
    }

    @Override
    HistoryStore open() {
        return new SqliteHistory(file());
    }

    @Test
    void keepsCellsAcrossSessions() {
        store.close();
        store = open();
        store.add(1, "later");
        assertEquals("a + 1", store.range(-1, 2, Optional.of(3)).get(0).input());
        assertEquals("later", store.range(0, 1, Optional.empty()).get(0).input());
        assertEquals(List.of("for (;;)\n  a[0]", "later"), inputs(store.tail(2)));
    }

    @Test
    void numbersSessionsThatShareTheFileApart() {
        try (HistoryStore other = open()) {
            other.add(1, "of the other");
            int mine = store.range(0, 1, Optional.empty()).get(0).session();
            int theirs = other.range(0, 1, Optional.empty()).get(0).session();
            assertNotEquals(mine, theirs);
            assertEquals(List.of("of the other"), inputs(store.range(theirs, 1, Optional.empty())));
        }
    }

    @Test
    void losesNothingWhenManySessionsWriteAtOnce() {
        List<HistoryStore> stores = new ArrayList<>(Stream.generate(this::open).limit(6).toList());
        stores.parallelStream().forEach(each -> {
            for (int line = 1; line <= 20; line++) {
                each.add(line, "cell " + line);
            }
            each.close();
        });
        assertEquals(6 * 20, store.search("cell *", Optional.empty(), false).size());
    }

    @Test
    void makesTheFileForItsOwnerOnly() throws IOException {
        store.tail(1);
        assertEquals("rw-------", PosixFilePermissions.toString(Files.getPosixFilePermissions(file())));
        assertEquals("rwx------", PosixFilePermissions.toString(Files.getPosixFilePermissions(file().getParent())));
    }

    @Test
    void leavesNoUnpackedLibraryBehind() throws IOException {
        store.tail(1);
        try (Stream<Path> files = Files.list(Path.of(System.getProperty("java.io.tmpdir")))) {
            assertFalse(files.anyMatch(path -> path.getFileName().toString().startsWith("kingpost-native-" + ProcessHandle.current().pid() + "-")));
        }
    }

    @Test
    void staysInMemoryWhenTheFileCannotBeUsed() throws IOException {
        Path broken = Files.writeString(folder.resolve("broken"), "this is no database, and long enough to be sure of it");
        try (HistoryStore memory = new SqliteHistory(broken)) {
            memory.add(1, "kept anyway");
            assertEquals(List.of("kept anyway"), inputs(memory.tail(3)));
            assertTrue(Files.readString(broken).startsWith("this is no database"));
        }
    }

    private static List<String> inputs(List<PastCell> cells) {
        return cells.stream().map(PastCell::input).toList();
    }
}
