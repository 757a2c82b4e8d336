package org.skewback.checks;

import java.util.Arrays;
import java.util.stream.Collectors;

/** What kind of source a check value has. */
enum Kind {
    STANDARD("standard"),
    HANDBOOK("handbook"),
    PAPER("paper"),
    WORKED_EXAMPLE("worked example"),
    OPEN_DATA("open data"),
    GENERAL_PURPOSE_LIBRARY("general-purpose library"),
    CLOSED_FORM("closed form"),
    COMMON_PRACTICE("common practice"),
    FROM_MEMORY("from memory");

    private final String words;

    Kind(String words) {
        this.words = words;
    }

    String words() {
        return words;
    }

    static Kind of(String words) {
        return Arrays.stream(values())
                .filter(kind -> kind.words.equals(words))
                .findFirst()
                .orElseThrow(
                        () ->
                                new IllegalArgumentException(
                                        "kind is \""
                                                + words
                                                + "\"; allowed are "
                                                + Arrays.stream(values())
                                                        .map(Kind::words)
                                                        .collect(Collectors.joining(", "))
                                                + "."));
    }
}
