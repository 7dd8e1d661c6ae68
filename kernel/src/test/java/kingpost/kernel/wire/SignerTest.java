package kingpost.kernel.wire;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.charset.StandardCharsets;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class SignerTest {

    private static final List<byte[]> PARTS = List.of(ascii("what do ya "), ascii("want "), ascii("for "), ascii("nothing?"));

    /** Published test vectors: RFC 2202, section 2, test case 2 (MD5) and section 3 (SHA-1); RFC 4231, section 4.3. */
    @ParameterizedTest
    @CsvSource({
        "hmac-md5,    750c783e6ab0b503eaa86e310a5db738",
        "hmac-sha1,   effcdf6ae5eb2fa2d27416d5f184df9c259a7c79",
        "hmac-sha224, a30e01098bc6dbbf45690f3a7e9e6d0f8bbea2a39e6148008fd05e44",
        "hmac-sha256, 5bdcc146bf60754e6a042426089575c75a003f089d2739839dec58b964ec3843",
        "hmac-sha384, af45d2e376484031617f78d2b58a6b1b9c7ef464f5a01b47e42ec3736322445e8e2240ca5e69e2c78b3239ecfab21649",
        "hmac-sha512, 164b7a7bfcf819e2e395fbe73b56e0a387bd64222e831fd610270cd7ea2505549758bf75c05a994a6d034f65f8f0e6fd"
            + "caeab1a34d4a6b4b636e070a38bce737"})
    void signsAsPublished(String scheme, String digest) {
        assertEquals(digest, new String(Signer.of(scheme, "Jefe").sign(PARTS), StandardCharsets.US_ASCII));
        assertTrue(Signer.of(scheme, "Jefe").verifies(ascii(digest), PARTS));
    }

    @ParameterizedTest
    @ValueSource(strings = {"hmac-sha512_256", "hmac-sha3_256", "hmac-SHA256"})
    void knowsTheOtherHashesOfJava(String scheme) {
        Signer signer = Signer.of(scheme, "k");
        assertTrue(signer.verifies(signer.sign(PARTS), PARTS));
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "sha256", "hmac-", "hmac-crc32", "hmac-blake2b"})
    void refusesAnUnknownScheme(String scheme) {
        String message = assertThrows(ConnectionFileException.class, () -> Signer.of(scheme, "k")).getMessage();
        assertEquals("signature_scheme \"" + scheme + "\" is unknown; use hmac-sha256.", message);
    }

    @Test
    void refusesAnySignatureButTheRightOne() {
        Signer signer = Signer.of("hmac-sha256", "Jefe");
        byte[] good = signer.sign(PARTS);
        for (int i = 0; i < good.length; i++) {
            byte[] bad = good.clone();
            bad[i] ^= 1;
            assertFalse(signer.verifies(bad, PARTS));
        }
        assertFalse(signer.verifies(new byte[0], PARTS));
        assertFalse(signer.verifies(ascii(new String(good, StandardCharsets.US_ASCII).toUpperCase()), PARTS));
    }

    @Test
    void checksNothingWithoutAKey() {
        Signer signer = Signer.of("hmac-sha256", "");
        assertEquals(0, signer.sign(PARTS).length);
        assertTrue(signer.verifies(ascii("anything"), PARTS));
    }

    @Test
    void neverShowsTheKey() {
        assertFalse(Signer.of("hmac-sha256", "secret").toString().contains("secret"));
    }

    private static byte[] ascii(String text) {
        return text.getBytes(StandardCharsets.US_ASCII);
    }
}
