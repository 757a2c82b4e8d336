/**
 * Form finding: chain, catenary, parabola, circle, the funicular of any vertical load, and the line
 * of thrust in a given arch.
 *
 * <p><b>Conventions.</b> All numbers are SI (m, N, N/m, rad). The origin is the left springing,
 * {@code x} runs level to the right, {@code y} up. The right springing lies at {@code (span,
 * rightLevel)}; {@code rightLevel} is positive when it is higher than the left one. Vertical loads
 * are positive downward. The thrust {@code H} is the horizontal component of the force along the
 * line of thrust, positive in compression (for a {@link org.skewback.form.Chain}, which hangs, in
 * tension). Support forces are those on the arch; their vertical components are positive upward.
 * Eccentricity is positive when the line of thrust runs above the axis; the bending moment is then
 * positive too (sagging, tension at the intrados). Curvature is positive where the axis is hollow
 * below, as in an arch.
 *
 * <p>Everything here is statics of a given shape in plane, on the undeformed axis: neither
 * shortening of the rib nor buckling nor the movement of springings is in it. Results are a means
 * of design for licensed engineers who know what was left out; they replace neither the local code
 * nor an independent check.
 *
 * <p>All classes are immutable.
 */
@NullMarked
package org.skewback.form;

import org.jspecify.annotations.NullMarked;
