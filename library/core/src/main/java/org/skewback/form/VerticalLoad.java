package org.skewback.form;

import java.util.ArrayList;
import java.util.List;

/**
 * A vertical load on an arch, positive downward: a point load, a load per plan length, a load per
 * length of the axis, or several together.
 */
public sealed interface VerticalLoad permits PointLoad, LineLoad, AxisLoad, LoadGroup {

    /**
     * Makes a point load.
     *
     * @param force force, N, positive downward
     * @param position position from the left springing, m, not negative
     * @return the load
     * @throws IllegalArgumentException if a value is not finite or the position is negative
     */
    static VerticalLoad point(double force, double position) {
        return new PointLoad(position, force);
    }

    /**
     * Makes a load uniform on plan.
     *
     * @param intensity load per plan length, N/m, positive downward
     * @param from begin of the loaded range, m, not negative
     * @param to end of the loaded range, m, greater than {@code from}
     * @return the load
     * @throws IllegalArgumentException if a value is not finite or the range is empty
     */
    static VerticalLoad uniform(double intensity, double from, double to) {
        return new LineLoad(from, to, intensity, intensity);
    }

    /**
     * Makes a load that varies linearly on plan.
     *
     * @param from begin of the loaded range, m, not negative
     * @param to end of the loaded range, m, greater than {@code from}
     * @param atFrom load per plan length at the begin, N/m, positive downward
     * @param atTo load per plan length at the end, N/m, positive downward
     * @return the load
     * @throws IllegalArgumentException if a value is not finite or the range is empty
     */
    static VerticalLoad linear(double from, double to, double atFrom, double atTo) {
        return new LineLoad(from, to, atFrom, atTo);
    }

    /**
     * Makes a load uniform along the axis, over a range given on plan, such as self-weight.
     *
     * @param intensity load per length of axis, N/m, positive downward
     * @param from begin of the loaded range on plan, m, not negative
     * @param to end of the loaded range on plan, m, greater than {@code from}
     * @return the load
     * @throws IllegalArgumentException if a value is not finite or the range is empty
     */
    static VerticalLoad onAxis(double intensity, double from, double to) {
        return new AxisLoad(from, to, intensity);
    }

    /**
     * Makes one load of several.
     *
     * @param loads the loads; none at all is no load
     * @return the sum
     */
    static VerticalLoad together(List<? extends VerticalLoad> loads) {
        return new LoadGroup(List.copyOf(loads));
    }

    /**
     * Makes one load of this and another.
     *
     * @param other the other load
     * @return the sum
     */
    default VerticalLoad and(VerticalLoad other) {
        return new LoadGroup(List.of(this, other));
    }

    /**
     * Makes a load of the same kind and place, multiplied.
     *
     * @param factor factor, without unit
     * @return the load, multiplied
     * @throws IllegalArgumentException if the factor is not finite
     */
    VerticalLoad times(double factor);

    /**
     * Lists the single loads in this one.
     *
     * @return the loads, none of them a {@link LoadGroup}
     */
    default List<VerticalLoad> parts() {
        if (this instanceof LoadGroup group) {
            List<VerticalLoad> parts = new ArrayList<>();
            group.loads().forEach(load -> parts.addAll(load.parts()));
            return List.copyOf(parts);
        }
        return List.of(this);
    }

    /**
     * Says whether the load follows from the shape of the axis.
     *
     * @return true if part of it is a load per length of axis
     */
    default boolean followsAxis() {
        return parts().stream().anyMatch(AxisLoad.class::isInstance);
    }
}
