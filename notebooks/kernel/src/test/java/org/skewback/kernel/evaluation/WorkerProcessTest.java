package org.skewback.kernel.evaluation;

import static org.junit.jupiter.api.Assertions.assertDoesNotThrow;

import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

class WorkerProcessTest {

    @Test
    @DisplayName(
            "the class that the worker's compiler is told to leave alone is there under that name")
    void theClassThatIsNotCompiledExists() {
        assertDoesNotThrow(() -> Class.forName(WorkerProcess.ONCE_A_CELL));
    }
}
