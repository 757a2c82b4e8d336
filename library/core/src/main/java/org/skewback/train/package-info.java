/**
 * Trains as loads: the load models of EN 1991-2 and real trains, read from tables, and what they do to a
 * response while they pass.
 *
 * <p><b>Conventions.</b> Distances are measured backward from the first axle or the head of the train, in m;
 * forces are weights in N, positive downward. Load models are static: classification and dynamic factors are
 * the author's to apply.
 *
 * <p>All classes are immutable.
 */
@NullMarked
package org.skewback.train;

import org.jspecify.annotations.NullMarked;
