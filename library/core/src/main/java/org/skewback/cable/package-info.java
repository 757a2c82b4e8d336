/**
 * Hanging cables: the elastic catenary, exact in its plane, with point loads; flat cables as parabolas.
 *
 * <p><b>Units.</b> SI throughout: m, N, N/m.
 *
 * <p><b>Axes.</b> {@code x} is level, from the start of a cable to its end; {@code z} is up. A place on a
 * cable is told by {@code s}, the length from its start measured on the unstressed cable, so that it
 * stays with the cable whatever the force. Weights and loads act downward and are positive.
 *
 * <p><b>Theory.</b> A cable carries tension only; bending, and the loss of section as it stretches, are
 * ignored; elongation is linear in the tension. Weight goes with the unstressed length. H. M. Irvine,
 * <i>Cable Structures</i>, 1981, chapters 1 to 3; W. T. O'Brien and A. J. Francis, Cable movements under
 * two-dimensional loads, J. Struct. Div. ASCE 90 (1964) ST3, 89–123.
 *
 * <p>Fatigue, saddles, corrosion and what happens when a cable is lost are not here; results are a means
 * for licensed engineers and replace neither the local code nor an independent check.
 */
@NullMarked
package org.skewback.cable;

import org.jspecify.annotations.NullMarked;
