/**
 * Steel: for now the properties of cross-sections that a frame analysis needs.
 *
 * <p><b>Axes of a section.</b> Looking along the member from its start to its end, {@code x} runs
 * along the member, {@code y} across and {@code z} up; {@code y} and {@code z} are principal axes
 * through the centroid, which is taken to be the shear centre too. {@code inertiaY} is the second
 * moment of area for bending about {@code y} (∫z² dA), {@code shearAreaZ} carries the shear force
 * along {@code z}. All numbers are SI (m, m², m⁴).
 */
@NullMarked
package org.skewback.steel;

import org.jspecify.annotations.NullMarked;
