/**
 * Numerical methods of our own: only what Commons Math lacks or does without the care wanted here.
 */
@NullMarked
package org.skewback.numeric;

import org.jspecify.annotations.NullMarked;
