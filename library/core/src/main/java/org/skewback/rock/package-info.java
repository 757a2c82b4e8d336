/**
 * Rock mass ratings and strength, cuts and their volumes, control of vibration at perimeter
 * blasting, grout and shotcrete.
 *
 * <p>Numbers are SI. Ratings hold for the rock that was logged, and two loggers differ by several
 * points; strengths derived from them are estimates. A value that lies on the limit of two classes
 * belongs to the better one, and each rating says so.
 *
 * <p><b>Caution.</b> Nothing here designs a blast: charges, loading, timing and firing are the work
 * of a licensed blaster under the authority in charge. What is here checks spacing for
 * plausibility, and measured vibration against limits set by others.
 *
 * <p>Results are a means of design for licensed engineers; they replace neither the investigation
 * nor the local code.
 *
 * <p>All classes are immutable.
 */
@NullMarked
package org.skewback.rock;

import org.jspecify.annotations.NullMarked;
