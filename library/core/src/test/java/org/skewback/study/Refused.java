package org.skewback.study;

import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.function.Executable;

/** Whether something is refused, and says why. */
final class Refused {

    private Refused() {}

    static void refused(String words, Executable call) {
        RuntimeException e = assertThrows(RuntimeException.class, call);
        boolean kind = e instanceof IllegalArgumentException || e instanceof ArithmeticException;
        assertTrue(kind, e.toString());
        assertTrue(String.valueOf(e.getMessage()).contains(words), e.getMessage());
    }
}
