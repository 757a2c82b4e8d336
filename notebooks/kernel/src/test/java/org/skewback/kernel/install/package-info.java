@NullMarked
package org.skewback.kernel.install;

import org.jspecify.annotations.NullMarked;
