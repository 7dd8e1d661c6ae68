package kingpost.kernel.pipe;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.DataInputStream;
import java.io.DataOutputStream;
import java.io.IOException;
import java.net.ProtocolException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * Frames as bytes: the kind's number, then the fields as one tagged list. Big-endian; text in UTF-8 with its length
 * in four bytes.
 */
final class FrameCodec {

    private static final int DEEPEST = 64;

    private FrameCodec() {
    }

    static byte[] encode(Frame frame) throws IOException {
        var bytes = new ByteArrayOutputStream(256);
        var out = new DataOutputStream(bytes);
        out.writeByte(frame.kind().ordinal());
        write(out, frame.fields(), 0);
        return bytes.toByteArray();
    }

    static Frame decode(byte[] bytes) throws IOException {
        var in = new DataInputStream(new ByteArrayInputStream(bytes));
        try {
            Kind kind = Kind.at(in.readUnsignedByte());
            if (!(read(in, 0) instanceof List<?> fields)) {
                throw new ProtocolException("Pipe: a frame's fields are not a list.");
            }
            return new Frame(kind, new ArrayList<>(fields));
        } catch (IllegalArgumentException malformed) {
            throw new ProtocolException(malformed.getMessage());
        }
    }

    private static void write(DataOutputStream out, Object value, int depth) throws IOException {
        if (depth > DEEPEST) {
            throw new ProtocolException("Pipe: a value is nested more than " + DEEPEST + " deep.");
        }
        if (value == null) {
            out.writeByte('n');
        } else if (value instanceof Boolean flag) {
            out.writeByte(flag ? 't' : 'f');
        } else if (value instanceof Long || value instanceof Integer || value instanceof Short
                || value instanceof Byte) {
            out.writeByte('l');
            out.writeLong(((Number) value).longValue());
        } else if (value instanceof Number number) {
            out.writeByte('d');
            out.writeDouble(number.doubleValue());
        } else if (value instanceof byte[] raw) {
            out.writeByte('b');
            bytes(out, raw);
        } else if (value instanceof List<?> list) {
            out.writeByte('[');
            out.writeInt(list.size());
            for (Object item : list) {
                write(out, item, depth + 1);
            }
        } else if (value instanceof Map<?, ?> map) {
            out.writeByte('{');
            out.writeInt(map.size());
            for (var entry : map.entrySet()) {
                bytes(out, String.valueOf(entry.getKey()).getBytes(StandardCharsets.UTF_8));
                write(out, entry.getValue(), depth + 1);
            }
        } else {
            out.writeByte('s');
            bytes(out, value.toString().getBytes(StandardCharsets.UTF_8));
        }
    }

    private static void bytes(DataOutputStream out, byte[] raw) throws IOException {
        out.writeInt(raw.length);
        out.write(raw);
    }

    private static Object read(DataInputStream in, int depth) throws IOException {
        if (depth > DEEPEST) {
            throw new ProtocolException("Pipe: a value is nested more than " + DEEPEST + " deep.");
        }
        int tag = in.readUnsignedByte();
        return switch (tag) {
            case 'n' -> null;
            case 't' -> true;
            case 'f' -> false;
            case 'l' -> narrowed(in.readLong());
            case 'd' -> in.readDouble();
            case 'b' -> bytes(in);
            case 's' -> text(in);
            case '[' -> list(in, depth);
            case '{' -> map(in, depth);
            default -> throw new ProtocolException("Pipe: no value has tag " + tag + ".");
        };
    }

    private static Object narrowed(long value) {
        return value == (int) value ? (Object) (int) value : (Object) value;
    }

    private static List<Object> list(DataInputStream in, int depth) throws IOException {
        int size = size(in);
        var list = new ArrayList<>(Math.min(size, 1024));
        for (int i = 0; i < size; i++) {
            list.add(read(in, depth + 1));
        }
        return list;
    }

    private static Map<String, Object> map(DataInputStream in, int depth) throws IOException {
        int size = size(in);
        var map = new LinkedHashMap<String, Object>();
        for (int i = 0; i < size; i++) {
            map.put(text(in), read(in, depth + 1));
        }
        return map;
    }

    private static String text(DataInputStream in) throws IOException {
        return new String(bytes(in), StandardCharsets.UTF_8);
    }

    private static byte[] bytes(DataInputStream in) throws IOException {
        byte[] raw = new byte[size(in)];
        in.readFully(raw);
        return raw;
    }

    /** A length, which cannot be more than the bytes that are left in the frame. */
    private static int size(DataInputStream in) throws IOException {
        int size = in.readInt();
        if (size < 0 || size > in.available()) {
            throw new ProtocolException("Pipe: a length of " + size + " does not fit its frame.");
        }
        return size;
    }
}
