package org.skewback.frame;

import org.skewback.steel.Section;
import org.skewback.steel.Shape;

/**
 * The cross-section along a member.
 *
 * <p>A function of the reader's own will do, if it is smooth: stiffness is integrated along the
 * member until it stands still to 1e-12.
 */
@FunctionalInterface
public interface SectionProfile {

    /**
     * Gives the section at a place.
     *
     * @param fraction distance from the start over the length, 0 to 1
     * @return the section there
     */
    Section at(double fraction);

    /**
     * Gives the one section of a member that has the same all along.
     *
     * @param section the section
     * @return the profile
     */
    static SectionProfile uniform(Section section) {
        return new Uniform(section);
    }

    /**
     * Gives the profile of a member whose dimensions change linearly from start to end.
     *
     * @param start section at the start, with its shape
     * @param end section at the end, with a shape of the same kind
     * @return the profile
     * @throws IllegalArgumentException if a section has no shape, or the shapes differ in kind
     */
    static SectionProfile tapered(Section start, Section end) {
        return new Tapered(start, end);
    }

    /**
     * The same section all along.
     *
     * @param section the section
     */
    record Uniform(Section section) implements SectionProfile {
        @Override
        public Section at(double fraction) {
            return section;
        }
    }

    /**
     * Dimensions that change linearly.
     *
     * @param start section at the start
     * @param end section at the end
     */
    record Tapered(Section start, Section end) implements SectionProfile {

        /**
         * Checks that both sections have shapes of one kind.
         *
         * @param start section at the start
         * @param end section at the end
         * @throws IllegalArgumentException if a section has no shape, or the shapes differ in kind
         */
        public Tapered {
            shape(start).towards(shape(end), 0);
        }

        private static Shape shape(Section section) {
            Shape shape = section.shape();
            if (shape == null) {
                throw new IllegalArgumentException(
                        "a taper to section "
                                + section.name()
                                + ", whose properties were given; allowed are sections made from"
                                + " a shape.");
            }
            return shape;
        }

        @Override
        public Section at(double fraction) {
            return shape(start).towards(shape(end), fraction).section(start.name());
        }
    }
}
