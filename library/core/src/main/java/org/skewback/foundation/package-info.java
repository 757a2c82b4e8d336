/**
 * Footings on rock and near the edge of a slope: contact pressure, sliding, overturning, bearing,
 * settlement, stress below, and the block that takes an arch's thrust.
 *
 * <p>Numbers are SI. Forces on a footing: N square to the base, positive pressing; H along it; M
 * about the middle of the base. Eccentricities are M/N. Pressure below a footing is taken as linear,
 * as that of a stiff footing on springs.
 *
 * <p>Bearing capacities hold for the rock mass that was put in, alike in all directions: a joint that
 * leads out of the slope below a footing is a matter of {@code org.skewback.slope} and governs more
 * often.
 *
 * <p>Results are a means of design for licensed engineers; they replace neither the investigation
 * nor the local code. All classes are immutable.
 */
@NullMarked
package org.skewback.foundation;

import org.jspecify.annotations.NullMarked;
