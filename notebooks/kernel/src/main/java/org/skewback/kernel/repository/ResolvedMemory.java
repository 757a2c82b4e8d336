package org.skewback.kernel.repository;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.AtomicMoveNotSupportedException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.ArrayList;
import java.util.HexFormat;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.skewback.kernel.evaluation.Libraries;

/**
 * What was resolved from the local repository before, kept in it. It is used again only while each
 * file that decided it has the size and the time that it had then; loading Maven's resolver takes
 * longer than looking at a hundred files.
 */
final class ResolvedMemory {

    private static final String FORMAT = "skewback-resolved";
    private static final int EDITION = 1;
    private static final ObjectMapper JSON = new ObjectMapper();

    private final Path repository;

    ResolvedMemory(Path repository) {
        this.repository = repository;
    }

    /** Gives what was resolved, or null where nothing is known or a file has changed. */
    Libraries.@Nullable Found recall(String coordinates) {
        try {
            Path file = file(coordinates);
            if (!Files.isRegularFile(file)) {
                return null;
            }
            JsonNode json = JSON.readTree(Files.readAllBytes(file));
            if (!json.path("format").asText("").equals(FORMAT)
                    || json.path("edition").asInt() != EDITION
                    || !json.path("java").asText("").equals(System.getProperty("java.version"))
                    || !json.path("coordinates").asText("").equals(coordinates)) {
                return null;
            }
            for (JsonNode seen : json.path("files")) {
                Path path = repository.resolve(seen.path("path").asText());
                if (Files.size(path) != seen.path("size").asLong()
                        || Files.getLastModifiedTime(path).toMillis()
                                != seen.path("modified").asLong()) {
                    return null;
                }
            }
            List<Libraries.Library> libraries = new ArrayList<>();
            for (JsonNode library : json.path("libraries")) {
                libraries.add(
                        new Libraries.Library(
                                library.path("name").asText(),
                                library.path("version").asText(),
                                repository.resolve(library.path("path").asText())));
            }
            List<String> notes = new ArrayList<>();
            json.path("notes").forEach(note -> notes.add(note.asText()));
            return libraries.isEmpty() ? null : new Libraries.Found(libraries, notes);
        } catch (IOException e) {
            // A file is gone or cannot be read: the resolver will find out.
            return null;
        }
    }

    /** Keeps what was resolved; where the repository cannot be written, nothing is kept. */
    void remember(String coordinates, Libraries.Found found, List<Path> files) {
        ObjectNode json = JSON.createObjectNode();
        json.put("format", FORMAT);
        json.put("edition", EDITION);
        // A profile in a POM may depend on it.
        json.put("java", System.getProperty("java.version"));
        json.put("coordinates", coordinates);
        ArrayNode libraries = json.putArray("libraries");
        for (Libraries.Library library : found.libraries()) {
            libraries
                    .addObject()
                    .put("name", library.name())
                    .put("version", library.version())
                    .put("path", relative(library.file()));
        }
        ArrayNode notes = json.putArray("notes");
        found.notes().forEach(notes::add);
        ArrayNode seen = json.putArray("files");
        try {
            for (Path file : files) {
                seen.addObject()
                        .put("path", relative(file))
                        .put("size", Files.size(file))
                        .put("modified", Files.getLastModifiedTime(file).toMillis());
            }
            Path kept = file(coordinates);
            Path folder = Files.createDirectories(repository.resolve(".skewback"));
            Path beside = Files.createTempFile(folder, "new-", ".json");
            try {
                Files.write(beside, JSON.writeValueAsBytes(json));
                move(beside, kept);
            } finally {
                Files.deleteIfExists(beside);
            }
        } catch (IOException e) {
            System.err.println("skewback: what was resolved could not be kept: " + e);
        }
    }

    private static void move(Path from, Path to) throws IOException {
        try {
            Files.move(from, to, StandardCopyOption.ATOMIC_MOVE);
        } catch (AtomicMoveNotSupportedException e) {
            Files.move(from, to, StandardCopyOption.REPLACE_EXISTING);
        }
    }

    private String relative(Path file) {
        Path absolute = file.toAbsolutePath();
        return absolute.startsWith(repository)
                ? repository.relativize(absolute).toString()
                : absolute.toString();
    }

    private Path file(String coordinates) {
        try {
            byte[] digest =
                    MessageDigest.getInstance("SHA-256")
                            .digest(coordinates.getBytes(StandardCharsets.UTF_8));
            return repository
                    .resolve(".skewback")
                    .resolve(HexFormat.of().formatHex(digest, 0, 12) + ".json");
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException("every Java has SHA-256", e);
        }
    }
}
