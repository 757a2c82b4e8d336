/**
 * Stability of rock and soil slopes: slides on a plane and on two planes, toppling, slices, the
 * search for the critical surface, earthquake, and the anchor force that is wanted.
 *
 * <p><b>Conventions.</b> Numbers are SI (m, N, Pa, N/m³, rad). Plane problems are taken per metre
 * run of slope: areas in m²/m count as lengths in m, forces in N/m. An orientation is a dip from the
 * level and a dip direction clockwise from north; in space x points east, y north, z up. Earthquake
 * coefficients are parts of gravity: the level one pushes out of the slope, the upright one is
 * positive upward. The plunge of an anchor is positive below the level, pointing into the slope.
 *
 * <p><b>Factor of safety.</b> It is resistance over driving force, the strength that is there over
 * the strength that would just do. An anchor's force along the sliding plane may be taken off the
 * driving force or added to the resistance; the two give different factors at one force, and {@link
 * org.skewback.slope.AnchorConvention} says how far apart they are. Partial factors are applied to
 * strengths and loads before they come here ({@link org.skewback.slope.PartialFactors}); the factor
 * found is then the reserve beyond them.
 *
 * <p>Results hold for the ground, the water and the joints that were put in. They are a means of
 * design for licensed engineers on the ground of an investigation; they replace neither it, nor the
 * local code, nor watching the slope.
 *
 * <p>All classes are immutable.
 */
@NullMarked
package org.skewback.slope;

import org.jspecify.annotations.NullMarked;
