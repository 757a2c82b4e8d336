package org.skewback.figure;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.FileVisitOption;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.Locale;
import java.util.stream.Stream;

/**
 * Lets the platform's text work on a machine without a single font, such as a small container.
 *
 * <p>There the platform fails on its first use of any font, even of one it is handed. It accepts a
 * configuration that names a font file, if it is told of it before that first use.
 */
final class BareMachine {

    private static final String PROPERTY = "sun.awt.fontconfig";

    private BareMachine() {}

    static void letFontsWork() {
        String system = System.getProperty("os.name", "").toLowerCase(Locale.ROOT);
        if (!system.contains("linux") || System.getProperty(PROPERTY) != null || anyFont()) {
            return;
        }
        try {
            Path folder = Files.createTempDirectory("skewback-font");
            Path font = folder.resolve("text.ttf");
            try (InputStream stream = TextFace.REGULAR.open()) {
                Files.copy(stream, font, StandardCopyOption.REPLACE_EXISTING);
            }
            Path configuration = folder.resolve("fontconfig.properties");
            Files.writeString(configuration, configuration(font), StandardCharsets.ISO_8859_1);
            for (Path file : new Path[] {folder, font, configuration}) {
                file.toFile().deleteOnExit();
            }
            System.setProperty(PROPERTY, configuration.toString());
        } catch (IOException e) {
            throw new UncheckedIOException(
                    "This machine has no font, and the bundled one can't be put in a temporary"
                            + " folder; install any TrueType font or make the folder writable",
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

    private static boolean anyFont() {
        String home = System.getProperty("user.home", "");
        return Stream.of(
                        "/usr/share/fonts",
                        "/usr/local/share/fonts",
                        "/usr/share/X11/fonts",
                        home + "/.fonts",
                        home + "/.local/share/fonts")
                .map(Path::of)
                .filter(Files::isDirectory)
                .anyMatch(BareMachine::hasFont);
    }

    private static boolean hasFont(Path folder) {
        try (Stream<Path> files = Files.walk(folder, 8, FileVisitOption.FOLLOW_LINKS)) {
            return files.map(file -> file.toString().toLowerCase(Locale.ROOT))
                    .anyMatch(
                            name ->
                                    name.endsWith(".ttf")
                                            || name.endsWith(".otf")
                                            || name.endsWith(".ttc")
                                            || name.endsWith(".pfb"));
        } catch (IOException | UncheckedIOException e) {
            // A folder that can't be read has no font for the platform either.
            return false;
        }
    }
}
