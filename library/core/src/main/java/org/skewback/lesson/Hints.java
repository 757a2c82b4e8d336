package org.skewback.lesson;

import org.skewback.quantity.Quantity;

/** Says what an answer that differs looks like: a known slip, a sign, a power of ten, a factor. */
final class Hints {

    private static final int[] POWERS = {-6, -3, -2, -1, 1, 2, 3, 6};
    private static final double[] FACTORS = {2, 4, 8, 0.5, 0.25, 0.125};

    private Hints() {}

    static String of(Step step, Quantity answer, Quantity right, Numbers answered) {
        for (Step.Slip slip : step.slips()) {
            if (step.agrees(answer, slip.result().apply(answered))) {
                return slip.hint();
            }
        }
        if (step.agrees(answer.negated(), right)) {
            return "The size is right and the sign is not. " + step.hint();
        }
        for (int power : POWERS) {
            if (step.agrees(answer, right.times(StrictMath.pow(10, power)))) {
                return "The digits are right and the power of ten is not: look at the units on the"
                        + " way.";
            }
        }
        for (double factor : FACTORS) {
            if (step.agrees(answer, right.times(factor))) {
                return "This is "
                        + inWords(factor)
                        + " of what it should be: look for a factor. "
                        + step.hint();
            }
        }
        return step.hint();
    }

    private static String inWords(double factor) {
        return factor > 1
                ? (int) factor + " times"
                : "a part, one in " + (int) Math.round(1 / factor) + ",";
    }
}
