package kingpost.kernel.document;

import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;

/**
 * A mark of what went into a run: two runs with the same mark were given the same cells and the same parameters.
 *
 * <p>Source: FIPS 180-4, SHA-256, over the kind, the length and the text of each cell in order.
 */
public final class Inputs {

    /** Digits that a page shows: enough to tell runs apart by eye. */
    private static final int SHOWN = 12;

    private Inputs() {
    }

    /** The whole mark in hexadecimal digits. */
    public static String hash(Notebook notebook) {
        MessageDigest digest = sha256();
        for (Cell cell : notebook.cells()) {
            byte[] text = cell.source().getBytes(StandardCharsets.UTF_8);
            String kind = cell instanceof Cell.Code ? "code" : cell instanceof Cell.Markdown ? "markdown" : "raw";
            digest.update((kind + " " + text.length + "\n").getBytes(StandardCharsets.UTF_8));
            digest.update(text);
        }
        return HexFormat.of().formatHex(digest.digest());
    }

    /** The beginning of a mark, as a page shows it. */
    public static String shortened(String hash) {
        return hash.substring(0, SHOWN);
    }

    private static MessageDigest sha256() {
        try {
            return MessageDigest.getInstance("SHA-256");
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException("every JDK has SHA-256", e);
        }
    }
}
