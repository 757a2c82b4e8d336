package org.skewback.desk.issue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;

/** Whole folders as values that tests compare. */
final class Trees {

    private Trees() {}

    /** Gives every file by its path with its content; an empty map where there is no folder. */
    static Map<String, String> of(Path folder) throws IOException {
        Map<String, String> files = new TreeMap<>();
        if (!Files.exists(folder)) {
            return files;
        }
        try (Stream<Path> walk = Files.walk(folder)) {
            for (Path file : walk.filter(Files::isRegularFile).toList()) {
                files.put(
                        folder.relativize(file).toString().replace('\\', '/'),
                        new String(Files.readAllBytes(file), StandardCharsets.ISO_8859_1));
            }
        }
        return files;
    }

    /** Gives the names in a folder, sorted. */
    static List<String> names(Path folder) throws IOException {
        try (Stream<Path> list = Files.list(folder)) {
            return list.map(path -> path.getFileName().toString()).sorted().toList();
        }
    }
}
