package org.skewback.display;

import java.util.Map;

/**
 * A value that can show itself richly in a notebook.
 *
 * <p>Only {@code java.*} types appear here on purpose: a kernel need not be compiled against this
 * library, nor against the same version of it; it looks for an interface of this name and calls its
 * one method. A kernel that does not know the interface falls back to {@link Object#toString()}.
 */
public interface Displayable {

    /**
     * Gives the same content in several formats, richest first.
     *
     * @return content by MIME type, in order of preference. Text formats hold their text; binary
     *     formats hold base64 without line breaks; JSON formats ({@code application/json} and every
     *     type that ends in {@code +json}) hold JSON text. Always has {@code text/plain}.
     */
    Map<String, String> display();
}
