/** Java processes apart from the program, in which it reads what strangers wrote. */
@NullMarked
package org.skewback.desk.apart;

import org.jspecify.annotations.NullMarked;
