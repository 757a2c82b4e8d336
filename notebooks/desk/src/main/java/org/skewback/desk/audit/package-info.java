/** Auditing an issue: is it whole, do its numbers come out again, does it show what it records. */
@NullMarked
package org.skewback.desk.audit;

import org.jspecify.annotations.NullMarked;
