package org.skewback.desk.jupyter;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.time.Duration;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Times as people write them. */
class DurationsTest {

    @ParameterizedTest
    @CsvSource({"90s,90,1 min 30 s", "5min,300,5 min", "1 h 30 min,5400,1 h 30 min", "7s,7,7 s"})
    void aTimeIsReadAndWritten(String text, long seconds, String words) {
        assertEquals(Duration.ofSeconds(seconds), Durations.parse(text));
        assertEquals(words, Durations.words(Durations.parse(text)));
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "5", "0s", "-5s", "5 hours", "30s 1min"})
    void whatIsNoTimeIsRefusedWithAnExample(String text) {
        assertEquals(
                "\"" + text + "\" is not a time to wait; write such as 90s, 5min or 1h30min",
                assertThrows(IllegalArgumentException.class, () -> Durations.parse(text))
                        .getMessage());
    }

    @Test
    void lessThanASecondIsGivenInMilliseconds() {
        assertEquals("250 ms", Durations.words(Duration.ofMillis(250)));
    }
}
