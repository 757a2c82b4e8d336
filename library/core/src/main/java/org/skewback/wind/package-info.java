/**
 * Wind on bridges after EN 1991-1-4: mean wind over height, turbulence, peak pressure, and the force
 * across and upward on a deck, with and without a train.
 *
 * <p><b>Conventions.</b> z is the height above the ground that the wind meets, in a deep valley a matter of
 * judgement; forces are per length of bridge, across positive downwind, upward positive. Clause numbers are
 * those of EN 1991-1-4:2005; its formulas and recommended values stand here from memory unless a reference
 * check says otherwise, and a national annex may change them. The orography factor is the author's: valleys
 * funnel wind, and no formula here knows the site.
 *
 * <p>All classes are immutable.
 */
@NullMarked
package org.skewback.wind;

import org.jspecify.annotations.NullMarked;
