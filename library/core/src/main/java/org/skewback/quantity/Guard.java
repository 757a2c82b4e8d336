package org.skewback.quantity;

/**
 * A branch that was taken.
 *
 * @param condition what decided
 * @param held how it came out
 */
record Guard(Condition condition, boolean held) {}
