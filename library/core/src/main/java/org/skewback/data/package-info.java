/**
 * Tables of measured or listed values as CSV, with the unit of each column in its heading.
 */
@NullMarked
package org.skewback.data;

import org.jspecify.annotations.NullMarked;
