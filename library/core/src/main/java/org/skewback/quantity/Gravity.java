package org.skewback.quantity;

/** Acceleration of free fall: a mass becomes a force only by naming it. */
public final class Gravity {

    /**
     * Standard acceleration of free fall, 9.806 65 m/s², exact by definition (3rd General
     * Conference on Weights and Measures, 1901; ISO 80000-3).
     */
    public static final Quantity STANDARD =
            Quantity.given(
                    "g_n",
                    9.806_65,
                    "m/s²",
                    "standard acceleration of free fall",
                    Source.standard("ISO 80000-3", "exact by definition"));

    private Gravity() {}
}
