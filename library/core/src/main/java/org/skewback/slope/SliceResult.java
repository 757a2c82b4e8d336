package org.skewback.slope;

import java.util.List;

/**
 * Factor of safety on one surface by one method, with the slices for a table.
 *
 * @param method the method
 * @param factor factor of safety F
 * @param lambda scale of the inclination of the forces between slices, λ; 0 for methods without
 * @param correction Janbu's factor f₀, where it was applied; else 1
 * @param slices the slices from the upper end down
 */
public record SliceResult(
        SliceMethod method, double factor, double lambda, double correction, List<Slice> slices) {

    /**
     * Copies the slices.
     *
     * @param method the method
     * @param factor factor of safety F
     * @param lambda scale of the inclination of the forces between slices
     * @param correction Janbu's factor, or 1
     * @param slices the slices from the upper end down
     */
    public SliceResult {
        slices = List.copyOf(slices);
    }

    /**
     * One slice.
     *
     * @param x position of the middle, m
     * @param width width, m
     * @param weight weight of the ground in it, N/m
     * @param baseAngle fall of the base in the direction of sliding, rad
     * @param effectiveNormal force square to the base less the water's, N/m; a pull where negative
     * @param mobilised shear force on the base, N/m
     * @param between level force on its lower side, E, N/m; 0 for methods that leave it out
     */
    public record Slice(
            double x,
            double width,
            double weight,
            double baseAngle,
            double effectiveNormal,
            double mobilised,
            double between) {}

    /**
     * Counts the slices whose base would be pulled: where there are some at the upper end, a tension
     * crack belongs in the section.
     *
     * @return number of slices
     */
    public long pulled() {
        return slices.stream().filter(slice -> slice.effectiveNormal() < 0).count();
    }
}
