package org.skewback.desk.jupyter;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.skewback.desk.notebook.Cell;
import org.skewback.desk.notebook.Output;

/** A kernel serves one notebook after another, unless something speaks against it. */
class LastingKernelsTest {

    private static final Path FOLDER = Path.of("folder");

    private final List<String> log = new ArrayList<>();
    private boolean stubborn;
    private boolean troubled;

    private final LastingKernels kernels =
            new LastingKernels(
                    (folder, environment) -> {
                        log.add("launch " + environment.get("SHELF"));
                        return new Logged();
                    },
                    Set.of("SHELF"));

    private final class Logged implements KernelSession {
        @Override
        public CellRun run(Cell cell) throws KernelTrouble {
            if (troubled) {
                throw new KernelTrouble("out of luck");
            }
            return new CellRun(1, null, Map.of());
        }

        @Override
        public List<Output> outputs(String cellId) {
            return List.of();
        }

        @Override
        public List<Output> living() {
            return List.of();
        }

        @Override
        public boolean beginAfresh(Map<String, String> environment) throws KernelTrouble {
            log.add("afresh " + environment.get("SHELF"));
            if (troubled) {
                throw new KernelTrouble("it does not answer");
            }
            return !stubborn;
        }

        @Override
        public void close() {
            log.add("close");
        }
    }

    @AfterEach
    void close() {
        kernels.close();
    }

    private void serve(Path folder, String repository, String shelf) throws KernelTrouble {
        try (KernelSession kernel =
                kernels.launch(folder, Map.of("REPOSITORY", repository, "SHELF", shelf))) {
            kernel.run(
                    new Cell(
                            "a",
                            Cell.Kind.CODE,
                            "1",
                            JsonNodeFactory.instance.objectNode(),
                            null,
                            List.of()));
        }
    }

    @Test
    void theNextNotebookFindsTheKernelOfTheLastAfresh() throws Exception {
        serve(FOLDER, "r", "1");
        serve(FOLDER, "r", "2");
        kernels.close();
        assertEquals(List.of("launch 1", "afresh 2", "close"), log);
    }

    @Test
    void twoAtOnceHaveOneEach() throws Exception {
        try (KernelSession first = kernels.launch(FOLDER, Map.of("SHELF", "1"));
                KernelSession second = kernels.launch(FOLDER, Map.of("SHELF", "2"))) {
            assertEquals(List.of(), first.outputs("a"));
            assertEquals(List.of(), second.outputs("a"));
        }
        assertEquals(List.of("launch 1", "launch 2"), log);
    }

    @Test
    void anotherFolderOrRepositoryNeedsAnotherKernel() throws Exception {
        serve(FOLDER, "r", "1");
        serve(Path.of("elsewhere"), "r", "2");
        serve(FOLDER, "other", "3");
        assertEquals(List.of("launch 1", "launch 2", "launch 3"), log);
    }

    @Test
    void oneThatCannotBeginAfreshIsClosedAndReplaced() throws Exception {
        serve(FOLDER, "r", "1");
        stubborn = true;
        serve(FOLDER, "r", "2");
        assertEquals(List.of("launch 1", "afresh 2", "close", "launch 2"), log);
    }

    @Test
    void oneThatGaveTroubleServesNobodyElse() throws Exception {
        serve(FOLDER, "r", "1");
        troubled = true;
        assertThrows(KernelTrouble.class, () -> serve(FOLDER, "r", "2"));
        troubled = false;
        serve(FOLDER, "r", "3");
        assertEquals(
                List.of("launch 1", "afresh 2", "close", "launch 2", "close", "launch 3"), log);
    }
}
