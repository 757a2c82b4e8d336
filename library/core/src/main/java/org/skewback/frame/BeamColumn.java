package org.skewback.frame;

import org.skewback.steel.Section;

/**
 * A straight member that carries axial force, shear, bending and torsion.
 *
 * @param name what it is called
 * @param start node where it starts
 * @param end node where it ends
 * @param material its material
 * @param profile its cross-section along it
 * @param orientation how its local axes lie
 * @param startOffset rigid arm from the start node to the start of the flexible part, global axes, m
 * @param endOffset rigid arm from the end node to the end of the flexible part, global axes, m
 * @param startConnection how the start is joined
 * @param endConnection how the end is joined
 */
public record BeamColumn(
        String name,
        String start,
        String end,
        Material material,
        SectionProfile profile,
        Orientation orientation,
        Vector startOffset,
        Vector endOffset,
        EndConnection startConnection,
        EndConnection endConnection)
        implements Member {

    /**
     * Checks the name.
     *
     * @param name what it is called
     * @param start node where it starts
     * @param end node where it ends
     * @param material its material
     * @param profile its cross-section along it
     * @param orientation how its local axes lie
     * @param startOffset rigid arm at the start, global axes, m
     * @param endOffset rigid arm at the end, global axes, m
     * @param startConnection how the start is joined
     * @param endConnection how the end is joined
     * @throws IllegalArgumentException if the name is blank
     */
    public BeamColumn {
        Require.name("member", name);
    }

    /**
     * Makes a member of one section, rigidly joined, with the usual axes.
     *
     * @param name what it is called
     * @param start node where it starts
     * @param end node where it ends
     * @param material its material
     * @param section its cross-section
     * @return the member
     */
    public static BeamColumn of(
            String name, String start, String end, Material material, Section section) {
        return of(name, start, end, material, SectionProfile.uniform(section));
    }

    /**
     * Makes a member, rigidly joined, with the usual axes.
     *
     * @param name what it is called
     * @param start node where it starts
     * @param end node where it ends
     * @param material its material
     * @param profile its cross-section along it
     * @return the member
     */
    public static BeamColumn of(
            String name, String start, String end, Material material, SectionProfile profile) {
        return new BeamColumn(
                name,
                start,
                end,
                material,
                profile,
                Orientation.USUAL,
                Vector.ZERO,
                Vector.ZERO,
                EndConnection.RIGID,
                EndConnection.RIGID);
    }

    /**
     * Gives this member with other local axes.
     *
     * @param other how the axes lie
     * @return the member
     */
    public BeamColumn oriented(Orientation other) {
        return new BeamColumn(
                name,
                start,
                end,
                material,
                profile,
                other,
                startOffset,
                endOffset,
                startConnection,
                endConnection);
    }

    /**
     * Gives this member with rigid arms at its ends.
     *
     * @param atStart arm from the start node to the flexible part, global axes, m
     * @param atEnd arm from the end node to the flexible part, global axes, m
     * @return the member
     */
    public BeamColumn offset(Vector atStart, Vector atEnd) {
        return new BeamColumn(
                name,
                start,
                end,
                material,
                profile,
                orientation,
                atStart,
                atEnd,
                startConnection,
                endConnection);
    }

    /**
     * Gives this member with other joints at its ends.
     *
     * @param atStart how the start is joined
     * @param atEnd how the end is joined
     * @return the member
     */
    public BeamColumn connected(EndConnection atStart, EndConnection atEnd) {
        return new BeamColumn(
                name,
                start,
                end,
                material,
                profile,
                orientation,
                startOffset,
                endOffset,
                atStart,
                atEnd);
    }
}
