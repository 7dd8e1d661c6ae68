package kingpost.kernel.wire;

import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import kingpost.kernel.message.ContentException;
import kingpost.kernel.message.Frame;
import kingpost.kernel.message.Header;
import kingpost.kernel.message.Message;

/**
 * Messages to and from frames: identities, {@code <IDS|MSG>}, signature, header, parent header, metadata, content,
 * buffers. What is received is judged in this order: shape, signature over the bytes as they came, UTF-8 and JSON,
 * header; a message that fails is never looked at further. Safe for several threads; the signatures seen are common
 * to all channels.
 *
 * <p>Source: messaging protocol 5.5, "The wire protocol".
 */
public final class WireFormat {

    private static final byte[] DELIMITER = "<IDS|MSG>".getBytes(StandardCharsets.US_ASCII);
    private static final int SIGNED_PARTS = 4;

    private final Signer signer;
    private final SeenSignatures seen;

    public WireFormat(Signer signer) {
        this(signer, SeenSignatures.DEFAULT_CAPACITY);
    }

    WireFormat(Signer signer, int rememberedSignatures) {
        this.signer = signer;
        this.seen = new SeenSignatures(rememberedSignatures);
    }

    /** The frames of a message, ready to send. */
    public List<byte[]> write(Message message) {
        List<byte[]> parts = List.of(json(message.header().fields()),
                json(message.parent().map(Header::fields).orElse(Map.of())),
                json(message.metadata()), json(message.content()));
        List<byte[]> frames = new ArrayList<>();
        message.identities().forEach(identity -> frames.add(identity.bytes()));
        frames.add(DELIMITER.clone());
        frames.add(signer.sign(parts));
        frames.addAll(parts);
        message.buffers().forEach(buffer -> frames.add(buffer.bytes()));
        return frames;
    }

    /** What these frames are; a message is accepted only once. */
    public Reading read(List<byte[]> frames) {
        int delimiter = delimiter(frames);
        if (delimiter < 0) {
            return new Reading.Refused(Reading.Reason.NO_DELIMITER);
        }
        int buffers = delimiter + 2 + SIGNED_PARTS;
        if (frames.size() < buffers) {
            return new Reading.Refused(Reading.Reason.TOO_FEW_FRAMES);
        }
        byte[] signature = frames.get(delimiter + 1);
        List<byte[]> parts = frames.subList(delimiter + 2, buffers);
        return doubt(signature, parts).<Reading>map(Reading.Refused::new).orElseGet(() ->
                parse(frames.subList(0, delimiter), parts, frames.subList(buffers, frames.size())));
    }

    private Optional<Reading.Reason> doubt(byte[] signature, List<byte[]> parts) {
        if (!signer.signs()) {
            return Optional.empty();
        }
        if (signature.length == 0) {
            return Optional.of(Reading.Reason.UNSIGNED);
        }
        if (!signer.verifies(signature, parts)) {
            return Optional.of(Reading.Reason.WRONG_SIGNATURE);
        }
        return seen.add(signature) ? Optional.empty() : Optional.of(Reading.Reason.REPLAYED);
    }

    private static Reading parse(List<byte[]> identities, List<byte[]> parts, List<byte[]> buffers) {
        try {
            Header header = new Header(object(parts.get(0)));
            return new Reading.Accepted(new Message(Frame.listOf(identities), header, parent(object(parts.get(1))),
                    object(parts.get(2)), object(parts.get(3)), Frame.listOf(buffers)));
        } catch (CharacterCodingException e) {
            return new Reading.Refused(Reading.Reason.NOT_TEXT);
        } catch (ContentException e) {
            return new Reading.Refused(Reading.Reason.NO_TYPE);
        } catch (IllegalArgumentException e) {
            return new Reading.Refused(Reading.Reason.NOT_JSON);
        }
    }

    private static Optional<Header> parent(Map<String, Object> fields) {
        boolean usable = fields.get("msg_id") instanceof String && fields.get("msg_type") instanceof String;
        return usable ? Optional.of(new Header(fields)) : Optional.empty();
    }

    private static Map<String, Object> object(byte[] part) throws CharacterCodingException {
        String text = StandardCharsets.UTF_8.newDecoder().decode(ByteBuffer.wrap(part)).toString();
        return Json.readObject(text);
    }

    /** UTF-8 text; half a surrogate pair, which UTF-8 cannot hold, becomes a question mark. */
    private static byte[] json(Map<String, Object> tree) {
        return Json.write(tree).getBytes(StandardCharsets.UTF_8);
    }

    private static int delimiter(List<byte[]> frames) {
        for (int i = 0; i < frames.size(); i++) {
            if (Arrays.equals(frames.get(i), DELIMITER)) {
                return i;
            }
        }
        return -1;
    }
}
