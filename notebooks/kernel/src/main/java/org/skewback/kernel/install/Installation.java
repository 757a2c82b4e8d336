package org.skewback.kernel.install;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;

/**
 * What was installed, kept beside the kernel so that a later look finds out what has changed.
 *
 * @param javaVersion full version of the Java it was installed for
 * @param jar SHA-256 of the kernel's jar
 * @param specification SHA-256 of {@code kernel.json}
 */
record Installation(String javaVersion, String jar, String specification) {

    private static final String FORMAT = "skewback-installation";

    /**
     * Describes what lies in a folder now.
     *
     * @param folder the kernel's folder
     * @param javaVersion full version of the Java it is installed for
     * @throws IOException if a file cannot be read
     */
    static Installation of(KernelFolder folder, String javaVersion) throws IOException {
        return new Installation(javaVersion, digest(folder.jar()), digest(folder.specification()));
    }

    /**
     * Reads what was written at the installation.
     *
     * @param folder the kernel's folder
     * @throws IOException if it cannot be read
     */
    static Installation read(KernelFolder folder) throws IOException {
        JsonNode json = new ObjectMapper().readTree(Files.readAllBytes(folder.installation()));
        if (!json.path("format").asText("").equals(FORMAT)) {
            throw new IOException(folder.installation() + " is not of this program");
        }
        return new Installation(
                json.path("java").asText(""),
                json.path("jar").asText(""),
                json.path("specification").asText(""));
    }

    /**
     * Writes it.
     *
     * @param file the file to write
     * @throws IOException if it cannot be written
     */
    void write(Path file) throws IOException {
        ObjectMapper json = new ObjectMapper();
        ObjectNode content = json.createObjectNode();
        content.put("format", FORMAT);
        content.put("java", javaVersion);
        content.put("jar", jar);
        content.put("specification", specification);
        Files.write(file, json.writerWithDefaultPrettyPrinter().writeValueAsBytes(content));
    }

    /**
     * Works out the SHA-256 of a file.
     *
     * @param file the file
     * @return 64 hexadecimal digits
     * @throws IOException if it cannot be read
     */
    static String digest(Path file) throws IOException {
        try (InputStream in = Files.newInputStream(file)) {
            MessageDigest sha = MessageDigest.getInstance("SHA-256");
            byte[] part = new byte[1 << 16];
            for (int count = in.read(part); count >= 0; count = in.read(part)) {
                sha.update(part, 0, count);
            }
            return HexFormat.of().formatHex(sha.digest());
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException("every Java has SHA-256", e);
        }
    }
}
