/** What every part of the desk shares: the error in the user's words and the JSON it reads. */
@NullMarked
package org.skewback.desk;

import org.jspecify.annotations.NullMarked;
