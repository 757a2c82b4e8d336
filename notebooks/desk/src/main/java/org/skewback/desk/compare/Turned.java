package org.skewback.desk.compare;

import java.util.List;

/**
 * A check whose demand, limit or verdict is another than before.
 *
 * @param sheet number and title of its sheet
 * @param name number and title of the check
 * @param verdictBefore verdict before; empty where the check is new
 * @param verdictNow verdict now; empty where it is gone
 * @param utilisationBefore utilisation before; NaN where there is none
 * @param utilisationNow utilisation now; NaN where there is none
 * @param chain from each cause to this
 */
public record Turned(
        String sheet,
        String name,
        String verdictBefore,
        String verdictNow,
        double utilisationBefore,
        double utilisationNow,
        List<String> chain) {

    /** Keeps a copy of the list. */
    public Turned {
        chain = List.copyOf(chain);
    }

    /**
     * Tells whether the verdict is another.
     *
     * @return whether it is
     */
    public boolean isTurned() {
        return !verdictBefore.equals(verdictNow);
    }

    /**
     * Tells whether the utilisation went past a mark.
     *
     * @param mark a utilisation
     * @return whether it was at most the mark before and is more now
     */
    public boolean wentPast(double mark) {
        return utilisationBefore <= mark && utilisationNow > mark;
    }
}
