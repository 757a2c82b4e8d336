/**
 * Published values held against the library: rows of data, the routines they exercise, and the
 * register of both.
 */
@NullMarked
package org.skewback.checks;

import org.jspecify.annotations.NullMarked;
