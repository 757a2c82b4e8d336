/** Running Java cells: the compiler on this side, the worker VM on the other. */
@NullMarked
package org.skewback.kernel.evaluation;

import org.jspecify.annotations.NullMarked;
