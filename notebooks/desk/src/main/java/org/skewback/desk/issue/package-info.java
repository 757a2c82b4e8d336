/** Issuing a package: running its notebooks, gathering records, moving the whole into place. */
@NullMarked
package org.skewback.desk.issue;

import org.jspecify.annotations.NullMarked;
