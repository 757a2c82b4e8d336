/**
 * Quantities: numbers that know their unit and where they came from.
 *
 * <p>A {@link org.skewback.quantity.Quantity} holds its value in SI base units as a {@code double},
 * its dimension, the unit to show, and the operation and operands that gave it; so every quantity is
 * a node of an immutable graph that reaches back to the givens. What a sheet prints (symbol =
 * formula = numbers put in = result) is drawn from that graph and never typed beside it.
 *
 * <p>Angles are dimensionless and in radians; degrees, percent and per mille are dimensionless units
 * that print as themselves. Differences of temperature are in kelvin; a value in °C is a reading.
 * Transcendental functions are those of {@link StrictMath}, so that results do not depend on the
 * machine or the Java release.
 */
@NullMarked
package org.skewback.quantity;

import org.jspecify.annotations.NullMarked;
