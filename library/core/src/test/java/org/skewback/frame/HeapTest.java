package org.skewback.frame;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;

/** Proves that large bridges fit into little memory, in a process that has no more. */
class HeapTest {

    private static Process start(int megabytes, int panels) throws Exception {
        return new ProcessBuilder(
                        Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                        "-Xmx" + megabytes + "m",
                        "-XX:+UseSerialGC",
                        "-cp",
                        System.getProperty("java.class.path"),
                        LargeBridge.class.getName(),
                        Integer.toString(panels))
                .redirectErrorStream(true)
                .start();
    }

    @Test
    void sixtyThousandUnknownsAndTheirFactorFitInto400MiB() throws Exception {
        Process process = start(400, 840);
        String said =
                new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8).strip();
        assertEquals(0, process.waitFor(), said);
        String[] words = said.split(" ");
        assertTrue(Integer.parseInt(words[0]) >= 60_000, said);
        assertTrue(Double.parseDouble(words[1]) < 1e-9, said);
        assertTrue(Integer.parseInt(words[2]) < 400, said);
    }
}
