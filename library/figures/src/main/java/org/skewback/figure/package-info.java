/**
 * Figures: elevations and sections drawn to one scale in both directions, and charts in one house
 * style; frames with their supports, displacements, forces, shapes and stages; each as SVG and PNG.
 *
 * <p>Weight and dash carry meaning before colour does, so that a greyscale print says the same.
 */
@NullMarked
package org.skewback.figure;

import org.jspecify.annotations.NullMarked;
