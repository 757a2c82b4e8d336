package org.skewback.kernel.worker;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.PrintStream;
import java.net.InetAddress;
import java.net.ServerSocket;
import java.net.Socket;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/** Where the packets end that carry what cells print. */
class CellOutputTest {

    private Link front;
    private Link worker;
    private CellOutput output;
    private PrintStream out;
    private PrintStream err;

    @BeforeEach
    void connect() throws IOException {
        try (ServerSocket server = new ServerSocket(0, 1, InetAddress.getLoopbackAddress())) {
            worker = new Link(new Socket(server.getInetAddress(), server.getLocalPort()));
            front = new Link(server.accept());
        }
        output = new CellOutput(worker, new Displays(worker));
        out = output.stream(false);
        err = output.stream(true);
    }

    @AfterEach
    void close() throws IOException {
        worker.close();
        front.close();
    }

    private String next() throws IOException {
        Link.Reader packet = front.receive();
        assertEquals(Link.Kind.OUTPUT, packet.kind());
        packet.number();
        return (packet.flag() ? "err " : "out ") + packet.text();
    }

    @Test
    void theClockCutsNoLine() throws IOException {
        out.print("one\ntw");
        output.flushDue(System.nanoTime());
        assertEquals("out one\n", next());
        out.print("o\n");
        output.flushDue(System.nanoTime());
        assertEquals("out two\n", next());
    }

    @Test
    void aPromptThatNobodyEndsIsShownAllTheSame() throws IOException {
        out.print("Span? ");
        output.flushDue(System.nanoTime() + TimeUnit.SECONDS.toNanos(1));
        assertEquals("out Span? ", next());
    }

    @Test
    void allIsSentBeforeWhatFollowsIt() throws IOException {
        out.print("half");
        output.flush();
        assertEquals("out half", next());
    }

    @Test
    void theStreamsKeepTheirOrder() throws IOException {
        out.print("a");
        err.print("b");
        out.print("c");
        output.flush();
        assertEquals("out a", next());
        assertEquals("err b", next());
        assertEquals("out c", next());
    }

    @Test
    void aBatchEndsWithALine() throws IOException {
        String line = "x".repeat(1000) + "\n";
        String all = line.repeat(2 * CellOutput.BATCH / line.length()) + "rest";
        out.print(all);
        output.flushAll();
        String first = next();
        assertTrue(first.endsWith("\n"), "characters: " + first.length());
        StringBuilder whole = new StringBuilder(first.substring(4));
        while (whole.length() < all.length()) {
            whole.append(next().substring(4));
        }
        assertEquals(all, whole.toString());
    }
}
