/**
 * The calculation sheet: givens, assumptions, steps, figures, tables and checks, and their record.
 */
@NullMarked
package org.skewback.sheet;

import org.jspecify.annotations.NullMarked;
