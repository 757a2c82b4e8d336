package org.skewback.desk.jupyter;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.time.Duration;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import java.util.function.BooleanSupplier;
import org.jspecify.annotations.Nullable;
import org.skewback.desk.notebook.Output;
import org.skewback.kernel.wire.BadMessageException;
import org.skewback.kernel.wire.ConnectionFile;
import org.skewback.kernel.wire.Frames;
import org.skewback.kernel.wire.Message;
import org.skewback.kernel.wire.MessageCodec;
import org.zeromq.SocketType;
import org.zeromq.ZContext;
import org.zeromq.ZMQ;

/** The three channels to one kernel. For one thread only. */
final class JupyterClient implements AutoCloseable {

    /** How a request came to its end, or did not. */
    enum End {
        /** Reply and all output are here. */
        DONE,
        /** The time is over. */
        LATE,
        /** The cell gave more output than is allowed. */
        FLOOD,
        /** The kernel is gone. */
        DEAD
    }

    private static final int POLL_MILLIS = 50;

    /** How many questions may stay without an answer before the channels are opened anew. */
    private static final int ROUNDS = 10;

    private static final JsonNodeFactory MAKE = JsonNodeFactory.instance;

    private final String session = UUID.randomUUID().toString();
    private final MessageCodec codec;
    private final ZContext context = new ZContext();
    private final ConnectionFile connection;
    private final BooleanSupplier alive;
    private final long floodSize;
    private OutputLog log = new OutputLog();
    private String request = "";
    private @Nullable Message reply;
    private boolean idle;
    private Channels channels;

    /**
     * Opens the channels.
     *
     * @param connection where the kernel listens
     * @param alive whether the kernel's process still runs
     * @param floodSize most characters that a cell may give
     */
    JupyterClient(ConnectionFile connection, BooleanSupplier alive, long floodSize) {
        this.codec = new MessageCodec(connection.key());
        this.alive = alive;
        this.floodSize = floodSize;
        this.connection = connection;
        context.setLinger(0);
        channels = Channels.open(context, connection);
    }

    /** The sockets, and what waits for all of them. */
    private record Channels(
            ZMQ.Socket shell, ZMQ.Socket control, ZMQ.Socket iopub, ZMQ.Poller poller) {

        static Channels open(ZContext context, ConnectionFile connection) {
            ZMQ.Socket shell = context.createSocket(SocketType.DEALER);
            ZMQ.Socket control = context.createSocket(SocketType.DEALER);
            ZMQ.Socket iopub = context.createSocket(SocketType.SUB);
            // No output may be dropped because this side is slow to take it.
            iopub.setRcvHWM(0);
            iopub.subscribe(ZMQ.SUBSCRIPTION_ALL);
            shell.connect(connection.address(connection.shellPort()));
            control.connect(connection.address(connection.controlPort()));
            iopub.connect(connection.address(connection.iopubPort()));
            ZMQ.Poller poller = context.createPoller(3);
            poller.register(shell, ZMQ.Poller.POLLIN);
            poller.register(control, ZMQ.Poller.POLLIN);
            poller.register(iopub, ZMQ.Poller.POLLIN);
            return new Channels(shell, control, iopub, poller);
        }

        void close() {
            poller.close();
            shell.close();
            control.close();
            iopub.close();
        }
    }

    /**
     * Waits until the kernel answers and its published messages arrive here.
     *
     * @param limit how long to wait
     * @return {@link End#DONE}, {@link End#LATE} or {@link End#DEAD}
     */
    End awaitReady(Duration limit) {
        long until = System.nanoTime() + limit.toNanos();
        for (int round = 1; System.nanoTime() < until; round++) {
            // What is published before the subscription has reached the kernel is lost, so ask
            // until both the answer and the status that goes with it have come.
            send(Message.request(session, "kernel_info_request", MAKE.objectNode()));
            End end = await(Duration.ofMillis(500));
            if (end != End.LATE) {
                return end;
            }
            if (round % ROUNDS == 0) {
                reopen();
            }
        }
        return End.LATE;
    }

    /**
     * Opens the channels anew. On a busy machine about one connection in a hundred that JeroMQ makes never
     * carries anything, whatever is sent on it; a new one does.
     */
    private void reopen() {
        channels.close();
        channels = Channels.open(context, connection);
    }

    /**
     * Sends a cell and waits for its end.
     *
     * @param cellId identifier of the cell
     * @param source its text
     * @param limit how long to wait
     * @return how it ended
     */
    End execute(String cellId, String source, Duration limit) {
        ObjectNode content = MAKE.objectNode();
        content.put("code", source);
        content.put("silent", false);
        content.put("store_history", true);
        content.putObject("user_expressions");
        content.put("allow_stdin", false);
        content.put("stop_on_error", true);
        Message plain = Message.request(session, "execute_request", content);
        Message message =
                new Message(
                        plain.identities(),
                        plain.header(),
                        plain.parentHeader(),
                        MAKE.objectNode().put("cellId", cellId),
                        plain.content(),
                        plain.buffers());
        log.start(message.id(), cellId);
        send(message);
        return await(limit);
    }

    /**
     * Asks the kernel to forget all cells, forgets what they have given, and waits for the answer.
     *
     * @param environment further environment variables for the cells
     * @param limit how long to wait
     * @return how the request ended
     */
    End beginAfresh(Map<String, String> environment, Duration limit) {
        log = new OutputLog();
        ObjectNode content = MAKE.objectNode();
        ObjectNode variables = content.putObject("environment");
        environment.forEach(variables::put);
        send(Message.request(session, "afresh_request", content));
        return await(limit);
    }

    /**
     * Goes on waiting for the end of the last request.
     *
     * @param limit how long to wait
     * @return how it ended
     */
    End await(Duration limit) {
        long until = System.nanoTime() + limit.toNanos();
        while (true) {
            boolean wasAlive = alive.getAsBoolean();
            boolean any = receive();
            if (reply != null && idle) {
                return End.DONE;
            }
            if (log.size(request) > floodSize) {
                return End.FLOOD;
            }
            if (!any && !wasAlive) {
                return End.DEAD;
            }
            if (System.nanoTime() >= until) {
                return End.LATE;
            }
        }
    }

    /**
     * Waits for the end of the last request and lets its output go.
     *
     * @param limit how long to wait
     * @return whether it ended
     */
    boolean drain(Duration limit) {
        long until = System.nanoTime() + limit.toNanos();
        while (System.nanoTime() < until && alive.getAsBoolean()) {
            receive();
            if (reply != null && idle) {
                return true;
            }
        }
        return false;
    }

    /** Asks the kernel to stop the running cell. */
    void interrupt() {
        sendAside("interrupt_request", MAKE.objectNode());
    }

    /** Asks the kernel to end. */
    void shutdown() {
        sendAside("shutdown_request", MAKE.objectNode().put("restart", false));
    }

    /** Gives the outputs of a cell so far. */
    List<Output> outputs(String cellId) {
        return log.outputs(cellId);
    }

    /** Gives how the last request ended, after {@link End#DONE}. */
    CellRun run() {
        if (reply == null) {
            throw new IllegalStateException("no reply yet");
        }
        JsonNode content = reply.content();
        JsonNode count = content.path("execution_count");
        Integer number = count.isInt() ? count.intValue() : null;
        return switch (content.path("status").asText("")) {
            case "ok" -> new CellRun(number, null, libraries(reply));
            case "error" -> new CellRun(number, OutputLog.failure(content), libraries(reply));
            default ->
                    new CellRun(
                            number,
                            new Output.Failure(
                                    "Aborted", "the kernel did not run this cell", List.of()));
        };
    }

    /** What our own kernel says in the metadata of its replies; other kernels say nothing. */
    private static Map<String, String> libraries(Message reply) {
        Map<String, String> versions = new LinkedHashMap<>();
        reply.metadata()
                .path("skewback")
                .path("libraries")
                .properties()
                .forEach(entry -> versions.put(entry.getKey(), entry.getValue().asText("")));
        return versions;
    }

    @Override
    public void close() {
        channels.close();
        context.close();
    }

    private void send(Message message) {
        request = message.id();
        reply = null;
        idle = false;
        Frames.send(channels.shell(), codec.encode(message));
    }

    private void sendAside(String type, ObjectNode content) {
        Frames.send(channels.control(), codec.encode(Message.request(session, type, content)));
    }

    /** Takes what waits on the channels; says whether anything did. */
    private boolean receive() {
        if (channels.poller().poll(POLL_MILLIS) <= 0) {
            return false;
        }
        @Nullable Message aside = next(channels.control());
        while (aside != null) {
            aside = next(channels.control());
        }
        @Nullable Message answer = next(channels.shell());
        while (answer != null) {
            if (answer.parentId().equals(request)) {
                reply = answer;
            }
            answer = next(channels.shell());
        }
        // A flood does not end by itself, so only so many are taken before the caller looks up.
        for (int i = 0; i < 1000; i++) {
            @Nullable Message published = next(channels.iopub());
            if (published == null) {
                break;
            }
            publish(published);
        }
        return true;
    }

    private void publish(Message published) {
        if (!published.type().equals("status")) {
            if (log.size(request) <= floodSize) {
                log.accept(published);
            }
        } else if (published.parentId().equals(request)
                && published.content().path("execution_state").asText("").equals("idle")) {
            idle = true;
        }
    }

    /** Gives the next message of a channel that can be trusted, or null where none waits. */
    private @Nullable Message next(ZMQ.Socket socket) {
        while (true) {
            @Nullable List<byte[]> frames = Frames.receive(socket, ZMQ.DONTWAIT);
            if (frames == null) {
                return null;
            }
            try {
                return codec.decode(frames);
            } catch (BadMessageException e) {
                // Whoever lacks the key is not our kernel and is not listened to.
            }
        }
    }
}
