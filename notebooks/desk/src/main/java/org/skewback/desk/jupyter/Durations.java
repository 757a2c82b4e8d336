package org.skewback.desk.jupyter;

import java.time.Duration;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;

/** Durations as people write them: {@code 90 s}, {@code 5 min}, {@code 1 h 30 min}. */
public final class Durations {

    private static final Pattern FORM =
            Pattern.compile(
                    "(?:(\\d{1,3})\\s*h)?\\s*(?:(\\d{1,4})\\s*min)?\\s*(?:(\\d{1,5})\\s*s)?");

    private Durations() {}

    /**
     * Reads a duration.
     *
     * @param text hours, minutes and seconds in this order with the units {@code h}, {@code min} and
     *     {@code s}, each of them optional; spaces do not matter
     * @return the duration, positive
     * @throws IllegalArgumentException when the text has another form or says zero
     */
    public static Duration parse(String text) {
        Matcher matcher = FORM.matcher(text.strip());
        Duration time =
                matcher.matches()
                        ? Duration.ofHours(number(matcher.group(1)))
                                .plusMinutes(number(matcher.group(2)))
                                .plusSeconds(number(matcher.group(3)))
                        : Duration.ZERO;
        if (time.isZero()) {
            throw new IllegalArgumentException(
                    "\"" + text + "\" is not a time to wait; write such as 90s, 5min or 1h30min");
        }
        return time;
    }

    /**
     * Writes a duration.
     *
     * @param time the duration, not negative
     * @return such as {@code 1 h 30 min}; parts of a second only where it is shorter than one
     */
    public static String words(Duration time) {
        StringBuilder words = new StringBuilder();
        append(words, time.toHours(), "h");
        append(words, time.toMinutesPart(), "min");
        append(words, time.toSecondsPart(), "s");
        return words.length() == 0 ? time.toMillis() + " ms" : words.toString();
    }

    private static void append(StringBuilder words, long number, String unit) {
        if (number > 0) {
            words.append(words.length() == 0 ? "" : " ").append(number).append(' ').append(unit);
        }
    }

    private static long number(@Nullable String digits) {
        return digits == null ? 0 : Long.parseLong(digits);
    }
}
