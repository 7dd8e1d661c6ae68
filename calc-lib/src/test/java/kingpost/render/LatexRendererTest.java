package kingpost.render;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

import java.util.ArrayDeque;
import java.util.Deque;
import java.util.List;
import java.util.TreeMap;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

class LatexRendererTest extends RendererContract {

    private static final Pattern COMMAND = Pattern.compile("\\\\([A-Za-z]+)");
    private static final List<String> DANGEROUS = List.of("input", "include", "write", "def", "catcode", "openout",
            "csname", "let", "read", "secret");

    @Override
    Renderer renderer() {
        return new LatexRenderer();
    }

    @Override
    String extension() {
        return "tex";
    }

    /** Only commands that print a character may be added by a text. */
    @Override
    void assertNoMarkupFrom(String text, String rendered) {
        for (Map.Entry<String, Integer> each : commands(rendered).entrySet()) {
            assertFalse(DANGEROUS.contains(each.getKey()), each.getKey());
        }
        int environments = commands(renderer().render(SampleDerivations.saying("harmless"))).get("begin");
        assertEquals(environments, commands(rendered).get("begin"));
    }

    private static Map<String, Integer> commands(String tex) {
        Map<String, Integer> counts = new TreeMap<>();
        Matcher command = COMMAND.matcher(tex);
        while (command.find()) {
            counts.merge(command.group(1), 1, Integer::sum);
        }
        return counts;
    }

    /** Braces and environments close in order, and no comment or special character stands bare. */
    @Override
    void assertWellFormed(String rendered) {
        String bare = rendered.replaceAll("\\\\[\\\\{}$&#%_]", "");
        assertFalse(bare.contains("#") || bare.contains("%") || bare.contains("--"), bare);
        Deque<Character> open = new ArrayDeque<>();
        for (char c : bare.toCharArray()) {
            if (c == '{') {
                open.push(c);
            } else if (c == '}') {
                open.pop();
            }
        }
        assertEquals(0, open.size());
        Matcher edge = Pattern.compile("\\\\(begin|end)\\{(\\w+)}").matcher(rendered);
        Deque<String> environments = new ArrayDeque<>();
        while (edge.find()) {
            if (edge.group(1).equals("begin")) {
                environments.push(edge.group(2));
            } else {
                assertEquals(environments.pop(), edge.group(2));
            }
        }
        assertEquals(0, environments.size());
    }
}
