package org.skewback.desk.command;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.LinkedHashMap;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.IVersionProvider;

/** The versions of what a package runs on. */
final class Version implements IVersionProvider {

    private static final String FILE = "/org/skewback/desk/version.txt";

    /** Makes the provider; the command line library calls this. */
    Version() {}

    /** Gives this program's version. */
    static String ofProgram() {
        try (@Nullable InputStream in = Version.class.getResourceAsStream(FILE)) {
            if (in == null) {
                throw new IllegalStateException("the program lacks its " + FILE);
            }
            return new String(in.readAllBytes(), StandardCharsets.UTF_8).strip();
        } catch (IOException e) {
            throw new IllegalStateException("the program cannot read its " + FILE, e);
        }
    }

    /** Gives the versions by name, in the order to print. */
    static Map<String, String> ofAll() {
        Map<String, String> versions = new LinkedHashMap<>();
        versions.put("Skewback", ofProgram());
        versions.put("Java", Runtime.version() + " (" + System.getProperty("java.vendor") + ")");
        versions.put(
                "Operating system",
                System.getProperty("os.name")
                        + " "
                        + System.getProperty("os.version")
                        + " ("
                        + System.getProperty("os.arch")
                        + ")");
        return versions;
    }

    @Override
    public String[] getVersion() {
        return ofAll().entrySet().stream()
                .map(entry -> entry.getKey() + " " + entry.getValue())
                .toArray(String[]::new);
    }
}
