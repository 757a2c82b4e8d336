@NullMarked
package org.skewback.kernel.wire;

import org.jspecify.annotations.NullMarked;
