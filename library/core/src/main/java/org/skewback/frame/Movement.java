package org.skewback.frame;

/**
 * How a point moves.
 *
 * @param translation displacement, m
 * @param rotation rotation, right-handed, rad
 */
public record Movement(Vector translation, Vector rotation) {

    /**
     * Gives one of the six motions.
     *
     * @param motion which
     * @return its value, m or rad
     */
    public double get(Motion motion) {
        return motion.isRotation()
                ? rotation.get(motion.index() - 3)
                : translation.get(motion.index());
    }

    /**
     * Adds a multiple of another movement.
     *
     * @param factor the factor
     * @param other the other movement
     * @return this + factor · other
     */
    public Movement plus(double factor, Movement other) {
        return new Movement(
                translation.plus(other.translation.times(factor)),
                rotation.plus(other.rotation.times(factor)));
    }
}
