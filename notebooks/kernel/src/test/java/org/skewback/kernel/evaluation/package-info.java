@NullMarked
package org.skewback.kernel.evaluation;

import org.jspecify.annotations.NullMarked;
