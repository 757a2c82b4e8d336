package org.skewback.figure;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Base64;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Stream;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.skewback.display.Displayable;
import org.skewback.sheet.Figure;
import org.w3c.dom.Element;

/** What holds of every figure, whatever it shows. */
class FigureTest {

    static Stream<Picture> pictures() {
        return Stream.of(
                Demo.arch().drawing().picture(),
                Demo.rib().drawing().picture(),
                Demo.chain().picture(),
                Demo.polygon().picture(),
                Demo.skewbackSection().picture(),
                Demo.eccentricities().picture(),
                GroundDemo.slope().drawing().picture(),
                GroundDemo.net(Stereonet.Projection.EQUAL_ANGLE).drawing().picture(),
                GroundDemo.net(Stereonet.Projection.EQUAL_AREA).drawing().picture(),
                ((DrawnFigure) GroundDemo.stressingChart()).picture(),
                ((DrawnFigure) GroundDemo.creepChart()).picture(),
                ((DrawnFigure) GroundDemo.monitoringChart()).picture(),
                ((DrawnFigure) GroundDemo.vibrationChart()).picture(),
                Tornado.picture("Tornado", Studies.sensitivity()),
                SimulationFigures.histogramPicture("Histogram", Studies.simulation(20_000)));
    }

    @ParameterizedTest
    @MethodSource("pictures")
    void svgIsWellFormedNamedAndInert(Picture picture) throws Exception {
        String text = new DrawnFigure(picture).svg();
        assertTrue(text.startsWith("<svg "));
        Svg svg = new Svg(text);
        assertEquals(List.of(picture.title()), contents(svg.all("title")));
        assertEquals(List.of(picture.description()), contents(svg.all("desc")));
        assertTrue(svg.all("script").isEmpty());
        assertFalse(text.contains("href"));
        assertFalse(text.contains("url("));
        assertTrue(text.length() < 20_000, "an elevation takes " + text.length() + " bytes");
        Set<String> ids = new HashSet<>();
        for (Element element : svg.all("*")) {
            if (element.hasAttribute("id")) {
                assertTrue(ids.add(element.getAttribute("id")));
            }
        }
        for (String id : svg.root().getAttribute("aria-labelledby").split(" ", -1)) {
            assertTrue(ids.contains(id));
        }
    }

    @ParameterizedTest
    @MethodSource("pictures")
    void noTextCoversAnotherOrLeavesThePage(Picture picture) {
        textStandsApart(picture);
    }

    static void textStandsApart(Picture picture) {
        List<Mark.Words> words = new ArrayList<>();
        for (Mark mark : picture.marks()) {
            if (mark instanceof Mark.Words text) {
                words.add(text);
                double[] b = Geometry.bounds(List.of(text));
                assertTrue(
                        b[0] >= 0
                                && b[1] >= 0
                                && b[2] <= picture.width()
                                && b[3] <= picture.height(),
                        () -> text.text() + " leaves the page");
            }
        }
        for (int i = 0; i < words.size(); i++) {
            for (int j = 0; j < i; j++) {
                Mark.Words a = words.get(i);
                Mark.Words b = words.get(j);
                assertFalse(
                        Geometry.overlap(a.box(), b.box()), () -> a.text() + " covers " + b.text());
            }
        }
    }

    @ParameterizedTest
    @MethodSource("pictures")
    void pageFitsA4TextAndTextIsReadable(Picture picture) throws Exception {
        fitsThePage(picture);
    }

    static void fitsThePage(Picture picture) throws Exception {
        Svg svg = new Svg(new DrawnFigure(picture).svg());
        double width = millimetres(svg.root().getAttribute("width"));
        double height = millimetres(svg.root().getAttribute("height"));
        assertTrue(width <= 170 && height <= 240, width + " mm by " + height + " mm");
        String[] box = svg.root().getAttribute("viewBox").split(" ", -1);
        // Text sizes are in viewBox units, which must be points of the printed page.
        assertEquals(width / 25.4 * 72, Double.parseDouble(box[2]), 0.02);
        assertEquals(height / 25.4 * 72, Double.parseDouble(box[3]), 0.02);
        for (Mark mark : picture.marks()) {
            if (mark instanceof Mark.Words words) {
                assertTrue(words.size() >= 8 && words.size() <= 9);
            }
        }
    }

    @ParameterizedTest
    @MethodSource("pictures")
    void pngHasTwoHundredDotsAnInch(Picture picture) throws Exception {
        byte[] png = new DrawnFigure(picture).png();
        BufferedImage image = ImageIO.read(new ByteArrayInputStream(png));
        assertEquals(Math.round(picture.width() / 72 * 200), image.getWidth());
        assertEquals(Math.round(picture.height() / 72 * 200), image.getHeight());
        // 200 dots an inch are 7874 a metre, in the chunk pHYs of the PNG specification, 11.3.4.3.
        String bytes = new String(png, StandardCharsets.ISO_8859_1);
        int at = bytes.indexOf("pHYs");
        assertTrue(at > 0);
        assertEquals("\0\0\u001e\u00c2\0\0\u001e\u00c2\u0001", bytes.substring(at + 4, at + 13));
        assertTrue(dark(image) > 1000, "something is drawn");
    }

    @Test
    void drawingTwiceGivesTheSameBytes() {
        assertEquals(Demo.rib().figure().svg(), Demo.rib().figure().svg());
        assertEquals(Demo.eccentricities().figure().svg(), Demo.eccentricities().figure().svg());
    }

    @Test
    void figuresShareNoIdentifier() throws Exception {
        Set<String> ids = new HashSet<>();
        int count = 0;
        for (Picture picture : pictures().toList()) {
            for (Element element : new Svg(new DrawnFigure(picture).svg()).all("*")) {
                if (element.hasAttribute("id")) {
                    ids.add(element.getAttribute("id"));
                    count++;
                }
            }
        }
        assertEquals(count, ids.size());
        assertNotEquals(0, count);
    }

    @Test
    void notebookGetsHtmlFirstThenImageThenText() throws Exception {
        Figure figure =
                Elevation.titled("Span < 400 m & \"rise\"")
                        .describedBy("A line.")
                        .line(LineStyle.CUT, Point.at(0, 0), Point.at(10, 0))
                        .figure();
        Map<String, String> shown = ((Displayable) figure).display();
        assertEquals(List.of("text/html", "image/png", "text/plain"), List.copyOf(shown.keySet()));
        String html = shown.getOrDefault("text/html", "");
        assertTrue(
                html.startsWith(
                        "<img alt=\"Span &lt; 400 m &amp; &quot;rise&quot;. A line.\""
                                + " src=\"data:image/svg+xml;base64,"));
        String data = html.substring(html.indexOf("base64,") + 7, html.lastIndexOf('"'));
        assertEquals(
                figure.svg(), new String(Base64.getDecoder().decode(data), StandardCharsets.UTF_8));
        byte[] png = Base64.getDecoder().decode(shown.getOrDefault("image/png", ""));
        assertTrue(ImageIO.read(new ByteArrayInputStream(png)).getWidth() > 0);
        assertEquals("Span < 400 m & \"rise\"\nA line.", shown.get("text/plain"));
    }

    @Test
    void wordsThatSayNothingOrCannotBePrintedAreRefused() {
        refused(() -> Elevation.titled(" "), "title is blank");
        refused(() -> Elevation.titled("a\u0000b"), "U+0000");
        refused(() -> Elevation.titled("a").label(Point.at(0, 0), "桥"), "U+6865");
        Elevation mute = Elevation.titled("a").line(LineStyle.CUT, Point.at(0, 0), Point.at(1, 0));
        refused(mute::figure, "description");
    }

    static void refused(Runnable attempt, String names) {
        IllegalArgumentException error = assertThrows(IllegalArgumentException.class, attempt::run);
        assertTrue(
                String.valueOf(error.getMessage()).contains(names),
                () -> error.getMessage() + " should name " + names);
    }

    private static List<String> contents(List<Element> elements) {
        return elements.stream().map(Element::getTextContent).toList();
    }

    private static double millimetres(String length) {
        assertTrue(length.endsWith("mm"));
        return Double.parseDouble(length.substring(0, length.length() - 2));
    }

    private static int dark(BufferedImage image) {
        int count = 0;
        for (int y = 0; y < image.getHeight(); y++) {
            for (int x = 0; x < image.getWidth(); x++) {
                if ((image.getRGB(x, y) & 0xff) < 128) {
                    count++;
                }
            }
        }
        return count;
    }
}
