package org.skewback.figure;

import org.skewback.quantity.Quantity;
import org.skewback.quantity.Source;
import org.skewback.sheet.Check;
import org.skewback.study.Distribution;
import org.skewback.study.Reliability;
import org.skewback.study.Sampling;
import org.skewback.study.Sensitivity;
import org.skewback.study.Simulation;
import org.skewback.study.Uncertainty;

/** A beam under load with three uncertain givens, which the tests draw. */
final class Studies {

    static final Quantity LOAD = given("q", 10, "kN/m");
    static final Quantity SPAN = given("L", 8, "m");
    static final Quantity STRENGTH = given("M_Rd", 120, "kN·m");
    static final Quantity MOMENT =
            LOAD.times(SPAN.squared()).over(8).named("M_Ed", "kN·m", "moment at midspan");
    static final Uncertainty LOADS =
            Uncertainty.none()
                    .with(LOAD, Distribution.gumbel(LOAD, Quantity.of(2, "kN/m")))
                    .with(SPAN, Distribution.normal(SPAN, Quantity.of(5, "cm")));

    private Studies() {}

    private static Quantity given(String symbol, double value, String unit) {
        return Quantity.given(symbol, value, unit, "", Source.assumption("an example"));
    }

    static Sensitivity sensitivity() {
        return Sensitivity.of(MOMENT, LOADS);
    }

    static Simulation simulation(long samples) {
        return Reliability.of(new Check("moment", MOMENT, null, STRENGTH), LOADS)
                .simulate(Sampling.of(samples));
    }

    static Simulation uncertainStrength() {
        return Reliability.of(
                        new Check("moment", MOMENT, null, STRENGTH),
                        LOADS.with(STRENGTH, Distribution.lognormal(STRENGTH, Quantity.of(0.08))))
                .simulate(Sampling.of(20_000));
    }
}
