/**
 * Temperature of bridges after EN 1991-1-5, and the combination of actions after EN 1990 by tables that a
 * national annex may change.
 *
 * <p><b>Conventions.</b> Temperatures of air and bridge are readings in °C, their differences kelvin. Ranges
 * and differences are given as magnitudes: expansion, contraction, heating (top warmer) and cooling (bottom
 * warmer). Clause numbers are those of EN 1991-1-5:2003 and EN 1990:2002 with A1:2005; recommended values
 * stand here from memory unless a reference check says otherwise.
 *
 * <p>All classes are immutable.
 */
@NullMarked
package org.skewback.action;

import org.jspecify.annotations.NullMarked;
