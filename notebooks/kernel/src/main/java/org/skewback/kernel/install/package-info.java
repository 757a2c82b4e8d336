/** Installing the kernel for the user's Jupyter, and removing it. */
@NullMarked
package org.skewback.kernel.install;

import org.jspecify.annotations.NullMarked;
