package org.skewback.sheet;

import java.util.function.Consumer;
import org.skewback.quantity.Quantity;

/** A check half said: what is checked, before what it is checked against. */
public final class CheckOf {

    private final String title;
    private final Quantity demand;
    private final Consumer<Check> register;

    CheckOf(String title, Quantity demand, Consumer<Check> register) {
        this.title = title;
        this.demand = demand;
        this.register = register;
    }

    /**
     * Requires the quantity to be at most a limit.
     *
     * @param capacity the limit, of the same dimension
     * @return the check, which the sheet now has
     */
    public Check atMost(Quantity capacity) {
        return registered(new Check(title, demand, null, capacity));
    }

    /**
     * Requires the quantity to be at least a limit.
     *
     * @param required the limit, of the same dimension
     * @return the check, which the sheet now has
     */
    public Check atLeast(Quantity required) {
        return registered(new Check(title, demand, required, null));
    }

    /**
     * Requires the quantity to be between two limits, either of which it may reach.
     *
     * @param low the lower limit, of the same dimension
     * @param high the upper limit, above the lower
     * @return the check, which the sheet now has
     */
    public Check between(Quantity low, Quantity high) {
        return registered(new Check(title, demand, low, high));
    }

    private Check registered(Check check) {
        register.accept(check);
        return check;
    }
}
