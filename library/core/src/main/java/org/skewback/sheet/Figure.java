package org.skewback.sheet;

import java.util.Optional;

/**
 * A finished figure: one picture in two formats, with the words that stand for it.
 *
 * <p>Implementations are immutable.
 */
public interface Figure {

    /**
     * Gives the figure's title, one line without a number.
     *
     * @return the title; never blank
     */
    String title();

    /**
     * Says what the figure shows, for whoever cannot see it.
     *
     * @return one or more sentences; never blank
     */
    String description();

    /**
     * Gives the figure as a complete SVG document with {@code <title>} and {@code <desc>}, no
     * script, no external reference, and identifiers that no other figure has.
     *
     * @return SVG text that starts with {@code <svg}
     */
    String svg();

    /**
     * Gives the figure as a PNG image of about 200 dots an inch at its printed size.
     *
     * @return PNG bytes, a fresh array at each call
     */
    byte[] png();

    /**
     * Gives the states that a reader can turn to, where this is one of several. A record keeps them
     * all, with the value that each was drawn for.
     *
     * @return the states, this one among them; empty where there is only this
     */
    default Optional<FigureStates> states() {
        return Optional.empty();
    }
}
