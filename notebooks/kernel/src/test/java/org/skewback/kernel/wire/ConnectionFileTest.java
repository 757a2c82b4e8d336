package org.skewback.kernel.wire;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** A connection file is read as it was written, and a faulty one is refused by the name of its fault. */
final class ConnectionFileTest {

    @TempDir Path folder;

    private ConnectionFile read(String json) throws IOException {
        return ConnectionFile.read(Files.writeString(folder.resolve("connection.json"), json));
    }

    @Test
    void isReadAsItWasWritten() throws IOException {
        ConnectionFile written = ConnectionFile.onLoopback();
        Path file = folder.resolve("written.json");
        written.write(file);
        assertEquals(written, ConnectionFile.read(file));
    }

    @Test
    void whatIsNotAskedForIsPassedOverHoweverDeepItIs() throws IOException {
        ConnectionFile read =
                read(
                        """
                        {"shell_port": 1, "more": {"key": "no", "list": [1, {"hb_port": 9}]},
                         "control_port": 2, "stdin_port": 3, "iopub_port": 4, "hb_port": 5,
                         "key": "yes", "kernel_name": "skewback"}
                        """);
        assertEquals(new ConnectionFile("127.0.0.1", 1, 2, 3, 4, 5, "yes"), read);
    }

    @Test
    void whatIsNullIsNotGiven() throws IOException {
        ConnectionFile read =
                read(
                        """
                        {"shell_port": 1, "control_port": 2, "stdin_port": 3, "iopub_port": 4,
                         "hb_port": 5, "ip": null, "transport": null, "signature_scheme": null,
                         "key": "yes"}
                        """);
        assertEquals(new ConnectionFile("127.0.0.1", 1, 2, 3, 4, 5, "yes"), read);
    }

    @ParameterizedTest
    @CsvSource(
            quoteCharacter = '`',
            textBlock =
                    """
                    `[1]`,                                          is not a JSON object
                    `{"transport": "ipc"}`,                         `transport is ipc, must be tcp`
                    `{"key": "k", "signature_scheme": "hmac-md5"}`, signature_scheme is hmac-md5
                    `{}`,                                           `shell_port is missing, must be 1`
                    `{"shell_port": 0}`,                            shell_port is 0
                    `{"shell_port": 70000}`,                        shell_port is 70000
                    `{"shell_port": "a"}`,                          shell_port is a
                    `{"shell_port": [7]}`,                          shell_port is missing
                    """)
    void aFaultIsNamed(String json, String fault) {
        IOException refused = assertThrows(IOException.class, () -> read(json));
        assertTrue(refused.getMessage().contains(fault), refused.getMessage());
    }

    @Test
    void whatIsCutShortIsRefused() {
        assertThrows(IOException.class, () -> read("{\"shell_port\": 1, \"control"));
    }
}
