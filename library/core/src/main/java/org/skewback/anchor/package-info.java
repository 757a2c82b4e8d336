/**
 * Prestressed anchors in rock: tendon, bond, cone, lock-off and losses, the block at the head,
 * acceptance tests from records, and watching over years.
 *
 * <p>Numbers are SI. Limits of standards are named where they stand; those marked "from memory" were
 * not read again and are to be compared with the edition that applies. An anchor that passed its
 * test says nothing of its neighbour: each is tested.
 *
 * <p><b>Caution.</b> A stressed tendon that lets go kills: nobody stands behind a jack. Tests and
 * lock-off are the work of trained people under the code that applies.
 *
 * <p>Results are a means of design for licensed engineers. All classes are immutable.
 */
@NullMarked
package org.skewback.anchor;

import org.jspecify.annotations.NullMarked;
