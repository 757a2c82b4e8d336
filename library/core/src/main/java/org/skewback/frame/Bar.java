package org.skewback.frame;

import org.skewback.steel.Section;

/**
 * A straight member with frictionless joints: it resists changes of its length only. A load across it
 * goes to its nodes as from a simple beam.
 *
 * @param name what it is called
 * @param start node where it starts
 * @param end node where it ends
 * @param material its material
 * @param section its cross-section
 * @param carries which axial forces it can carry
 */
public record Bar(
        String name, String start, String end, Material material, Section section, Carries carries)
        implements Member {

    /** Which axial forces a bar can carry. */
    public enum Carries {
        /** Tension and compression. */
        BOTH,
        /** Tension only: it goes slack when pushed. */
        TENSION,
        /** Compression only: it opens when pulled. */
        COMPRESSION
    }

    /**
     * Checks the name.
     *
     * @param name what it is called
     * @param start node where it starts
     * @param end node where it ends
     * @param material its material
     * @param section its cross-section
     * @param carries which axial forces it can carry
     * @throws IllegalArgumentException if the name is blank
     */
    public Bar {
        Require.name("member", name);
    }

    /**
     * Makes a bar that carries tension and compression.
     *
     * @param name what it is called
     * @param start node where it starts
     * @param end node where it ends
     * @param material its material
     * @param section its cross-section
     * @return the bar
     */
    public static Bar of(
            String name, String start, String end, Material material, Section section) {
        return new Bar(name, start, end, material, section, Carries.BOTH);
    }

    /**
     * Gives this bar for tension only or compression only.
     *
     * @param which axial forces it can carry
     * @return the bar
     */
    public Bar carrying(Carries which) {
        return new Bar(name, start, end, material, section, which);
    }
}
