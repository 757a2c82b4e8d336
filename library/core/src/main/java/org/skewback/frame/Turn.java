package org.skewback.frame;

/** Finite rotations as matrices of columns: O. Rodrigues' formula and its inverse. */
final class Turn {

    private final Vector[] columns;

    static final Turn NONE = new Turn(Vector.X, Vector.Y, Vector.Z);

    private Turn(Vector... columns) {
        this.columns = columns;
    }

    /** The rotation that takes the global axes to some others. */
    static Turn to(Vector x, Vector y, Vector z) {
        return new Turn(x, y, z);
    }

    /** Rotation about a vector by its length, rad. */
    static Turn about(Vector vector) {
        double angle = vector.length();
        if (angle == 0) {
            return NONE;
        }
        double sine = StrictMath.sin(angle) / angle;
        double half = StrictMath.sin(angle / 2) / (angle / 2);
        Vector[] turned = new Vector[3];
        Vector[] axes = {Vector.X, Vector.Y, Vector.Z};
        for (int k = 0; k < 3; k++) {
            Vector first = vector.cross(axes[k]);
            turned[k] =
                    axes[k].plus(first.times(sine))
                            .plus(vector.cross(first).times(half * half / 2));
        }
        return new Turn(turned);
    }

    Vector apply(Vector v) {
        return columns[0].times(v.x()).plus(columns[1].times(v.y())).plus(columns[2].times(v.z()));
    }

    /** The components of a vector along the turned axes. */
    Vector back(Vector v) {
        return new Vector(columns[0].dot(v), columns[1].dot(v), columns[2].dot(v));
    }

    /** This after another. */
    Turn after(Turn first) {
        return new Turn(apply(first.columns[0]), apply(first.columns[1]), apply(first.columns[2]));
    }

    /** From this to another, seen in the axes of this: RᵀS. */
    Turn until(Turn other) {
        return new Turn(back(other.columns[0]), back(other.columns[1]), back(other.columns[2]));
    }

    Vector column(int k) {
        return columns[k];
    }

    /** Rotation vector, of length up to π. */
    Vector vector() {
        Vector axial =
                new Vector(
                                columns[1].z() - columns[2].y(),
                                columns[2].x() - columns[0].z(),
                                columns[0].y() - columns[1].x())
                        .times(0.5);
        double sine = axial.length();
        double cosine = (columns[0].x() + columns[1].y() + columns[2].z() - 1) / 2;
        double angle = StrictMath.atan2(sine, cosine);
        if (sine > 1e-8) {
            return axial.times(angle / sine);
        }
        if (cosine > 0) {
            return axial;
        }
        // Half a turn: the axis is the column of (R + 1)/2 with the largest diagonal.
        int k = 0;
        for (int i = 1; i < 3; i++) {
            k = columns[i].get(i) > columns[k].get(k) ? i : k;
        }
        Vector[] axes = {Vector.X, Vector.Y, Vector.Z};
        return columns[k].plus(axes[k]).unit().times(angle);
    }
}
