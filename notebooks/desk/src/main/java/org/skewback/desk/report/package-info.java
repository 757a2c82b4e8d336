/** Pages and words that reports of an audit or a comparison have in common. */
@NullMarked
package org.skewback.desk.report;

import org.jspecify.annotations.NullMarked;
