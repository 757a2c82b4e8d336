package org.skewback.form;

import static org.junit.jupiter.api.Assertions.assertEquals;

/** Assertions with a tolerance relative to the value expected. */
final class Near {

    private Near() {}

    static void assertNear(double expected, double actual, double relative) {
        assertEquals(expected, actual, relative * Math.abs(expected));
    }
}
