/** The files of an issue, as a folder or inside its PDF, read without trust. */
@NullMarked
package org.skewback.desk.holding;

import org.jspecify.annotations.NullMarked;
