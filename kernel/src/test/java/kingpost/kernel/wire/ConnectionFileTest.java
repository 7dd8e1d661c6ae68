package kingpost.kernel.wire;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.LinkedHashMap;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class ConnectionFileTest {

    @TempDir
    Path folder;

    @Test
    void readsWhatAFrontEndWrites() throws IOException {
        ConnectionFile file = read(Map.of("jupyter_session", "/a.ipynb", "kernel_name", "kingpost", "new_field", 1));
        assertEquals("127.0.0.1", file.ip());
        assertEquals(new ConnectionFile.Ports(1, 2, 3, 4, 5), file.ports());
        assertTrue(file.signer().signs());
    }

    @Test
    void takesPortsAsText() throws IOException {
        assertEquals(50_001, read(Map.of("shell_port", "50001")).ports().shell());
    }

    @Test
    void staysOnLoopbackUnlessTheFileNamesAnAddress() throws IOException {
        Map<String, Object> fields = fields();
        fields.remove("ip");
        assertEquals("127.0.0.1", read(write(fields)).ip());
        assertEquals("0.0.0.0", read(Map.of("ip", "0.0.0.0")).ip());
    }

    @Test
    void signsWithSha256WhenNoSchemeIsNamed() throws IOException {
        Map<String, Object> fields = fields();
        fields.remove("signature_scheme");
        assertEquals("Signer[HmacSHA256]", read(write(fields)).signer().toString());
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {
        "transport        | udp      | transport \"udp\" is unknown; use tcp or ipc.",
        "curve_publickey  | abc      | CURVE",
        "curve_secretkey  | abc      | CURVE",
        "registration_port| 5000     | protocol 5.6",
        "signature_scheme | plain    | signature_scheme \"plain\" is unknown",
        "iopub_port       | 70000    | iopub_port is \"70000\"; give a port from 0 to 65535.",
        "hb_port          | none     | hb_port is \"none\"; give a port from 0 to 65535."})
    void refusesWhatItCannotDo(String field, String value, String words) {
        String message = assertThrows(ConnectionFileException.class, () -> read(Map.of(field, value))).getMessage();
        assertTrue(message.startsWith("Connection file " + folder) && message.contains(words), message);
        assertFalse(message.contains("the key"), message);
        assertEquals(1, message.lines().count());
    }

    @Test
    void namesAPortThatIsAbsent() throws IOException {
        Map<String, Object> fields = fields();
        fields.remove("stdin_port");
        Path path = write(fields);
        assertTrue(assertThrows(ConnectionFileException.class, () -> read(path)).getMessage()
                .endsWith("stdin_port is absent; give a port from 0 to 65535."));
    }

    @Test
    void saysThatAFileIsMissingOrNoConnectionFile() throws IOException {
        assertTrue(assertThrows(ConnectionFileException.class, () -> read(folder.resolve("none.json"))).getMessage()
                .contains("there is no such file"));
        Path text = Files.writeString(folder.resolve("text.json"), "hello");
        assertTrue(assertThrows(ConnectionFileException.class, () -> read(text)).getMessage()
                .contains("is not a JSON object"));
    }

    @Test
    void writesThePortsThatWereFreeForItsOwnerOnly() throws IOException {
        Path path = write(fields());
        read(path).withPorts(new ConnectionFile.Ports(11, 12, 13, 14, 15), path);
        Map<String, Object> written = Json.readObject(Files.readString(path));
        assertEquals(12L, written.get("iopub_port"));
        assertEquals("the key", written.get("key"));
        assertEquals("rw-------", PosixFilePermissions.toString(Files.getPosixFilePermissions(path)));
    }

    @Test
    void neverShowsTheKey() throws IOException {
        assertFalse(read(Map.of()).toString().contains("the key"));
    }

    private ConnectionFile read(Map<String, Object> more) throws IOException {
        Map<String, Object> fields = fields();
        fields.putAll(more);
        return read(write(fields));
    }

    private static ConnectionFile read(Path path) {
        return ConnectionFile.read(path);
    }

    private Path write(Map<String, Object> fields) throws IOException {
        return Files.writeString(folder.resolve("connection.json"), Json.write(fields));
    }

    private static Map<String, Object> fields() {
        return new LinkedHashMap<>(Map.of("transport", "tcp", "ip", "127.0.0.1", "shell_port", 1, "iopub_port", 2,
                "stdin_port", 3, "control_port", 4, "hb_port", 5, "key", "the key",
                "signature_scheme", "hmac-sha256"));
    }
}
