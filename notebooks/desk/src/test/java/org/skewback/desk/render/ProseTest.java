package org.skewback.desk.render;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.skewback.desk.issue.RunPackage;
import org.w3c.dom.Element;
import org.w3c.dom.NodeList;

final class ProseTest {

    private static final ReadPackage NOTHING =
            ReadPackage.of(
                    new RunPackage(SamplePackage.info("title", "summary"), List.of(), Map.of()));

    private final Prose prose = new Prose(new PageMedium(NOTHING));

    @ParameterizedTest
    @ValueSource(
            strings = {
                "It costs $5 and $6.",
                "a `$x$` b",
                "``$x$ ` $y$``",
                "```\n$x$\n```",
                "~~~\n$x$\n```\n$y$\n~~~",
                "\\$x\\$",
                "$ x$",
                "$x $",
                "$x$5",
                "$x\n\ny$",
                "$$ $$"
            })
    void theseHoldNoMathematics(String markdown) {
        assertFalse(prose.set(markdown, null).contains("<math"), markdown);
    }

    @ParameterizedTest
    @CsvSource({
        "$x$, 1",
        "$a_b$ and $c_d$, 2",
        "$a*b$ and $c*d$, 2",
        "$$x$$, 1",
        "| $x$ | $y$ |, 2",
        "*$x$*, 1",
        "`code` $x$, 1",
        "` open $x$, 1"
    })
    void theseHoldMathematics(String markdown, int count) {
        assertEquals(count, prose.set(markdown, null).split("<math", -1).length - 1);
    }

    @Test
    void aHeavyLineBeforeATableIsItsTitle() {
        String table = "| a | b |\n|---|---|\n| 1 | 2 |\n";
        assertTrue(
                prose.set("**What if**\n\n" + table, null).contains("<p class=\"title\"><strong>"));
        assertFalse(prose.set("**Not** alone\n\n" + table, null).contains("title"));
        String foreign = "<p><b>What if</b></p><table></table>";
        assertEquals("<p class=\"title\"><b>What if</b></p><table></table>", Prose.titled(foreign));
        assertFalse(prose.set("**What if**\n\ntext\n\n" + table, null).contains("title"));
    }

    @Test
    void theTitleThatThePageShowsIsNotRepeated() {
        assertFalse(prose.set("# A *chain*\n\ntext", "A chain").contains("chain"));
        assertTrue(prose.set("# Another\n\ntext", "A chain").contains("<h2>Another</h2>"));
    }

    @Test
    void whateverIsTypedGivesWellFormedMarkupOfKnownElements() {
        Set<String> known =
                Set.of(
                        "div",
                        "p",
                        "em",
                        "strong",
                        "code",
                        "pre",
                        "ul",
                        "ol",
                        "li",
                        "h2",
                        "h3",
                        "blockquote",
                        "a",
                        "img",
                        "br",
                        "hr",
                        "table",
                        "thead",
                        "tbody",
                        "tr",
                        "th",
                        "td",
                        "span",
                        "math",
                        "mrow",
                        "mi",
                        "mo",
                        "mn",
                        "msub",
                        "msup",
                        "msubsup",
                        "mspace",
                        "mtext");
        String[] pieces = {
            "$",
            "$$",
            "`",
            "```",
            "\n",
            "\n\n",
            "# ",
            "> ",
            "* ",
            "*",
            "_",
            "[",
            "](",
            ")",
            "<",
            "<script>",
            "</div>",
            "&amp;",
            "&#0;",
            "|",
            "\n|---|\n",
            "!",
            "x",
            "javascript:y",
            "https://a.b/\"c",
            "\\",
            "\uE000",
            "0",
            "\uE001",
            "\uD800",
            "\u0000",
            "    ",
            "data:"
        };
        Random random = new Random(7);
        for (int i = 0; i < 5_000; i++) {
            StringBuilder markdown = new StringBuilder();
            int length = 1 + random.nextInt(14);
            for (int j = 0; j < length; j++) {
                markdown.append(pieces[random.nextInt(pieces.length)]);
            }
            String markup = "<div>" + prose.set(markdown.toString(), null) + "</div>";
            var document = Xml.parse(markup);
            assertNotNull(document, () -> markdown + "\ngives\n" + markup);
            NodeList all = document.getElementsByTagName("*");
            for (int j = 0; j < all.getLength(); j++) {
                Element element = (Element) all.item(j);
                assertTrue(known.contains(element.getTagName()), element.getTagName());
                assertFalse(element.getAttribute("href").startsWith("javascript:"), markup);
            }
        }
    }
}
