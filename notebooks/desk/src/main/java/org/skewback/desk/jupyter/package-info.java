/**
 * A client of the Jupyter messaging protocol: starts a kernel, runs cells, gathers what they give.
 */
@NullMarked
package org.skewback.desk.jupyter;

import org.jspecify.annotations.NullMarked;
