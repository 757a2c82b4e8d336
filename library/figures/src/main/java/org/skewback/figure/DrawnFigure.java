package org.skewback.figure;

import java.nio.charset.StandardCharsets;
import java.util.Base64;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;
import org.skewback.display.Displayable;
import org.skewback.sheet.Figure;

/**
 * A picture as a figure of a sheet, which a notebook can show.
 *
 * @param picture what is drawn
 */
record DrawnFigure(Picture picture) implements Figure, Displayable {

    @Override
    public String title() {
        return picture.title();
    }

    @Override
    public String description() {
        return picture.description();
    }

    @Override
    public String svg() {
        return SvgWriter.write(picture);
    }

    @Override
    public byte[] png() {
        return PngWriter.write(picture);
    }

    @Override
    public Map<String, String> display() {
        Base64.Encoder base64 = Base64.getEncoder();
        Map<String, String> bundle = new LinkedHashMap<>();
        bundle.put(
                "text/html",
                "<img alt=\""
                        + SvgWriter.escape(title() + ". " + description())
                        + "\" src=\"data:image/svg+xml;base64,"
                        + base64.encodeToString(svg().getBytes(StandardCharsets.UTF_8))
                        + "\">");
        bundle.put("image/png", base64.encodeToString(png()));
        bundle.put("text/plain", toString());
        return Collections.unmodifiableMap(bundle);
    }

    @Override
    public String toString() {
        return title() + "\n" + description();
    }
}
