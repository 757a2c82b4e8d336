package org.skewback.kernel.worker;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.lang.instrument.Instrumentation;
import java.net.InetAddress;
import java.net.Socket;
import java.nio.charset.StandardCharsets;
import org.jspecify.annotations.Nullable;

/** Main class and agent of the worker VM. */
public final class WorkerMain {

    private static volatile @Nullable Instrumentation instrumentation;

    private WorkerMain() {}

    /**
     * Takes hold of what redefines classes; called by the VM before {@link #main}.
     *
     * @param arguments unused
     * @param given what redefines classes
     */
    public static void agentmain(String arguments, Instrumentation given) {
        instrumentation = given;
    }

    /**
     * Connects to the front and serves it until it is gone. The first two lines of standard input
     * are the port to connect to and the token to show: a command line could be read by others.
     *
     * @param arguments unused
     * @throws IOException if the front cannot be reached
     */
    public static void main(String[] arguments) throws IOException {
        Instrumentation agent = instrumentation;
        if (agent == null) {
            throw new IllegalStateException("the worker must also be the agent of its own VM");
        }
        BufferedReader start =
                new BufferedReader(new InputStreamReader(System.in, StandardCharsets.US_ASCII));
        String port = start.readLine();
        String token = start.readLine();
        if (port == null || token == null) {
            throw new IOException("the front gave no port and token");
        }
        Link link = new Link(new Socket(InetAddress.getLoopbackAddress(), Integer.parseInt(port)));
        link.send(Link.packet(Link.Kind.HELLO).text(token));
        Displays displays = new Displays(link);
        CellOutput output = new CellOutput(link, displays);
        CellInput input = new CellInput(link, output);
        System.setOut(output.stream(false));
        System.setErr(output.stream(true));
        System.setIn(input);
        output.start();
        CellRunner runner = new CellRunner(link, output, displays, input, agent);
        runner.start();
        try {
            while (true) {
                Link.Reader packet = link.receive();
                switch (packet.kind()) {
                    case STOP -> runner.stop(packet.number());
                    case INPUT -> input.received(packet.flag(), packet.text());
                    case END -> {
                        output.flushAll();
                        leave();
                    }
                    default -> runner.request(packet);
                }
            }
        } catch (IOException e) {
            leave();
        }
    }

    /** Ends the worker when the front is gone; whatever threads the cells have started. */
    static void leave() {
        Runtime.getRuntime().halt(0);
    }
}
