/** Comparing two issues: what changed, and what that moved. */
@NullMarked
package org.skewback.desk.compare;

import org.jspecify.annotations.NullMarked;
