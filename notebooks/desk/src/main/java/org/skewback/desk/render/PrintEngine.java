package org.skewback.desk.render;

import com.openhtmltopdf.util.Diagnostic;
import com.openhtmltopdf.util.XRLog;
import com.openhtmltopdf.util.XRLogger;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;
import java.util.logging.Level;

/**
 * Prepares the Java platform and the PDF engine, once, before either first needs a font.
 *
 * <p>On Linux the platform asks the machine for fonts and fails where there is none; and where a
 * figure names no font of ours, what stands on the page would depend on the machine. A configuration
 * that names our own font cures both, provided the platform is told before its first use of any.
 */
final class PrintEngine {

    private static final String PROPERTY = "sun.awt.fontconfig";

    private PrintEngine() {}

    /** Prepares platform and engine; does nothing the second time. */
    static void prepare() {
        Once.prepared();
    }

    /** The first use of the class, and only that, runs this. */
    private static final class Once {
        static {
            XRLog.setLoggerImpl(new Quiet());
            bringFont();
        }

        private Once() {}

        static void prepared() {
            // The work is done when the class is there.
        }
    }

    private static void bringFont() {
        boolean linux =
                System.getProperty("os.name", "").toLowerCase(Locale.ROOT).contains("linux");
        if (!linux || System.getProperty(PROPERTY) != null) {
            return;
        }
        try {
            Path folder = Files.createTempDirectory("skewback-print");
            Path font = folder.resolve("text.ttf");
            Path configuration = folder.resolve("fontconfig.properties");
            Files.write(font, Fonts.SPARE.bytes());
            Files.writeString(configuration, configuration(font), StandardCharsets.ISO_8859_1);
            for (Path path : new Path[] {folder, font, configuration}) {
                path.toFile().deleteOnExit();
            }
            System.setProperty(PROPERTY, configuration.toString());
        } catch (IOException e) {
            throw new UncheckedIOException(
                    "a font for printing cannot be put into a temporary folder: " + e.getMessage(),
                    e);
        }
    }

    private static String configuration(Path font) {
        StringBuilder text = new StringBuilder("version=1\nsequence.allfonts=default\n");
        for (String family :
                new String[] {"serif", "sansserif", "monospaced", "dialog", "dialoginput"}) {
            for (String face : new String[] {"plain", "bold", "italic", "bolditalic"}) {
                text.append(family).append('.').append(face).append(".default=Text\n");
            }
        }
        return text.append("filename.Text=").append(font).append('\n').toString();
    }

    /** The engine tells whoever made it what went wrong; it need not tell the terminal too. */
    private static final class Quiet implements XRLogger {
        @Override
        public void log(String where, Level level, String message) {
            // See the class comment.
        }

        @Override
        public void log(String where, Level level, String message, Throwable cause) {
            // See the class comment.
        }

        @Override
        public void setLevel(String logger, Level level) {
            // There is nothing to set.
        }

        @Override
        public boolean isLogLevelEnabled(Diagnostic diagnostic) {
            return false;
        }
    }
}
