/**
 * First estimates by which ways of crossing a valley are compared: steel of ribs, girders, columns and
 * hangers, concrete of piers, deflections, and a ranking by weighted measures.
 *
 * <p><b>Conventions.</b> Loads are per length of bridge, positive downward; a rib's quantities are those
 * of all ribs together; stresses are those that an estimate may count on under the loads it is given, by
 * the author's judgement, and no resistances. Everything is a closed formula on quantities, so that
 * whoever reads a comparison can unfold each of its numbers.
 *
 * <p>These are measures for choosing what to work out. None of them shows that a bridge stands.
 */
@NullMarked
package org.skewback.choice;

import org.jspecify.annotations.NullMarked;
