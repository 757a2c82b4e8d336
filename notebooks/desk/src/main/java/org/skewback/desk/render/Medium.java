package org.skewback.desk.render;

import org.jspecify.annotations.Nullable;
import org.skewback.quantity.Quantity;

/** What a page for the screen and a page for paper do differently. */
interface Medium {

    /** Sets how a step was worked out, broken into lines as the medium's width asks for. */
    String worked(Quantity quantity);

    /**
     * Sets an equation.
     *
     * @param mathml a complete {@code <math>} element
     * @param display whether it stands on a line of its own
     * @return markup to stand in running text
     */
    String equation(String mathml, boolean display);

    /** Sets a picture that stands as {@code data:} in the page. */
    String picture(String mediaType, String base64, String alternative);

    /** Says a result in words and figures where the equation alone is no text; else empty. */
    String result(Quantity quantity);

    /** Tells where a number comes from, where the medium can unfold it; else empty. */
    String origin(Quantity quantity);

    /** Shows the source of a cell beside its outputs; empty where it stands elsewhere. */
    String code(String source);

    /** Sets text as it stands, such as the output of a program. */
    String lines(String kind, String text);

    /** Gives the address of a document, or of a block in it, or null where it cannot be reached. */
    @Nullable String address(String slug, @Nullable String block);

    /** Gives the identifier of a block's element, by which {@link #address} finds it. */
    String identifier(String slug, String block);

    /**
     * Puts what may be too wide into a box that scrolls by itself, where the medium can.
     *
     * @param label what the box holds, for whoever reaches it by keyboard; empty where it is one of
     *     very many
     */
    String wide(String markup, String label);

    /**
     * Sets a table so that it can be read in the width that there is.
     *
     * @param markup a table with a row of heads and no other table in it
     * @param label what the table holds, for whoever reaches it by keyboard
     */
    String table(String markup, String label);

    /**
     * Sets a sweep: on the screen one state at a time, on paper those chosen for it.
     *
     * @param sweep its states
     * @param name a name that no other sweep of the page has, of letters, digits and dashes
     * @param number markup of what people call it, set before its title; may be empty
     */
    String sweep(SweepStates sweep, String name, String number);

    /**
     * Sets an answer that is hidden until asked for: folded on the screen, on paper at the end of
     * its document.
     *
     * @param title what stands on the fold
     * @param markup what the answer says
     */
    String answer(String title, String markup);
}
