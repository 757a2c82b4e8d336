package org.skewback.frame;

/** The six ways in which a node or the end of a member can move. */
public enum Motion {
    /** Displacement along x. */
    ALONG_X(0, "along x"),
    /** Displacement along y. */
    ALONG_Y(1, "along y"),
    /** Displacement along z. */
    ALONG_Z(2, "along z"),
    /** Rotation about x. */
    ABOUT_X(3, "about x"),
    /** Rotation about y. */
    ABOUT_Y(4, "about y"),
    /** Rotation about z. */
    ABOUT_Z(5, "about z");

    private final int index;
    private final String words;

    Motion(int index, String words) {
        this.index = index;
        this.words = words;
    }

    /**
     * Tells rotations from displacements.
     *
     * @return whether this is a rotation
     */
    public boolean isRotation() {
        return index() >= 3;
    }

    /**
     * Gives the axis of the motion.
     *
     * @return the unit vector along which or about which it goes
     */
    public Vector axis() {
        return switch (index() % 3) {
            case 0 -> Vector.X;
            case 1 -> Vector.Y;
            default -> Vector.Z;
        };
    }

    @Override
    public String toString() {
        return words;
    }

    /** Number of this in arrays of six. */
    int index() {
        return index;
    }

    /** The one with a number. */
    static Motion at(int index) {
        return values()[index];
    }
}
