package org.skewback.figure;

import java.util.List;

/**
 * A finished picture, not yet in any format.
 *
 * @param title one line
 * @param description what it shows
 * @param width page width in points
 * @param height page height in points
 * @param marks what to draw, in painting order
 */
record Picture(String title, String description, double width, double height, List<Mark> marks) {

    Picture {
        Check.words("title", title);
        Check.words("description", description);
        Check.positive("width", width);
        Check.positive("height", height);
        marks = List.copyOf(marks);
    }
}
