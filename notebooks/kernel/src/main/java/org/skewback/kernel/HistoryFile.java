package org.skewback.kernel;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.channels.FileLock;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.skewback.kernel.wire.ExactJson;

/**
 * What has been run in all sessions of a user: one line of JSON for each cell, the oldest dropped when
 * the file grows beyond its bound. Kernels that run at the same time share it; a lock file beside it
 * keeps them from writing at once. Readable by its owner only.
 */
final class HistoryFile {

    /** Environment variable: {@code off}, or a file to use in place of the usual one. */
    static final String VARIABLE = "SKEWBACK_HISTORY";

    /** One cell that was run. */
    record Entry(int session, int line, String input, String output) {}

    private static final long MOST_BYTES = 4L << 20;
    private static final int MOST_OUTPUT = 10_000;

    private final Path file;
    private final long most;

    HistoryFile(Path file) {
        this(file, MOST_BYTES);
    }

    HistoryFile(Path file, long most) {
        this.file = file.toAbsolutePath();
        this.most = most;
    }

    /** The file of the user that runs this program; empty where none is wanted. */
    static Optional<HistoryFile> ofThisUser() {
        String named = System.getenv().getOrDefault(VARIABLE, "");
        if (named.equals("off")) {
            return Optional.empty();
        }
        Path file =
                named.isBlank()
                        ? dataFolder(
                                        System.getenv(),
                                        System.getProperty("os.name"),
                                        Path.of(System.getProperty("user.home")))
                                .resolve("skewback")
                                .resolve("history.jsonl")
                        : Path.of(named);
        return Optional.of(new HistoryFile(file));
    }

    /**
     * Finds the folder in which programs keep data of a user.
     *
     * @see <a href="https://specifications.freedesktop.org/basedir-spec/latest/">XDG Base Directory
     *     Specification, XDG_DATA_HOME</a>
     */
    static Path dataFolder(Map<String, String> environment, String system, Path home) {
        String lower = system.toLowerCase(Locale.ROOT);
        if (lower.startsWith("mac")) {
            return home.resolve("Library").resolve("Application Support");
        }
        if (lower.startsWith("windows")) {
            String roaming = environment.getOrDefault("APPDATA", "");
            return roaming.isBlank() ? home : Path.of(roaming);
        }
        String shared = environment.getOrDefault("XDG_DATA_HOME", "");
        return shared.isBlank() ? home.resolve(".local").resolve("share") : Path.of(shared);
    }

    /**
     * Begins a session.
     *
     * @return its number, one above that of the session that wrote last
     * @throws IOException if the file cannot be read
     */
    int begin() throws IOException {
        if (!Files.exists(file)) {
            return 1;
        }
        // From the end: the first cell of every session waits for this, however much is kept.
        byte[] all = Files.readAllBytes(file);
        int end = all.length;
        while (end > 0) {
            int from = end;
            while (from > 0 && all[from - 1] != '\n') {
                from--;
            }
            Entry last = entry(new String(all, from, end - from, StandardCharsets.UTF_8));
            if (last != null) {
                return last.session + 1;
            }
            end = from - 1;
        }
        return 1;
    }

    /**
     * Adds a cell.
     *
     * @param entry the cell; of a long output only the beginning is kept
     * @throws IOException if the file cannot be written; it is then as it was
     */
    void add(Entry entry) throws IOException {
        Path folder = file.getParent();
        if (folder != null) {
            Files.createDirectories(folder);
        }
        byte[] line = line(entry);
        Path lock = file.resolveSibling(file.getFileName() + ".lock");
        try (FileChannel channel = open(lock);
                FileLock held = channel.lock()) {
            assert held.isValid();
            try (FileChannel end = open(file)) {
                ByteBuffer bytes = ByteBuffer.wrap(line);
                while (bytes.hasRemaining()) {
                    end.write(bytes, end.size());
                }
            }
            if (Files.size(file) > most) {
                shorten();
            }
        }
    }

    private static byte[] line(Entry entry) throws IOException {
        ObjectNode json = Replies.object();
        json.put("session", entry.session).put("line", entry.line).put("input", entry.input);
        String output = entry.output;
        json.put("output", output.substring(0, Math.min(MOST_OUTPUT, output.length())));
        byte[] text = ExactJson.write(json);
        byte[] line = Arrays.copyOf(text, text.length + 1);
        line[text.length] = '\n';
        return line;
    }

    /** Drops the older half. */
    private void shorten() throws IOException {
        byte[] all = Files.readAllBytes(file);
        int from = (int) (all.length - most / 2);
        while (from < all.length && all[from - 1] != '\n') {
            from++;
        }
        Path beside = file.resolveSibling(file.getFileName() + ".new");
        Files.deleteIfExists(beside);
        try (FileChannel channel = open(beside)) {
            ByteBuffer bytes = ByteBuffer.wrap(all, from, all.length - from);
            while (bytes.hasRemaining()) {
                channel.write(bytes);
            }
        }
        Files.move(beside, file, StandardCopyOption.REPLACE_EXISTING);
    }

    private static FileChannel open(Path path) throws IOException {
        Set<StandardOpenOption> options =
                Set.of(StandardOpenOption.CREATE, StandardOpenOption.WRITE);
        return path.getFileSystem().supportedFileAttributeViews().contains("posix")
                ? FileChannel.open(
                        path,
                        options,
                        PosixFilePermissions.asFileAttribute(
                                PosixFilePermissions.fromString("rw-------")))
                : FileChannel.open(path, options);
    }

    /**
     * Reads all that is there, oldest first.
     *
     * @return the cells; a line that cannot be read is left out
     * @throws IOException if the file cannot be read
     */
    List<Entry> read() throws IOException {
        List<Entry> entries = new ArrayList<>();
        if (!Files.exists(file)) {
            return entries;
        }
        for (String line :
                new String(Files.readAllBytes(file), StandardCharsets.UTF_8).split("\n", -1)) {
            Entry entry = entry(line);
            if (entry != null) {
                entries.add(entry);
            }
        }
        return entries;
    }

    /** Reads a line; one that was cut short by the end of a machine is no reason to lose the rest. */
    private static @Nullable Entry entry(String line) {
        try {
            JsonNode json = ExactJson.read(line);
            return json.path("input").isTextual()
                    ? new Entry(
                            json.path("session").asInt(1),
                            json.path("line").asInt(0),
                            json.path("input").asText(),
                            json.path("output").asText(""))
                    : null;
        } catch (IOException e) {
            return null;
        }
    }
}
