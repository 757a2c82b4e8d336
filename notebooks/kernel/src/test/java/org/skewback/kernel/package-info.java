@NullMarked
package org.skewback.kernel;

import org.jspecify.annotations.NullMarked;
