package org.skewback.sheet;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.Properties;

/** The library's own version, which every record carries. */
final class Library {

    private Library() {}

    static String version() {
        try (InputStream in = Library.class.getResourceAsStream("library.properties")) {
            Properties properties = new Properties();
            if (in != null) {
                properties.load(in);
            }
            return properties.getProperty("version", "unknown");
        } catch (IOException e) {
            throw new UncheckedIOException("the library's version cannot be read", e);
        }
    }
}
