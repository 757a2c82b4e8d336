/**
 * What a notebook kernel and the library say to each other, in {@code java.*} types only.
 */
@NullMarked
package org.skewback.display;

import org.jspecify.annotations.NullMarked;
