package kingpost.kernel.wire;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.math.BigInteger;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class JsonTest {

    @Test
    void readsEveryKindOfValue() {
        Map<String, Object> expected = new LinkedHashMap<>();
        expected.put("count", 3L);
        expected.put("big", new BigInteger("123456789012345678901"));
        expected.put("ratio", 0.5);
        expected.put("yes", true);
        expected.put("nothing", null);
        expected.put("list", new ArrayList<>(List.of("σ", "\uD835\uDF0E")));
        assertEquals(expected, Json.read("{\"count\":3,\"big\":123456789012345678901,\"ratio\":5e-1,\"yes\":true,"
                + "\"nothing\":null,\"list\":[\"\\u03c3\",\"\uD835\uDF0E\"]}"));
    }

    @Test
    void writesWhatItReads() {
        String text = "{\"b\":[1,2.5,\"<x> & 'y'\"],\"a\":null}";
        assertEquals(text, Json.write(Json.read(text)));
    }

    @Test
    void writesNoNumberThatJsonLacks() {
        assertEquals("[null,null,1.5]", Json.write(List.of(Double.NaN, Double.NEGATIVE_INFINITY, 1.5)));
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "{", "{\"a\":1,}", "[1] [2]", "{'a':1}", "nul", "NaN", "\"open", "[01]"})
    void refusesTextThatIsNotJson(String text) {
        assertThrows(IllegalArgumentException.class, () -> Json.read(text));
    }

    @Test
    void refusesAnArrayWhereAnObjectIsWanted() {
        assertThrows(IllegalArgumentException.class, () -> Json.readObject("[]"));
    }
}
