/**
 * Studies of a calculation that is already there: how much each given matters, what happens if some
 * change, which value would just do, and how likely a requirement is not met.
 *
 * <p>Each study runs the graph behind quantities again with other numbers. None changes a quantity
 * or a sheet. Numbers inside are in SI base units; what goes in and comes out has its unit.
 *
 * <p>A probability found here is that of the calculation, with the distributions that were put in.
 * It holds nothing of errors in the model, in the work on site, or of what nobody thought of. Target
 * values of reliability are set by the code that applies at the place, and by the licensed engineer.
 */
@NullMarked
package org.skewback.study;

import org.jspecify.annotations.NullMarked;
