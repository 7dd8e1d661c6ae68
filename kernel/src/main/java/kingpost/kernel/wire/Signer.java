package kingpost.kernel.wire;

import java.nio.charset.StandardCharsets;
import java.security.GeneralSecurityException;
import java.security.MessageDigest;
import java.util.HexFormat;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import javax.crypto.Mac;
import javax.crypto.spec.SecretKeySpec;

/**
 * Signs the four serialised parts of a message and checks signatures in constant time. With an empty key nothing is
 * signed and nothing is checked. Safe for several threads.
 *
 * <p>Source: messaging protocol 5.5, "The wire protocol" (HMAC hex digest of header, parent header, metadata and
 * content, in this order); RFC 2104.
 */
public final class Signer {

    private static final Map<String, String> HASHES = Map.ofEntries(
            Map.entry("md5", "HmacMD5"), Map.entry("sha1", "HmacSHA1"), Map.entry("sha224", "HmacSHA224"),
            Map.entry("sha256", "HmacSHA256"), Map.entry("sha384", "HmacSHA384"), Map.entry("sha512", "HmacSHA512"),
            Map.entry("sha512_224", "HmacSHA512/224"), Map.entry("sha512_256", "HmacSHA512/256"),
            Map.entry("sha3_224", "HmacSHA3-224"), Map.entry("sha3_256", "HmacSHA3-256"),
            Map.entry("sha3_384", "HmacSHA3-384"), Map.entry("sha3_512", "HmacSHA3-512"));

    private final String algorithm;
    private final SecretKeySpec key;

    private Signer(String algorithm, SecretKeySpec key) {
        this.algorithm = algorithm;
        this.key = key;
    }

    /**
     * @param scheme {@code hmac-} and the name of a hash, such as {@code hmac-sha256}
     * @throws ConnectionFileException when the scheme is unknown here
     */
    public static Signer of(String scheme, String key) {
        String hash = scheme.startsWith("hmac-") ? scheme.substring("hmac-".length()) : "";
        String algorithm = HASHES.get(hash.toLowerCase(Locale.ROOT).replace("sha-", "sha").replace('-', '_'));
        if (algorithm == null) {
            throw new ConnectionFileException("signature_scheme \"" + scheme + "\" is unknown; use hmac-sha256.");
        }
        byte[] bytes = key.getBytes(StandardCharsets.UTF_8);
        Signer signer = new Signer(algorithm, bytes.length == 0 ? null : new SecretKeySpec(bytes, algorithm));
        signer.sign(List.of());
        return signer;
    }

    /** Whether messages are signed at all. */
    public boolean signs() {
        return key != null;
    }

    /** Lower-case hexadecimal digest as ASCII bytes; no bytes when nothing is signed. */
    public byte[] sign(List<byte[]> parts) {
        if (key == null) {
            return new byte[0];
        }
        try {
            Mac mac = Mac.getInstance(algorithm);
            mac.init(key);
            parts.forEach(mac::update);
            return HexFormat.of().formatHex(mac.doFinal()).getBytes(StandardCharsets.US_ASCII);
        } catch (GeneralSecurityException e) {
            throw new ConnectionFileException("signature_scheme: this Java has no " + algorithm
                    + "; use hmac-sha256.");
        }
    }

    /** Whether the signature fits the parts; takes as long for a near miss as for any other. */
    public boolean verifies(byte[] signature, List<byte[]> parts) {
        return key == null || MessageDigest.isEqual(sign(parts), signature);
    }

    /** Never the key. */
    @Override
    public String toString() {
        return "Signer[" + algorithm + (signs() ? "" : ", no key") + "]";
    }
}
