package org.skewback.anchor;

import java.util.List;
import org.skewback.quantity.Quantity;

/**
 * What an anchor carries: the lowest of steel, bond and rock.
 *
 * @param resistances each way of failing with its resistance
 */
public record AnchorResistance(List<Resistance> resistances) {

    /**
     * One way of failing.
     *
     * @param name what fails, such as "bond of grout and rock"
     * @param force its design resistance
     */
    public record Resistance(String name, Quantity force) {}

    /**
     * Takes the ways of failing.
     *
     * @param resistances each way of failing with its resistance, more than 0; at least two, since a
     *     single one leaves out how the others were looked at
     * @throws IllegalArgumentException if there are fewer than two, or a resistance is not positive
     */
    public AnchorResistance {
        resistances = List.copyOf(resistances);
        Require.atLeast("number of ways of failing", resistances.size(), 2);
        for (Resistance resistance : resistances) {
            Require.positive("resistance: " + resistance.name(), resistance.force(), "kN");
        }
    }

    /**
     * Gives the lowest resistance.
     *
     * @return the least of all, as {@code min}
     */
    public Quantity least() {
        Quantity least = resistances.get(0).force();
        for (Resistance other : resistances.subList(1, resistances.size())) {
            least = Quantity.min(least, other.force());
        }
        return least;
    }

    /**
     * Names the way of failing that governs.
     *
     * @return its name; of equal ones the first
     */
    public String governing() {
        Resistance governing = resistances.get(0);
        for (Resistance other : resistances) {
            if (other.force().si() < governing.force().si()) {
                governing = other;
            }
        }
        return governing.name();
    }
}
