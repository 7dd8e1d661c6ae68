package kingpost.kernel.page;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Locale;
import java.util.Random;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Attribute;
import org.jsoup.nodes.Document;
import org.jsoup.nodes.Element;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class SafeHtmlTest {

    private final SafeHtml safe = new SafeHtml("c1-", Images.none());

    @ParameterizedTest
    @ValueSource(strings = {
        "<p>one <em>two</em> <sub>3</sub><br>four</p>",
        "<table style=\"border-collapse:collapse\"><thead><tr><th scope=\"col\">Member</th></tr></thead><tbody><tr>"
                + "<td style=\"text-align:right\">AB</td></tr></tbody></table>",
        "<math xmlns=\"http://www.w3.org/1998/Math/MathML\" display=\"block\"><msub><mi>F</mi><mi>x</mi></msub><mo>=</mo>"
                + "<mn>0</mn></math>",
        "<svg xmlns=\"http://www.w3.org/2000/svg\" viewBox=\"0 0 9 9\" width=\"9\" height=\"9\"><title>T</title>"
                + "<g stroke=\"#1b1f24\" stroke-width=\"2\"><line x1=\"0\" y1=\"1\" x2=\"2\" y2=\"3\" /></g>"
                + "<text x=\"1\" y=\"2\" text-anchor=\"middle\">F<tspan dy=\"2\">AB</tspan></text></svg>",
    })
    void keepsTextTablesFormulasAndPictures(String html) {
        assertEquals(html, safe.clean(html));
    }

    @ParameterizedTest
    @ValueSource(strings = {
        "<script>alert(1)</script>",
        "<img src=x onerror=alert(1)>",
        "<a href=\"javascript:alert(1)\">x</a>",
        "<a href=\" jAvAsCrIpT:alert(1)\">x</a>",
        "<a href=\"data:text/html,<script>alert(1)</script>\">x</a>",
        "<svg onload=alert(1)><circle r=1 onclick=alert(1)></svg>",
        "<svg><script>alert(1)</script></svg>",
        "<svg><foreignObject><iframe src=\"javascript:alert(1)\"></iframe></foreignObject></svg>",
        "<svg><a xlink:href=\"javascript:alert(1)\"><text>x</text></a></svg>",
        "<svg><use href=\"https://elsewhere.example/x.svg#a\"/></svg>",
        "<svg><animate attributeName=href to=javascript:alert(1) /></svg>",
        "<svg><set attributeName=onclick to=alert(1) /></svg>",
        "<svg><title><img src=x onerror=alert(1)></title></svg>",
        "<math><mtext><table><mglyph><style><img src=x onerror=alert(1)></style></mglyph></table></mtext></math>",
        "<math><annotation-xml encoding=\"text/html\"><script>alert(1)</script></annotation-xml></math>",
        "<svg></p><style><a id=\"</style><img src=1 onerror=alert(1)>\">",
        "<noscript><p title=\"</noscript><img src=x onerror=alert(1)>\"></noscript>",
        "<title><script>alert(1)</script></title>",
        "<textarea><script>alert(1)</script></textarea>",
        "<iframe srcdoc=\"<script>alert(1)</script>\"></iframe><object data=x></object><embed src=x>",
        "<form action=https://elsewhere.example><button formaction=javascript:alert(1)>x</button></form>",
        "<base href=https://elsewhere.example/><link rel=stylesheet href=x.css><meta http-equiv=refresh content=0>",
        "<p style=\"background:url(https://elsewhere.example/p.png)\">x</p>",
        "<p style=\"background:u\\rl(x);width:expression(alert(1));position:fixed\">x</p>",
        "<svg><rect fill=\"url(https://elsewhere.example/x#y)\"/></svg>",
        "<svg><image href=\"https://elsewhere.example/p.png\"/><feImage href=\"https://elsewhere.example/p\"/></svg>",
        "<img src=\"https://elsewhere.example/p.png\" srcset=\"https://elsewhere.example/q.png 2x\">",
        "<video poster=https://elsewhere.example/p.png></video><audio src=https://elsewhere.example/a></audio>",
        "<style>@import url(https://elsewhere.example/x.css)</style>",
        "<!--><script>alert(1)</script>-->",
        "<![CDATA[<script>alert(1)</script>]]>",
    })
    void letsNothingThroughThatActsOrFetches(String html) {
        assertInert(safe.clean(html));
        assertInert(safe.picture(html));
    }

    @Test
    void keepsLinksForTheReaderToFollow() {
        assertEquals("<a href=\"https://example.org/a?b=1\">x</a>", safe.clean("<a href='https://example.org/a?b=1'>x</a>"));
    }

    @Test
    void makesIdsThePagesOwnTogetherWithWhatRefersToThem() {
        assertEquals("<svg aria-labelledby=\"c1-t c1-d\"><title id=\"c1-t\">T</title><desc id=\"c1-d\">D</desc>"
                        + "<marker id=\"c1-m\"></marker><path d=\"M0 0\" marker-end=\"url(#c1-m)\" /><use href=\"#c1-m\"></use></svg>",
                safe.clean("<svg aria-labelledby='t d'><title id='t'>T</title><desc id='d'>D</desc><marker id='m'></marker>"
                        + "<path d='M0 0' marker-end='url(#m)'/><use href='#m'></use></svg>"));
    }

    @Test
    void namesAPictureThatItDoesNotFetch() {
        String html = safe.clean("<p><img src='https://elsewhere.example/plan.png' alt='Site plan'></p>");
        assertEquals("<p><span class=\"kp-missing\">[Picture not included: Site plan (https://elsewhere.example/plan.png)]"
                + "</span></p>", html);
    }

    @Test
    void isolatesAPictureThatBringsItsOwnStyleSheet() {
        String html = safe.picture("<?xml version='1.0'?><svg xmlns='http://www.w3.org/2000/svg'><title>Plot</title>"
                + "<style>.a{fill:red}</style><rect class='a' onclick='x()'/><script>alert(1)</script></svg>");
        assertTrue(html.startsWith("<img alt=\"Plot\" src=\"data:image/svg+xml;base64,"), html);
        String svg = new String(java.util.Base64.getDecoder().decode(html.replaceAll(".*base64,|\">", "")));
        assertTrue(svg.contains(".a{fill:red}"), svg);
        assertFalse(svg.contains("script") || svg.contains("onclick"), svg);
    }

    @Test
    void showsNothingForAPictureThatIsNone() {
        assertEquals("", safe.picture("no picture"));
    }

    /** A second reading of the result must find what the first one found: then the browser's does too. */
    @Test
    void givesMarkupThatReadsTheSameASecondTime() {
        String[] pieces = {"<svg>", "</svg>", "<math>", "</math>", "<mtext>", "<mi>", "<title>", "<desc>", "<style>",
            "</style>", "<script>", "<img src=x onerror=alert(1)>", "<table>", "<tr>", "<td>", "</table>", "<p>", "</p>",
            "<a href=javascript:alert(1)>", "<foreignObject>", "<annotation-xml encoding=text/html>", "<mglyph>",
            "<select>", "<option>", "<textarea>", "<noscript>", "<template>", "<!--", "-->", "<![CDATA[", "]]>", "\"", "'",
            "<b title='", "'>", "<br/>", "<h1>", "<li>", "<ul>", "<plaintext>", "<iframe>", "<form>", "x", "&lt;script&gt;",
            "&amp;lt;", "<path d='M0 0'/>", "<use href='#a'/>", "<g id=a>", "</g>", "\u0000", "<tspan>", "</mtext>", "<frameset>",
            "<body onload=alert(1)>", "<html>", "<xmp>", "</title>", "<svg/onload=alert(1)>", "<details open ontoggle=alert(1)>"};
        Random random = new Random(20261125);
        SafeHtml plain = new SafeHtml("", Images.none());
        for (int i = 0; i < 3_000; i++) {
            StringBuilder html = new StringBuilder();
            random.ints(1 + random.nextInt(10), 0, pieces.length).forEach(p -> html.append(pieces[p]));
            String once = plain.clean(html.toString());
            assertInert(once);
            assertEquals(once, plain.clean(once), () -> "from " + html);
        }
    }

    private static void assertInert(String html) {
        Document document = Jsoup.parseBodyFragment(html);
        assertEquals(0, document.select("script, style, iframe, object, embed, foreignObject, form, link, meta, base, image,"
                + " video, audio, animate, set, textarea, template, noscript, input, button").size(), html);
        for (Element element : document.getAllElements()) {
            for (Attribute attribute : element.attributes()) {
                String value = attribute.getValue().toLowerCase(Locale.ROOT);
                assertFalse(attribute.getKey().toLowerCase(Locale.ROOT).startsWith("on"), html);
                boolean words = attribute.getKey().matches("title|alt|aria-label");
                assertFalse(!words && (value.contains("javascript:") || value.contains("url(http")
                        || value.contains("expression(")), html);
                assertFalse(attribute.getKey().matches("src|srcset|xlink:href|poster|data|action")
                        && !value.startsWith("data:image/"), html);
                assertFalse(attribute.getKey().equals("href") && !element.normalName().equals("a") && !value.startsWith("#"),
                        html);
                assertFalse(attribute.getKey().equals("style") && value.contains("position"), html);
            }
        }
    }
}
