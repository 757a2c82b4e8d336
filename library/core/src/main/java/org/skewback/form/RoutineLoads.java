package org.skewback.form;

import java.util.ArrayList;
import java.util.List;
import org.skewback.quantity.Quantity;

/** The loads of the routines: point loads, a load all over on plan, and one all along the axis. */
public final class RoutineLoads {

    private RoutineLoads() {}

    /**
     * Makes one load of them.
     *
     * @param positions positions of the point loads from the left springing
     * @param forces point loads, positive downward, one for each position
     * @param onPlan load per plan length all over the span; 0 kN/m for none
     * @param onAxis load per length of axis all along it; 0 kN/m for none
     * @param span level distance between the springings, m, greater than 0
     * @return the load
     * @throws IllegalArgumentException if there is not one load for each position, or a value is out of range
     */
    public static VerticalLoad of(
            List<Quantity> positions,
            List<Quantity> forces,
            Quantity onPlan,
            Quantity onAxis,
            double span) {
        if (positions.size() != forces.size()) {
            throw new IllegalArgumentException(
                    "number of loads is "
                            + forces.size()
                            + "; allowed is one for each of the "
                            + positions.size()
                            + " positions.");
        }
        List<VerticalLoad> loads = new ArrayList<>();
        for (int i = 0; i < forces.size(); i++) {
            loads.add(new PointLoad(positions.get(i).in("m"), forces.get(i).in("N")));
        }
        if (onPlan.in("N/m") != 0) {
            loads.add(new LineLoad(0, span, onPlan.in("N/m"), onPlan.in("N/m")));
        }
        if (onAxis.in("N/m") != 0) {
            loads.add(new AxisLoad(0, span, onAxis.in("N/m")));
        }
        return VerticalLoad.together(loads);
    }
}
