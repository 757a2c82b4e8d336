/**
 * Elastic arches in their plane: closed forms of three-hinged, two-hinged and fixed arches, any axis
 * by the force method, influence lines, and what buckles.
 *
 * <p><b>Conventions.</b> The origin is the left springing, {@code x} runs level to the right, {@code
 * y} up. Vertical loads are positive downward. The thrust {@code H} is positive where the springings
 * push inward; vertical reactions are positive upward. Bending moments are positive sagging (tension
 * at the intrados), at the springings too. Axial forces are positive in compression. A spread of the
 * springings is positive when they move apart, warming is positive.
 *
 * <p>Closed forms take and give {@link org.skewback.quantity.Quantity}; what integrates or solves
 * works in SI numbers and has a {@link org.skewback.quantity.Routine} at its door.
 *
 * <p>All of it is first-order theory on the undeformed axis, but for what says <i>buckling</i>, which
 * is linearised about the undeformed axis. Results are a means of design for licensed engineers; they
 * replace neither the local code nor an independent check.
 *
 * <p>All classes are immutable.
 */
@NullMarked
package org.skewback.arch;

import org.jspecify.annotations.NullMarked;
