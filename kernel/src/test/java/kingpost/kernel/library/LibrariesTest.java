package kingpost.kernel.library;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.util.ArrayList;
import java.util.HexFormat;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Against a repository in a folder, which the settings name as the mirror of every other. */
class LibrariesTest {

    @TempDir
    Path home;

    private final List<String> progress = new ArrayList<>();

    @BeforeEach
    void publish() throws Exception {
        settings("");
        publish("org.shapes", "circle", "1.2", "<dependency><groupId>org.shapes</groupId>"
                + "<artifactId>round</artifactId><version>3</version></dependency>"
                + "<dependency><groupId>org.shapes</groupId><artifactId>only-for-tests</artifactId>"
                + "<version>3</version><scope>test</scope></dependency>");
        publish("org.shapes", "round", "3", "");
    }

    private void settings(String more) throws IOException {
        Files.createDirectories(home.resolve(".m2"));
        Files.writeString(home.resolve(".m2/settings.xml"), "<settings>" + more + "<mirrors><mirror><id>folder</id>"
                + "<mirrorOf>*</mirrorOf><url>" + home.resolve("shelf").toUri() + "</url></mirror></mirrors></settings>");
    }

    private Path folder(String group, String artifact, String version) {
        return home.resolve("shelf").resolve(group.replace('.', '/')).resolve(artifact).resolve(version);
    }

    private void publish(String group, String artifact, String version, String dependencies) throws Exception {
        Path folder = Files.createDirectories(folder(group, artifact, version));
        write(folder.resolve(artifact + "-" + version + ".pom"), "<project><modelVersion>4.0.0</modelVersion><groupId>"
                + group + "</groupId><artifactId>" + artifact + "</artifactId><version>" + version
                + "</version><dependencies>" + dependencies + "</dependencies></project>");
        write(folder.resolve(artifact + "-" + version + ".jar"), "the bytes of " + artifact);
    }

    private static void write(Path file, String text) throws Exception {
        Files.writeString(file, text);
        Files.writeString(Path.of(file + ".sha1"), HexFormat.of().formatHex(
                MessageDigest.getInstance("SHA-1").digest(text.getBytes(StandardCharsets.UTF_8))));
    }

    private List<Path> fetch(String coordinates) {
        return new Libraries(home, progress::add).fetch(coordinates);
    }

    private String problemWith(String coordinates) {
        return assertThrows(LibraryProblem.class, () -> fetch(coordinates)).getMessage();
    }

    @Test
    void fetchesALibraryAndWhatItNeedsAtRunTime() throws Exception {
        List<Path> jars = fetch("org.shapes:circle:1.2");

        assertEquals(List.of("circle-1.2.jar", "round-3.jar"), jars.stream().map(p -> p.getFileName().toString()).toList());
        assertEquals("the bytes of circle", Files.readString(jars.get(0)));
        assertTrue(jars.get(0).startsWith(home.resolve(".m2/repository")), jars.get(0)::toString);
        assertTrue(progress.contains("Fetched circle-1.2.jar (1 KB)"), progress::toString);
    }

    @Test
    void needsNoRepositoryForWhatIsInTheStore() throws Exception {
        fetch("org.shapes:circle:1.2");
        settings("<offline>true</offline>");
        progress.clear();

        assertEquals(2, fetch("org.shapes:circle:1.2").size());
        assertEquals(List.of(), progress);
    }

    @Test
    void saysThatNoRepositoryHasIt() {
        assertEquals("Library org.shapes:circle:9: no repository has org.shapes:circle:9; "
                + "check the spelling and the version.", problemWith("org.shapes:circle:9"));
    }

    @Test
    void saysThatItIsOffline() throws Exception {
        settings("<offline>true</offline>");
        assertEquals("Library org.shapes:circle:1.2: it is not in the store, and Maven's settings say offline; "
                + "go online, or add the jar with addClassPath(\"path/to.jar\").", problemWith("org.shapes:circle:1.2"));
    }

    @Test
    void refusesAFileThatIsNotWhatItsChecksumSays() throws Exception {
        Files.writeString(folder("org.shapes", "round", "3").resolve("round-3.jar"), "something else");
        assertEquals("Library org.shapes:circle:1.2: what came does not have the checksum that its repository states; "
                + "nothing was added, so try again later.", problemWith("org.shapes:circle:1.2"));
    }

    @Test
    void saysThatNothingCanBeReached() throws Exception {
        Files.writeString(home.resolve(".m2/settings.xml"), "<settings><mirrors><mirror><id>closed</id>"
                + "<mirrorOf>*</mirrorOf><url>http://127.0.0.1:1/</url></mirror></mirrors></settings>");
        String problem = problemWith("org.shapes:circle:1.2");
        assertTrue(problem.startsWith("Library org.shapes:circle:1.2: it could not be fetched ("), problem);
        assertTrue(problem.endsWith("); check the network, or add the jar with addClassPath(\"path/to.jar\")."), problem);
    }

    @Test
    void refusesWhatAreNotCoordinates() {
        for (String wrong : List.of("", "shapes", "org.shapes:circle", "a:b:c:d", "a:b:c d", "../x:y:1")) {
            assertTrue(problemWith(wrong).contains("these are not Maven coordinates"), wrong);
        }
    }

    @Test
    void saysThatTheSettingsCannotBeRead() throws Exception {
        Files.writeString(home.resolve(".m2/settings.xml"), "<settings>");
        assertTrue(problemWith("org.shapes:circle:1.2").startsWith(home.resolve(".m2/settings.xml")
                + ": Maven's settings cannot be read: "));
    }
}
