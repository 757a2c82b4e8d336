package org.skewback.kernel.evaluation;

import java.io.Closeable;
import java.io.IOException;
import java.io.OutputStream;
import java.net.InetAddress;
import java.net.ServerSocket;
import java.net.Socket;
import java.net.SocketTimeoutException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.security.SecureRandom;
import java.util.ArrayList;
import java.util.HexFormat;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.function.Consumer;
import java.util.function.IntPredicate;
import jdk.jshell.spi.ExecutionControl;
import org.jspecify.annotations.Nullable;
import org.skewback.kernel.worker.Link;

/** One worker VM and the requests to it. Safe for many threads. */
final class WorkerProcess implements Closeable {

    /** Environment variable with further options for the VM that runs the cells, such as -Xmx4g. */
    static final String OPTIONS = "SKEWBACK_WORKER_OPTIONS";

    /** The class of the worker whose methods run once a cell, which is never worth compiling. */
    static final String ONCE_A_CELL = "org.skewback.kernel.worker.CellRunner";

    private static final int CONNECT_MILLIS = 30_000;
    private static final int FAREWELL_MILLIS = 500;

    /** Told of threads that end with an exception after or beside the cell that started them. */
    interface ThreadFailures {

        /**
         * Tells of one failure.
         *
         * @param run number of the run that started the thread
         * @param thread name of the thread
         * @param exception what it threw
         */
        void threadFailed(int run, String thread, ExecutionControl.UserException exception);
    }

    private final Process process;
    private final CompletableFuture<Link> link = new CompletableFuture<>();
    private final Map<Integer, CompletableFuture<Link.Reader>> open = new ConcurrentHashMap<>();
    private final CountDownLatch ended = new CountDownLatch(1);
    private final AtomicInteger numbers = new AtomicInteger();
    private final CellEvents events;
    private final ThreadFailures failures;
    private volatile @Nullable String end;
    private volatile @Nullable String killedBecause;

    /**
     * Starts a worker; it is connected in the background.
     *
     * @param jar jar of the worker's classes
     * @param environment environment variables for the VM, besides those of this process
     * @param events told what the cells do
     * @param failures told of threads of the cells that fail
     * @param reserved whether a port is meant for somebody else
     * @throws IOException if the VM cannot be started
     */
    WorkerProcess(
            Path jar,
            Map<String, String> environment,
            CellEvents events,
            ThreadFailures failures,
            IntPredicate reserved)
            throws IOException {
        this.events = events;
        this.failures = failures;
        ServerSocket server = listen(reserved);
        try {
            server.setSoTimeout(CONNECT_MILLIS);
            byte[] random = new byte[32];
            new SecureRandom().nextBytes(random);
            String token = HexFormat.of().formatHex(random);
            List<String> command = new ArrayList<>();
            command.add(
                    Path.of(System.getProperty("java.home"), "bin", "java")
                            .toAbsolutePath()
                            .toString());
            command.addAll(
                    List.of(
                            "-XX:+UseSerialGC",
                            "-XX:-UsePerfData",
                            "-Xshare:auto",
                            // It grows when cells need it; a large first heap would only be filled
                            // with garbage.
                            "-Xms32m",
                            // What runs once a cell: the full compiler inlines half the worker into
                            // it with up to 84 MB of its own memory, and as often as a cell is
                            // redefined meanwhile, it throws the result away and tries again.
                            "-XX:CompileCommand=quiet",
                            "-XX:CompileCommand=exclude," + ONCE_A_CELL + "::*",
                            "-Djava.awt.headless=true",
                            "-Dfile.encoding=UTF-8"));
            InstalledWorker installed = InstalledWorker.ofThisKernel();
            if (installed.archive() != null) {
                command.add(installed.archive());
            }
            command.addAll(InstalledWorker.words(installed.options()));
            command.addAll(InstalledWorker.words(System.getenv(OPTIONS)));
            command.addAll(List.of("-jar", jar.toString()));
            // What the VM itself prints must not get between the kernel and its launcher.
            ProcessBuilder builder =
                    new ProcessBuilder(command)
                            .redirectOutput(ProcessBuilder.Redirect.INHERIT)
                            .redirectError(ProcessBuilder.Redirect.INHERIT);
            builder.environment().putAll(environment);
            process = builder.start();
            OutputStream start = process.getOutputStream();
            start.write(
                    (server.getLocalPort() + "\n" + token + "\n")
                            .getBytes(StandardCharsets.US_ASCII));
            start.flush();
            Thread thread =
                    new Thread(() -> connectAndReceive(server, token), "skewback-worker-link");
            thread.setDaemon(true);
            thread.start();
        } catch (IOException e) {
            server.close();
            throw e;
        }
    }

    /**
     * Listens on a free port. What a connection file names is free too until the kernel listens there, which it
     * does at the same time.
     */
    static ServerSocket listen(IntPredicate reserved) throws IOException {
        List<ServerSocket> refused = new ArrayList<>();
        try {
            while (true) {
                ServerSocket server = new ServerSocket(0, 1, InetAddress.getLoopbackAddress());
                if (!reserved.test(server.getLocalPort())) {
                    return server;
                }
                // Held until another is found, or it would be given again.
                refused.add(server);
            }
        } finally {
            for (ServerSocket server : refused) {
                server.close();
            }
        }
    }

    private void connectAndReceive(ServerSocket server, String token) {
        try (server) {
            Link connected = accept(server, token);
            link.complete(connected);
            while (true) {
                Link.Reader packet = connected.receive();
                try {
                    received(packet);
                } catch (RuntimeException e) {
                    System.err.println("skewback: a packet of the worker was dropped: " + e);
                }
            }
        } catch (IOException e) {
            ended();
        }
    }

    private Link accept(ServerSocket server, String token) throws IOException {
        byte[] expected = token.getBytes(StandardCharsets.US_ASCII);
        while (true) {
            Socket socket;
            try {
                server.setSoTimeout(500);
                socket = server.accept();
            } catch (SocketTimeoutException e) {
                if (!process.isAlive()) {
                    throw e;
                }
                continue;
            }
            // A stranger that connects and is silent must not keep the worker from its place.
            socket.setSoTimeout(2000);
            try {
                Link candidate = new Link(socket);
                Link.Reader hello = candidate.receive();
                if (hello.kind() == Link.Kind.HELLO
                        && MessageDigest.isEqual(hello.bytes(), expected)) {
                    socket.setSoTimeout(0);
                    return candidate;
                }
            } catch (IOException | RuntimeException e) {
                System.err.println("a connection that is not the worker's was refused: " + e);
            }
            socket.close();
        }
    }

    private void received(Link.Reader packet) {
        switch (packet.kind()) {
            case ANSWER -> {
                CompletableFuture<Link.Reader> waiting = open.remove(packet.number());
                if (waiting != null) {
                    waiting.complete(packet);
                }
            }
            case OUTPUT -> events.printed(packet.number(), packet.flag(), packet.text());
            case DISPLAY -> {
                int run = packet.number();
                String id = packet.text();
                boolean again = packet.flag();
                events.shows(run, new Shown(id, again, content(packet)));
            }
            case COMM -> {
                int run = packet.number();
                events.says(
                        run,
                        new CommMessage(
                                packet.text(), packet.text(), packet.text(), packet.text()));
            }
            case CLEAR -> events.clears(packet.number(), packet.flag());
            case INPUT_WANTED -> events.wantsInput(packet.number(), packet.text(), packet.flag());
            case THREAD_FAILED -> {
                int run = packet.number();
                failures.threadFailed(run, packet.text(), WorkerControl.failure(packet));
            }
            default -> System.err.println("the worker sent " + packet.kind());
        }
    }

    /** Reads content by MIME type. */
    static Map<String, String> content(Link.Reader packet) {
        Map<String, String> content = new LinkedHashMap<>();
        int count = packet.number();
        for (int i = 0; i < count; i++) {
            content.put(packet.text(), packet.text());
        }
        return content;
    }

    private void ended() {
        process.destroyForcibly();
        String reason = killedBecause;
        if (reason == null) {
            reason = "the worker, the process that runs the cells, stopped";
            try {
                if (process.waitFor(2, TimeUnit.SECONDS)) {
                    int status = process.exitValue();
                    // A process ended by a signal has 128 plus its number as status (POSIX shells
                    // and java.lang.Process on Unix).
                    reason +=
                            status > 128
                                    ? " (it was killed by signal " + (status - 128) + ")"
                                    : " (exit status " + status + ")";
                }
            } catch (InterruptedException e) {
                Thread.currentThread().interrupt();
            }
        }
        end = reason;
        ended.countDown();
        link.completeExceptionally(new WorkerGoneException(reason));
        for (Integer number : List.copyOf(open.keySet())) {
            fail(number, reason);
        }
    }

    private void fail(int number, String reason) {
        CompletableFuture<Link.Reader> waiting = open.remove(number);
        if (waiting != null) {
            waiting.completeExceptionally(new WorkerGoneException(reason));
        }
    }

    /** Why the worker is gone, or null while it serves. */
    @Nullable String end() {
        return end;
    }

    /**
     * Asks and waits for the answer.
     *
     * @param kind kind of request
     * @param fill writes what the request says
     * @return the answer, to be read from its outcome on
     * @throws WorkerGoneException if the worker ends before it has answered
     */
    Link.Reader ask(Link.Kind kind, Consumer<Link.Writer> fill) throws WorkerGoneException {
        int number = numbers.incrementAndGet();
        CompletableFuture<Link.Reader> answer = new CompletableFuture<>();
        open.put(number, answer);
        Link.Writer packet = Link.packet(kind).number(number);
        fill.accept(packet);
        try {
            link.get().send(packet);
            String gone = end;
            if (gone != null) {
                fail(number, gone);
            }
            return answer.get();
        } catch (ExecutionException e) {
            throw gone(e.getCause());
        } catch (IOException e) {
            return awaitEnd(answer);
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            throw new WorkerGoneException("the kernel is shutting down");
        }
    }

    // The socket broke; the thread that receives finds out why and then fails every open request.
    private static Link.Reader awaitEnd(CompletableFuture<Link.Reader> answer)
            throws WorkerGoneException {
        try {
            return answer.get();
        } catch (ExecutionException e) {
            throw gone(e.getCause());
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            throw new WorkerGoneException("the kernel is shutting down");
        }
    }

    private static WorkerGoneException gone(@Nullable Throwable cause) {
        return new WorkerGoneException(
                cause == null ? "the worker stopped" : String.valueOf(cause.getMessage()));
    }

    /**
     * Sends what needs no answer; a worker that is gone is found out by the next request.
     *
     * @param packet the packet
     */
    void tell(Link.Writer packet) {
        Link connected = link.isCompletedExceptionally() ? null : link.getNow(null);
        if (connected != null) {
            try {
                connected.send(packet);
            } catch (IOException e) {
                // The thread that receives has found out, or will.
            }
        }
    }

    /**
     * Ends the worker at once.
     *
     * @param reason told to whoever waits for an answer
     */
    void kill(String reason) {
        killedBecause = reason;
        process.destroyForcibly();
    }

    /** Lets the worker send what its cells have printed, and ends it. */
    @Override
    public void close() {
        killedBecause = "the kernel is shutting down";
        tell(Link.packet(Link.Kind.END));
        try {
            if (!link.isDone() || !ended.await(FAREWELL_MILLIS, TimeUnit.MILLISECONDS)) {
                process.destroyForcibly();
            }
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            process.destroyForcibly();
        }
    }
}
