package org.skewback.display;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

class WorkProgressTest {

    private static final long SECOND = 1_000_000_000L;

    private final List<String> printed = new ArrayList<>();
    private long now = 7 * SECOND;
    private final WorkProgress work =
            new WorkProgress("Sliding <1>", "samples", printed::add, () -> now);

    private String html() {
        return String.valueOf(work.display().get("text/html"));
    }

    @Test
    void theDisplayChangesAtMostTenTimesASecondAndOnceAtTheEnd() {
        List<String> shown = new ArrayList<>();
        work.whenChanged(() -> shown.add(work.toString()));
        for (int i = 1; i <= 1000; i++) {
            now += SECOND / 1000;
            work.at(i, 1000);
        }
        assertEquals(10, shown.size());
        work.done();
        assertEquals("Sliding <1>: 1\u202F000 samples, done", shown.get(10));
        assertEquals(List.of(), printed);
    }

    @Test
    void withoutAListenerALineIsPrintedEveryFiveSecondsAndAtTheEnd() {
        for (int i = 0; i < 12; i++) {
            now += SECOND;
            work.at(i + 1L, 12);
        }
        assertEquals(
                List.of(
                        "Sliding <1>: 41 %, 5 of 12 samples, about 7 s left",
                        "Sliding <1>: 83 %, 10 of 12 samples, about 2 s left"),
                printed);
        work.done();
        assertEquals("Sliding <1>: 12 samples, done", printed.get(2));
    }

    @Test
    void shortWorkPrintsNothing() {
        work.at(1, 2);
        work.done();
        assertEquals(List.of(), printed);
    }

    @Test
    void theBarSaysHowFarAndTheEndHoldsNoTime() {
        now += 60 * SECOND;
        work.at(25, 100, "p = 0.1 & falling");
        assertTrue(html().contains("max=\"100\" value=\"25\""), html());
        assertTrue(html().contains("Sliding &lt;1&gt;"), html());
        assertTrue(html().contains("about 3 min left"), html());
        assertTrue(html().contains("p = 0.1 &amp; falling"), html());
        work.done();
        assertFalse(html().contains("progress"), html());
        assertFalse(html().contains("left"), html());
        assertEquals("Sliding <1>: 100 samples, done; p = 0.1 & falling", work.toString());
    }

    @Test
    void workOfUnknownLengthOnlyCounts() {
        work.at(5, 0);
        assertTrue(html().contains("></progress> 5 samples"), html());
        work.done();
        assertEquals("Sliding <1>: 5 samples, done", work.toString());
    }

    @Test
    void negativeCountsAndBlankWordsAreRefused() {
        assertThrows(IllegalArgumentException.class, () -> work.at(-1, 10));
        assertThrows(IllegalArgumentException.class, () -> work.at(1, -10));
        assertThrows(IllegalArgumentException.class, () -> WorkProgress.of(" ", "a", printed::add));
        assertThrows(IllegalArgumentException.class, () -> WorkProgress.of("a", "", printed::add));
    }
}
