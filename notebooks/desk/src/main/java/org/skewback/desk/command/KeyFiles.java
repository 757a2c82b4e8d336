package org.skewback.desk.command;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import java.util.TreeMap;
import org.skewback.desk.Problem;
import org.skewback.desk.checking.Checking;
import org.skewback.desk.checking.Keys;

/** Reads keys from files. */
final class KeyFiles {

    private static final int LONGEST = 10_000;

    private KeyFiles() {}

    /**
     * Reads public keys.
     *
     * @param files files by role
     * @return keys by role
     * @throws Problem when a role is not known or a file holds no key
     */
    static Map<String, String> read(Map<String, Path> files) throws Problem {
        Map<String, String> keys = new TreeMap<>();
        for (Map.Entry<String, Path> file : files.entrySet()) {
            requireRole(file.getKey());
            String text = text(file.getValue()).strip();
            Keys.publicKey(text);
            keys.put(file.getKey(), text);
        }
        return keys;
    }

    static void requireRole(String role) throws Problem {
        if (!Checking.ROLES.contains(role)) {
            throw new Problem(
                    "\"" + role + "\" is no role; known are " + String.join(", ", Checking.ROLES));
        }
    }

    static String text(Path file) throws Problem {
        try {
            if (Files.size(file) > LONGEST) {
                throw new Problem(file + " is too long to be a key");
            }
            return Files.readString(file, StandardCharsets.US_ASCII);
        } catch (IOException e) {
            throw Problem.of("cannot read the key " + file, e);
        }
    }
}
