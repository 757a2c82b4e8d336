package org.skewback.frame;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;

/**
 * A sum of load cases, each times a factor.
 *
 * @param name what it is called
 * @param factors factor by name of the load case
 */
public record Combination(String name, Map<String, Double> factors) {

    /**
     * Copies the factors.
     *
     * @param name what it is called
     * @param factors factor by name of the load case
     * @throws IllegalArgumentException if the name is blank or a factor not finite
     */
    public Combination {
        Require.name("combination", name);
        factors.forEach(
                (load, factor) -> Require.finite("factor of " + load + " in " + name, factor, ""));
        factors = Collections.unmodifiableMap(new LinkedHashMap<>(factors));
    }
}
