package org.skewback.arch;

import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.function.Executable;

/** What is refused, and in what words. */
final class Refused {

    private Refused() {}

    static void assertRefused(Executable call, String... parts) {
        String message =
                String.valueOf(assertThrows(IllegalArgumentException.class, call).getMessage());
        for (String part : parts) {
            assertTrue(message.contains(part), message);
        }
    }
}
