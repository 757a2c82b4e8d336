package org.skewback.form;

/**
 * A vertical load that is uniform along the axis of the arch, such as the weight of a rib.
 *
 * @param from begin of the loaded range on plan, m, not negative
 * @param to end of the loaded range on plan, m, greater than {@code from}
 * @param intensity load per length of axis, N/m, positive downward
 */
public record AxisLoad(double from, double to, double intensity) implements VerticalLoad {

    /**
     * Makes a load along the axis.
     *
     * @param from begin of the loaded range on plan, m, not negative
     * @param to end of the loaded range on plan, m, greater than {@code from}
     * @param intensity load per length of axis, N/m, positive downward
     * @throws IllegalArgumentException if a value is not finite or the range is empty
     */
    public AxisLoad {
        LineLoad.requireRange(from, to);
        Require.finite("load per length of axis", intensity, "N/m");
    }

    @Override
    public AxisLoad times(double factor) {
        return new AxisLoad(from, to, intensity * Require.finite("factor", factor, ""));
    }
}
