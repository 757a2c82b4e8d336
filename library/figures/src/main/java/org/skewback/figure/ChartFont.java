package org.skewback.figure;

import java.awt.Font;
import java.awt.FontFormatException;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;

/** The bundled font as the platform's own, which the chart library measures tick labels with. */
final class ChartFont {

    /** One point high; derive a size from it. */
    static final Font UNIT = load();

    private ChartFont() {}

    private static Font load() {
        BareMachine.letFontsWork();
        try (InputStream stream = TextFace.REGULAR.open()) {
            return Font.createFont(Font.TRUETYPE_FONT, stream);
        } catch (IOException e) {
            throw new UncheckedIOException("The figure font can't be read", e);
        } catch (FontFormatException e) {
            throw new IllegalStateException("The figure font is damaged", e);
        }
    }
}
