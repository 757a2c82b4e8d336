package org.skewback.figure;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.skewback.quantity.Quantity;
import org.skewback.sheet.Figure;
import org.skewback.sheet.FigureStates;
import org.skewback.sheet.Sheet;

class SweepTest {

    private static final List<Quantity> SAGS =
            List.of(Quantity.of(2, "m"), Quantity.of(3, "m"), Quantity.of(4, "m"));

    private static Figure chain(Quantity sag) {
        double depth = sag.in("m");
        return ChainTurnedOver.of(
                "Chain <" + depth + ">",
                new double[] {0, 5, 10},
                new double[] {0, depth, 0},
                new double[] {0, 1, 0});
    }

    private final Sweep sweep =
            Sweep.of("Chains of three sags", "sag \"under\" the supports", SAGS, SweepTest::chain);

    private static String complaint(Runnable act) {
        return String.valueOf(assertThrows(IllegalArgumentException.class, act::run).getMessage());
    }

    @Test
    void eachStateIsAButtonWithItsValueAndUnitAndAPictureWithWords() {
        String html = String.valueOf(sweep.display().get("text/html"));
        assertEquals(3, html.split("type=\"radio\"", -1).length - 1);
        assertEquals(3, html.split("<img alt=", -1).length - 1);
        assertTrue(html.contains(">3\u00A0m</label>") || html.contains(">3\u202Fm</label>"), html);
        assertTrue(html.contains("aria-label=\"sag &quot;under&quot; the supports\""), html);
        assertTrue(html.contains("Chain &lt;3.0&gt;"), html);
        assertFalse(html.contains("<script"), html);
        assertEquals(1, html.split(" checked", -1).length - 1);
    }

    @Test
    void theRecordedStatesAreThoseDrawn() throws Exception {
        Sweep chosen = sweep.opening(SAGS.get(1)).printing(List.of(SAGS.get(2), SAGS.get(0)));
        JsonNode json =
                new ObjectMapper().readTree(String.valueOf(chosen.display().get(Sweep.TYPE)));
        assertEquals(1, json.path("opening").asInt());
        assertEquals("[2,0]", json.path("printed").toString());
        for (int i = 0; i < 3; i++) {
            assertEquals(chain(SAGS.get(i)).svg(), json.path("states").get(i).path("svg").asText());
        }
        assertEquals(chain(SAGS.get(1)).svg(), chosen.svg(), "a sheet keeps the opening state");
        assertTrue(chosen.description().contains("One of 3 states"), chosen.description());
        assertEquals("[0,1,2]", printed(sweep), "first, middle and last by default");
    }

    @Test
    void aSheetKeepsAllOfItsStates() {
        Sweep chosen = sweep.opening(SAGS.get(1)).printing(List.of(SAGS.get(2), SAGS.get(0)));
        FigureStates states = chosen.states().orElseThrow();
        assertEquals("sag \"under\" the supports", states.parameter());
        assertEquals(1, states.opening());
        assertEquals(List.of(2, 0), states.printed());
        for (int i = 0; i < 3; i++) {
            FigureStates.State state = states.states().get(i);
            assertEquals(2 + i, state.value());
            assertEquals("m", state.unit());
            assertEquals(chain(SAGS.get(i)).svg(), state.svg());
            assertTrue(state.description().startsWith(state.label() + ": Chain <"));
        }
        Sheet sheet = Sheet.titled("Chains");
        sheet.figure(chosen);
        assertEquals(1, sheet.record().entries().size());
    }

    @Test
    void underACellOfASheetItCanBeMovedToo() {
        Sheet sheet = Sheet.titled("Chains");
        Sweep costly = Sweep.of("Chains", "sag \\(of $1 or <more>)", SAGS, SweepTest::chain);
        sheet.figure(costly);
        String markdown = String.valueOf(sheet.latest().display().get("text/markdown"));
        String html = costly.states().orElseThrow().html();
        assertTrue(List.of(markdown.split("\n\n")).contains(html), markdown);
        assertTrue(html.contains("<p>sag &#92;(of &#36;1 or &lt;more&gt;):</p>"), html);
        assertEquals(1, html.lines().count());
    }

    private static String printed(Sweep sweep) throws Exception {
        return new ObjectMapper()
                .readTree(String.valueOf(sweep.display().get(Sweep.TYPE)))
                .path("printed")
                .toString();
    }

    @Test
    void theSameSweepIsTheSameText() {
        Map<String, String> again =
                Sweep.of(
                                "Chains of three sags",
                                "sag \"under\" the supports",
                                SAGS,
                                SweepTest::chain)
                        .display();
        assertEquals(sweep.display(), again);
    }

    @Test
    void badStatesAreRefusedByName() {
        assertTrue(
                complaint(() -> Sweep.of("a", "sag", SAGS.subList(0, 1), SweepTest::chain))
                        .contains("has 1 states; it must have 2 to 40"));
        List<Quantity> twice = List.of(SAGS.get(0), SAGS.get(0));
        assertTrue(
                complaint(() -> Sweep.of("a", "sag", twice, SweepTest::chain))
                        .contains("two states for"));
        List<Quantity> mixed = List.of(SAGS.get(0), Quantity.of(1, "kN"));
        assertTrue(
                complaint(() -> Sweep.of("a", "sag", mixed, SweepTest::chain))
                        .contains("one dimension"));
        assertTrue(complaint(() -> Sweep.of("a", " ", SAGS, SweepTest::chain)).contains("blank"));
        assertTrue(
                complaint(() -> sweep.opening(Quantity.of(7, "m"))).contains("has no state for"));
        assertTrue(complaint(() -> sweep.printing(List.of())).contains("allowed: 1 to 6"));
    }
}
