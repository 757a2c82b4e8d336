package org.skewback.form;

import java.util.ArrayList;
import java.util.List;
import org.skewback.quantity.Quantity;

/** The loads of the routines: point loads, a load all over on plan, and one all along the axis. */
final class RoutineLoads {

    private RoutineLoads() {}

    static VerticalLoad of(
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
