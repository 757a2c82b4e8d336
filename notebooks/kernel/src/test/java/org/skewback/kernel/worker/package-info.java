@NullMarked
package org.skewback.kernel.worker;

import org.jspecify.annotations.NullMarked;
