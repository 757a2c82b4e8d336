/** Measurements of speed with JMH; shipped to nobody. */
@NullMarked
package org.skewback.benchmarks;

import org.jspecify.annotations.NullMarked;
