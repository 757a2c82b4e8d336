package org.skewback.kernel.evaluation;

import static org.junit.jupiter.api.Assertions.assertDoesNotThrow;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

import java.io.IOException;
import java.net.InetAddress;
import java.net.ServerSocket;
import java.util.HashSet;
import java.util.Set;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

class WorkerProcessTest {

    @Test
    @DisplayName(
            "the class that the worker's compiler is told to leave alone is there under that name")
    void theClassThatIsNotCompiledExists() {
        assertDoesNotThrow(() -> Class.forName(WorkerProcess.ONCE_A_CELL));
    }

    @Test
    @DisplayName(
            "the worker's connection takes no port that is meant for another, and frees what it"
                    + " passed over")
    void reservedPortsAreLeftToThoseTheyAreMeantFor() throws IOException {
        Set<Integer> reserved = new HashSet<>();
        try (ServerSocket server =
                WorkerProcess.listen(port -> reserved.size() < 3 && reserved.add(port))) {
            assertEquals(3, reserved.size());
            assertFalse(reserved.contains(server.getLocalPort()));
            for (int port : reserved) {
                new ServerSocket(port, 1, InetAddress.getLoopbackAddress()).close();
            }
        }
    }
}
