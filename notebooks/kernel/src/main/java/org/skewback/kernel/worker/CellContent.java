package org.skewback.kernel.worker;

import java.util.LinkedHashMap;
import java.util.Map;

/**
 * Content that a cell gives as it is to be shown.
 *
 * @param type its MIME type
 * @param content text, or base64 where the type is binary
 * @param plain what a front end shows that knows no richer type
 */
public record CellContent(String type, String content, String plain) {

    /** The content by MIME type. */
    Map<String, String> bundle() {
        Map<String, String> bundle = new LinkedHashMap<>();
        bundle.put(type, content);
        bundle.put("text/plain", plain);
        return bundle;
    }

    @Override
    public String toString() {
        return plain;
    }
}
