package org.skewback.form;

import java.util.List;

/**
 * Several loads acting together.
 *
 * @param loads the loads
 */
public record LoadGroup(List<VerticalLoad> loads) implements VerticalLoad {

    /**
     * Makes one load of several.
     *
     * @param loads the loads
     */
    public LoadGroup {
        loads = List.copyOf(loads);
    }

    @Override
    public LoadGroup times(double factor) {
        return new LoadGroup(loads.stream().map(load -> load.times(factor)).toList());
    }
}
