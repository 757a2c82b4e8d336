package org.skewback.kernel.worker;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Base64;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.IntStream;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.Test;

class RendererTest {

    private record Place(String name, double level) {}

    /** Public, because only the renderer calls what fails. */
    public record Failing(String name) {
        @Override
        public String name() {
            throw new IllegalStateException("no name");
        }
    }

    private final Renderer renderer = new Renderer(RendererTest.class.getClassLoader());

    private Map<String, String> render(Object value) throws InterruptedException {
        return renderer.render(value);
    }

    private String html(Object value) throws InterruptedException {
        return render(value).getOrDefault("text/html", "");
    }

    private String text(Object value) throws InterruptedException {
        return render(value).getOrDefault("text/plain", "");
    }

    @Test
    void aRecordIsASmallTableOfItsComponents() throws Exception {
        String html = html(new Place("crown <1>", 72.5));
        assertTrue(html.contains("<caption>Place</caption>"), html);
        assertTrue(html.contains("<td style=\"text-align:left\">crown &lt;1&gt;</td>"), html);
        assertTrue(html.contains(">72.5<"), html);
        assertEquals("Place[name=a, level=1.0]", text(new Place("a", 1)));
    }

    @Test
    void recordsOfOneKindAreRowsAndNumbersAreFlushRight() throws Exception {
        String html = html(List.of(new Place("a", 1), new Place("b", 2)));
        assertEquals(1, html.split("<table>", -1).length - 1, html);
        assertEquals(3, html.split("<tr>", -1).length - 1, html);
        assertTrue(html.contains("<td style=\"text-align:right\">2.0</td>"), html);
        assertEquals(html, html(new Place[] {new Place("a", 1), new Place("b", 2)}));
        assertEquals("", html(List.of(new Place("a", 1), "b")));
    }

    @Test
    void aLongTableIsPagedAndBounded() throws Exception {
        List<Place> many = IntStream.range(0, 1000).mapToObj(i -> new Place("p" + i, i)).toList();
        String html = html(many);
        assertTrue(html.contains("<summary>rows 21 to 40 of 1000</summary>"), html);
        assertTrue(html.contains(">p399<"), html);
        assertFalse(html.contains(">p400<"), html);
        assertTrue(html.contains("600 more rows of 1000"), html);
    }

    @Test
    void aMatrixHasRowsAndColumns() throws Exception {
        String html = html(new double[][] {{1, 2}, {3, 4.5}});
        assertTrue(html.contains("<caption>2 × 2</caption>"), html);
        assertTrue(html.contains("<td style=\"text-align:right\">4.5</td>"), html);
        assertEquals("[[1.0, 2.0], [3.0, 4.5]]", text(new double[][] {{1, 2}, {3, 4.5}}));
        String wide = html(new int[2][100]);
        assertTrue(wide.contains("the first 40 columns"), wide);
    }

    @Test
    void aMapIsATableInItsOwnOrder() throws Exception {
        String html = html(new TreeMap<>(Map.of("b", 2, "a", 1)));
        assertTrue(html.indexOf(">a<") < html.indexOf(">b<"), html);
        assertEquals(Map.of("text/plain", "{}"), render(Map.of()));
    }

    /** {@link Map#of}: iteration order is unspecified and subject to change. */
    @Test
    void whatThePlatformShufflesIsShownInOneOrder() throws Exception {
        assertEquals("{a=1, b=2, c=3, d=4}", text(Map.of("d", 4, "c", 3, "b", 2, "a", 1)));
        assertEquals("[a, b, c, d]", text(Set.of("d", "c", "b", "a")));
        assertEquals("[d, a]", text(List.of("d", "a")));
    }

    @Test
    void anImageIsAPngAndALargeOneIsMadeSmaller() throws Exception {
        BufferedImage large =
                new BufferedImage(2 * Pictures.MOST_SIDE, 10, BufferedImage.TYPE_INT_RGB);
        BufferedImage read = png(render(large));
        assertEquals(Pictures.MOST_SIDE, read.getWidth());
        assertEquals(5, read.getHeight());
        BufferedImage small = new BufferedImage(7, 3, BufferedImage.TYPE_BYTE_GRAY);
        assertEquals(7, png(render(small)).getWidth());
    }

    private static BufferedImage png(Map<String, String> content) throws IOException {
        byte[] bytes = Base64.getDecoder().decode(content.getOrDefault("image/png", ""));
        return ImageIO.read(new ByteArrayInputStream(bytes));
    }

    @Test
    void whatFailsToShowFallsBackToItsText() throws Exception {
        Map<String, String> content = render(List.of(new Failing("a")));
        assertEquals(Set.of("text/plain"), content.keySet());
        assertTrue(text(List.of(new Failing("a"))).contains("its display failed with"));
        Object mute =
                new Object() {
                    @Override
                    public String toString() {
                        throw new IllegalStateException();
                    }
                };
        assertTrue(text(mute).contains("its toString failed"));
    }

    @Test
    void whatHoldsItselfComesToAnEnd() throws Exception {
        List<Object> list = new ArrayList<>();
        list.add(list);
        assertEquals("[(this)]", text(list));
        Object[] array = new Object[1];
        array[0] = array;
        assertTrue(text(array).contains("(this)"));
    }

    @Test
    void whatIsTooLongIsShownAsShorterText() throws Exception {
        String content = "x".repeat(Renderer.MOST_CHARACTERS + 1);
        Map<String, String> shown = render(CellFunctions.html(content));
        assertEquals(Set.of("text/plain"), shown.keySet());
        assertTrue(text(CellFunctions.html(content)).length() < Renderer.MOST_TEXT + 200);
        assertTrue(text(Collections.nCopies(1_000_000, 7)).length() < 2000);
    }

    @Test
    void contentIsShownAsTheTypeThatTheCellGives() throws Exception {
        assertEquals("<b>a</b>", html(CellFunctions.html("<b>a</b>")));
        assertEquals("a", text(CellFunctions.html("<b>a</b>")));
        assertEquals("*a*", render(CellFunctions.markdown("*a*")).get("text/markdown"));
        assertEquals("$$x^2$$", render(CellFunctions.latex("x^2")).get("text/latex"));
        assertEquals("<svg/>", render(CellFunctions.svg("<svg/>")).get("image/svg+xml"));
        assertEquals("[1]", render(CellFunctions.json("[1]")).get("application/json"));
        byte[] bytes = "png".getBytes(StandardCharsets.US_ASCII);
        assertEquals("cG5n", render(CellFunctions.png(bytes)).get("image/png"));
    }
}
