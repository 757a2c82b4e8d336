package org.skewback.checks;

import java.util.Map;
import org.skewback.quantity.Quantity;

/** What a check exercises: a routine of the library from inputs to named results. */
@FunctionalInterface
interface Checked {

    Map<String, Quantity> run(Inputs inputs);
}
