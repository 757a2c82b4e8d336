/** Finding libraries in the user's local Maven repository. */
@NullMarked
package org.skewback.kernel.repository;

import org.jspecify.annotations.NullMarked;
