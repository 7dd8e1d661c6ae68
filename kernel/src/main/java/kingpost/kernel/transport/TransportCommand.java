package kingpost.kernel.transport;

import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.util.Set;

/**
 * Judges commands of the transport protocol: a length byte, the name, and data.
 *
 * <p>Source: ZMTP 3.0 (RFC 23), "The NULL security mechanism"; ZMTP 3.1 (RFC 37), "Commands" and "Connection
 * heartbeating".
 */
final class TransportCommand {

    private static final int PING_TTL = 2;
    private static final int LONGEST_PING_CONTEXT = 16;
    private static final int LONGEST_NAME = 32;

    private TransportCommand() { }

    /** A READY command whose properties are whole. */
    static boolean isReady(ByteBuffer command) {
        return name(command).equals("READY") && arePropertiesWhole(command);
    }

    /** A command that may come after READY. */
    static boolean isOfAConversation(ByteBuffer command) {
        String name = name(command);
        int data = command.remaining();
        return switch (name) {
            case "PING" -> data >= PING_TTL && data <= PING_TTL + LONGEST_PING_CONTEXT;
            case "PONG" -> data <= LONGEST_PING_CONTEXT;
            default -> Set.of("SUBSCRIBE", "CANCEL").contains(name);
        };
    }

    private static String name(ByteBuffer command) {
        int length = command.get() & 0xff;
        if (length == 0 || length > LONGEST_NAME || length > command.remaining()) {
            return "";
        }
        byte[] name = new byte[length];
        command.get(name);
        return new String(name, StandardCharsets.US_ASCII);
    }

    private static boolean arePropertiesWhole(ByteBuffer data) {
        while (data.hasRemaining()) {
            int name = data.get() & 0xff;
            if (name == 0 || data.remaining() < name + Integer.BYTES) {
                return false;
            }
            data.position(data.position() + name);
            int value = data.getInt();
            if (value < 0 || value > data.remaining()) {
                return false;
            }
            data.position(data.position() + value);
        }
        return true;
    }
}
