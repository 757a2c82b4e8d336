package org.skewback.figure;

import org.skewback.frame.ForceComponent;

/**
 * A unit in which forces are written.
 *
 * @param symbol its symbol
 * @param si its size in N or N·m
 */
record ForceUnit(String symbol, double si) {

    /** kN or kN·m, where numbers would have more than five digits MN or MN·m, below 1 N or N·m. */
    static ForceUnit of(ForceComponent component, double most) {
        String metre = component.isMoment() ? "·m" : "";
        if (most >= 1e8) {
            return new ForceUnit("MN" + metre, 1e6);
        }
        return most < 1e3 ? new ForceUnit("N" + metre, 1) : new ForceUnit("kN" + metre, 1e3);
    }

    String written(double value) {
        return Numbers.significant(value / si, 4) + "\u00A0" + symbol;
    }
}
