/**
 * Tables of the Tablesaw library, in and out; a notebook that uses them names {@code
 * tech.tablesaw:tablesaw-core} in its first cell.
 */
@NullMarked
package org.skewback.table;

import org.jspecify.annotations.NullMarked;
