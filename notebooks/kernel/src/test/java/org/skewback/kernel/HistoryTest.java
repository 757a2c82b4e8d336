package org.skewback.kernel;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class HistoryTest {

    private static final ObjectMapper JSON = new ObjectMapper();

    @TempDir Path folder;

    private Path file;

    @BeforeEach
    void name() {
        file = folder.resolve("data").resolve("history.jsonl");
    }

    private History session() {
        return new History(Optional.of(new HistoryFile(file)));
    }

    private static String answer(History history, String type, Object... fields) {
        ObjectNode request = JsonNodeFactory.instance.objectNode().put("hist_access_type", type);
        for (int i = 0; i < fields.length; i += 2) {
            request.set(fields[i].toString(), JSON.valueToTree(fields[i + 1]));
        }
        return history.answer(request).toString();
    }

    @Test
    void aLaterSessionFindsWhatEarlierOnesRan() {
        History first = session();
        first.add(1, "int a = 1;", "");
        first.add(2, "a", "1");
        first.keep();
        History second = session();
        second.add(1, "int b = 2;", "");
        assertEquals(
                "[[1,1,\"int a = 1;\"],[1,2,\"a\"],[2,1,\"int b = 2;\"]]", answer(second, "tail"));
        assertEquals("[[1,2,\"a\"],[2,1,\"int b = 2;\"]]", answer(second, "tail", "n", 2));
        assertEquals("[[2,1,\"int b = 2;\"]]", answer(second, "range", "session", 0));
        assertEquals(
                "[[1,2,[\"a\",\"1\"]]]",
                answer(second, "range", "session", -1, "start", 2, "output", true));
        assertEquals("[[1,1,\"int a = 1;\"]]", answer(second, "search", "pattern", "int a*"));
    }

    @Test
    void sameInputsAreGivenOnceWhereThatIsAsked() {
        History history = session();
        history.add(1, "a", "1");
        history.add(2, "a", "2");
        assertEquals("[[1,2,\"a\"]]", answer(history, "search", "pattern", "?", "unique", true));
    }

    @Test
    void isBoundedAndKeepsTheNewest() throws IOException {
        HistoryFile bounded = new HistoryFile(file, 2000);
        for (int i = 1; i <= 500; i++) {
            bounded.add(new HistoryFile.Entry(1, i, "cell " + i, "x".repeat(10)));
            assertTrue(Files.size(file) <= 2000);
        }
        var entries = bounded.read();
        assertEquals(500, entries.get(entries.size() - 1).line());
        for (int i = 1; i < entries.size(); i++) {
            assertEquals(entries.get(i - 1).line() + 1, entries.get(i).line());
        }
    }

    @Test
    void aBrokenLineLosesOnlyItself() throws IOException {
        History before = session();
        before.add(1, "before", "");
        before.keep();
        Files.write(
                file,
                "{\"session\":1,\"li\n".getBytes(StandardCharsets.UTF_8),
                StandardOpenOption.APPEND);
        History after = session();
        after.add(1, "after", "");
        after.keep();
        assertEquals("[[1,1,\"before\"],[2,1,\"after\"]]", answer(session(), "tail"));
    }

    @Test
    void isReadableByItsOwnerOnly() throws IOException {
        History history = session();
        history.add(1, "secret", "");
        history.keep();
        if (file.getFileSystem().supportedFileAttributeViews().contains("posix")) {
            assertEquals(
                    "rw-------",
                    PosixFilePermissions.toString(Files.getPosixFilePermissions(file)));
        }
    }

    @Test
    void aFolderThatCannotBeWrittenCostsOnlyTheOtherSessions() throws IOException {
        Files.write(folder.resolve("data"), new byte[0]);
        History history = session();
        history.add(1, "kept", "");
        assertEquals("[[1,1,\"kept\"]]", answer(history, "tail"));
    }

    @Test
    void liesWhereTheSystemKeepsDataOfAUser() {
        Path home = folder.resolve("home");
        assertEquals(home.resolve(".local/share"), HistoryFile.dataFolder(Map.of(), "Linux", home));
        assertEquals(
                folder,
                HistoryFile.dataFolder(Map.of("XDG_DATA_HOME", "" + folder), "Linux", home));
        assertEquals(
                folder, HistoryFile.dataFolder(Map.of("APPDATA", "" + folder), "Windows 11", home));
        assertEquals(
                home.resolve("Library/Application Support"),
                HistoryFile.dataFolder(Map.of(), "Mac OS X", home));
    }
}
