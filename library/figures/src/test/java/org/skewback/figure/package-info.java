/** Tests of figures: what is drawn is measured in the output, not in the code that drew it. */
@NullMarked
package org.skewback.figure;

import org.jspecify.annotations.NullMarked;
