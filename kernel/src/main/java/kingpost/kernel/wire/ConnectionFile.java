package kingpost.kernel.wire;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Objects;

/**
 * Where to listen and with which key to sign: what a front end writes before it starts the kernel. Fields that are
 * not known here are ignored, and kept when the file is written again.
 *
 * <p>Source: messaging protocol 5.5, "Connection files"; the schema in enhancement proposal 66.
 *
 * @param transport TCP ports or Unix sockets
 * @param ip        address to bind, loopback unless the file names another; for Unix sockets the beginning of their
 *                  paths
 * @param ports     the five ports; 0 means any free one
 * @param signer    how messages are signed
 * @param fields    the file as it was read
 */
public record ConnectionFile(Transport transport, String ip, Ports ports, Signer signer, Map<String, Object> fields) {

    /** The address when the file names none. */
    public static final String LOOPBACK = "127.0.0.1";
    private static final String IPC_NAME = "kernel-ipc";

    /** How clients reach the kernel. */
    public enum Transport { TCP, IPC }

    public ConnectionFile {
        Objects.requireNonNull(transport, "transport");
        Objects.requireNonNull(ip, "ip");
        Objects.requireNonNull(ports, "ports");
        Objects.requireNonNull(signer, "signer");
        fields = new LinkedHashMap<>(fields);
    }

    /** TCP ports of the five sockets. */
    public record Ports(int shell, int iopub, int stdin, int control, int heartbeat) {

        /** By the protocol's names, in the protocol's order. */
        public Map<String, Integer> byName() {
            Map<String, Integer> map = new LinkedHashMap<>();
            map.put("shell_port", shell);
            map.put("iopub_port", iopub);
            map.put("stdin_port", stdin);
            map.put("control_port", control);
            map.put("hb_port", heartbeat);
            return map;
        }
    }

    /**
     * @throws ConnectionFileException when the file cannot be read, is no connection file, or asks for what is not
     *                                 supported
     */
    public static ConnectionFile read(Path path) {
        try {
            return parse(Json.readObject(Files.readString(path, StandardCharsets.UTF_8)));
        } catch (NoSuchFileException e) {
            throw new ConnectionFileException("Connection file " + path + ": there is no such file; give the one that"
                    + " the front end has written.");
        } catch (IOException e) {
            throw new ConnectionFileException("Connection file " + path + ": cannot be read ("
                    + e.getClass().getSimpleName() + "); check its rights and that it is text.");
        } catch (ConnectionFileException e) {
            throw new ConnectionFileException("Connection file " + path + ": " + e.getMessage());
        } catch (IllegalArgumentException e) {
            throw new ConnectionFileException("Connection file " + path
                    + ": is not a JSON object; give the one that the front end has written.");
        }
    }

    /** The same with these ports, and the file rewritten for its owner only, so that clients find them. */
    public ConnectionFile withPorts(Ports bound, Path path) {
        Map<String, Object> changed = new LinkedHashMap<>(fields);
        changed.putAll(bound.byName());
        try {
            OwnerOnly.replace(path, Json.write(changed));
        } catch (IOException e) {
            throw new ConnectionFileException("Connection file " + path + ": the ports that were free cannot be"
                    + " written to it (" + e.getClass().getSimpleName() + "); check the rights of its folder.");
        }
        return new ConnectionFile(transport, ip, bound, signer, changed);
    }

    /** Never the key. */
    @Override
    public String toString() {
        return "ConnectionFile[" + transport + " " + ip + ", " + ports + ", " + signer + "]";
    }

    private static ConnectionFile parse(Map<String, Object> fields) {
        refuseWhatIsNotSupported(fields);
        Ports ports = new Ports(port(fields, "shell_port"), port(fields, "iopub_port"), port(fields, "stdin_port"),
                port(fields, "control_port"), port(fields, "hb_port"));
        Transport transport = transport(fields);
        return new ConnectionFile(transport, text(fields, "ip", transport == Transport.TCP ? LOOPBACK : IPC_NAME),
                ports, Signer.of(text(fields, "signature_scheme", "hmac-sha256"), text(fields, "key", "")), fields);
    }

    private static void refuseWhatIsNotSupported(Map<String, Object> fields) {
        if (present(fields, "curve_publickey") || present(fields, "curve_secretkey")) {
            throw new ConnectionFileException("asks for CURVE encryption, which is not supported, and the kernel does"
                    + " not fall back to plain text; start it without curve_publickey and curve_secretkey.");
        }
        if (present(fields, "registration_port")) {
            throw new ConnectionFileException("asks the kernel to register itself (protocol 5.6), which is not"
                    + " supported; give the five ports.");
        }
    }

    private static Transport transport(Map<String, Object> fields) {
        String name = text(fields, "transport", "tcp");
        return switch (name) {
            case "tcp" -> Transport.TCP;
            case "ipc" -> Transport.IPC;
            default -> throw new ConnectionFileException("transport \"" + name + "\" is unknown; use tcp or ipc.");
        };
    }

    private static boolean present(Map<String, Object> fields, String name) {
        Object value = fields.get(name);
        return value != null && !"".equals(value);
    }

    private static String text(Map<String, Object> fields, String name, String byDefault) {
        Object value = fields.getOrDefault(name, byDefault);
        if (value == null) {
            return byDefault;
        }
        if (!(value instanceof String text)) {
            throw new ConnectionFileException(name + " is no text; give it in quotes.");
        }
        return text.isEmpty() && !name.equals("key") ? byDefault : text;
    }

    private static int port(Map<String, Object> fields, String name) {
        Object value = fields.get(name);
        if (value == null) {
            throw new ConnectionFileException(name + " is absent; give a port from 0 to 65535.");
        }
        try {
            int port = Integer.parseInt(value.toString().trim());
            if (port >= 0 && port <= 65_535) {
                return port;
            }
        } catch (NumberFormatException e) {
            // said below, as for a number out of range
        }
        throw new ConnectionFileException(name + " is " + Json.write(value) + "; give a port from 0 to 65535.");
    }
}
