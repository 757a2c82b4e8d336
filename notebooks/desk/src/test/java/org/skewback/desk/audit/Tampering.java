package org.skewback.desk.audit;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.skewback.desk.Json;
import org.skewback.desk.issue.Manifest;

/** What a tamperer does to an issued folder. */
final class Tampering {

    private Tampering() {}

    static void copy(Path from, Path to) throws IOException {
        try (Stream<Path> walk = Files.walk(from)) {
            for (Path path : walk.toList()) {
                Path there = to.resolve(from.relativize(path).toString());
                if (Files.isDirectory(path)) {
                    Files.createDirectories(there);
                } else {
                    Files.copy(path, there);
                }
            }
        }
    }

    static List<Path> files(Path folder) throws IOException {
        try (Stream<Path> walk = Files.walk(folder)) {
            return walk.filter(Files::isRegularFile).sorted().toList();
        }
    }

    /** Makes sizes and digests in the manifest right again. */
    static void redoHashes(Path folder) throws IOException {
        Path file = folder.resolve(Manifest.FILE);
        JsonNode root = Json.read(Files.readAllBytes(file));
        for (JsonNode entry : root.path("files")) {
            Path there = folder.resolve(entry.path("path").asText());
            ((ObjectNode) entry).put("size", Files.size(there));
            ((ObjectNode) entry)
                    .put(
                            "sha256",
                            Manifest.sha256(new ByteArrayInputStream(Files.readAllBytes(there))));
        }
        Files.writeString(file, Json.page(root));
    }

    static void replace(Path file, String old, String with) throws IOException {
        String text = Files.readString(file);
        if (!text.contains(old)) {
            throw new IllegalArgumentException(file + " does not hold " + old);
        }
        Files.write(file, text.replace(old, with).getBytes(StandardCharsets.UTF_8));
    }
}
