package org.skewback.desk.jupyter;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.nio.file.Path;
import java.util.List;
import java.util.Objects;
import java.util.concurrent.atomic.AtomicBoolean;
import org.jspecify.annotations.Nullable;
import org.skewback.kernel.wire.ConnectionFile;
import org.skewback.kernel.wire.Frames;
import org.skewback.kernel.wire.Message;
import org.skewback.kernel.wire.MessageCodec;
import org.zeromq.SocketType;
import org.zeromq.ZContext;
import org.zeromq.ZMQ;

/**
 * A kernel that misbehaves as told, which a good kernel never does. Each line of a cell is one
 * command; see {@link #obey}.
 */
public final class FakeKernel {

    private static final JsonNodeFactory MAKE = JsonNodeFactory.instance;

    private final MessageCodec codec;
    private final ZMQ.Socket iopub;
    private final AtomicBoolean interrupted = new AtomicBoolean();
    private int count;
    private @Nullable Message previous;
    private JsonNode variables = MAKE.objectNode();

    private FakeKernel(MessageCodec codec, ZMQ.Socket iopub) {
        this.codec = codec;
        this.iopub = iopub;
    }

    /**
     * Serves until told to end.
     *
     * @param words the connection file
     * @throws Exception when anything goes wrong
     */
    public static void main(String[] words) throws Exception {
        ConnectionFile connection = ConnectionFile.read(Path.of(words[words.length - 1]));
        if (words.length > 1) {
            System.err.println("cannot find the " + words[0]);
            System.exit(3);
        }
        MessageCodec codec = new MessageCodec(connection.key());
        try (ZContext context = new ZContext()) {
            ZMQ.Socket shell = context.createSocket(SocketType.ROUTER);
            shell.bind(connection.address(connection.shellPort()));
            ZMQ.Socket control = context.createSocket(SocketType.ROUTER);
            control.bind(connection.address(connection.controlPort()));
            ZMQ.Socket iopub = context.createSocket(SocketType.PUB);
            iopub.setSndHWM(0);
            iopub.bind(connection.address(connection.iopubPort()));
            FakeKernel kernel = new FakeKernel(codec, iopub);
            Thread controls = new Thread(() -> kernel.control(control));
            controls.setDaemon(true);
            controls.start();
            while (true) {
                kernel.serve(shell, next(codec, shell));
            }
        }
    }

    private static Message next(MessageCodec codec, ZMQ.Socket socket) throws Exception {
        return codec.decode(Objects.requireNonNull(Frames.receive(socket, 0)));
    }

    private void control(ZMQ.Socket control) {
        try {
            while (true) {
                Message request = next(codec, control);
                if (request.type().equals("shutdown_request")) {
                    Runtime.getRuntime().halt(0);
                }
                interrupted.set(true);
            }
        } catch (Exception e) {
            Runtime.getRuntime().halt(4);
        }
    }

    private void serve(ZMQ.Socket shell, Message request) throws InterruptedException {
        publish(request, "status", MAKE.objectNode().put("execution_state", "busy"));
        ObjectNode reply = MAKE.objectNode().put("status", "ok");
        if (request.type().equals("afresh_request")) {
            count = 0;
            variables = request.content().path("environment");
            if (variables.has("stubborn")) {
                reply.put("status", "error").put("ename", "NotSupported");
            }
        }
        if (request.type().equals("execute_request")) {
            count++;
            interrupted.set(false);
            for (String line : request.content().path("code").asText().split("\n", -1)) {
                obey(line, request, reply);
            }
            reply.put("execution_count", count);
            previous = request;
        }
        Message answer = request.answer("s", request.type().replace("_request", "_reply"), reply);
        Frames.send(shell, codec.encode(answer));
        // The reply may overtake what is published: a client must wait for both.
        Thread.sleep(20);
        publish(request, "status", MAKE.objectNode().put("execution_state", "idle"));
    }

    private void obey(String line, Message request, ObjectNode reply) throws InterruptedException {
        String[] words = line.split(" ", 2);
        String rest = words.length > 1 ? words[1] : "";
        switch (words[0]) {
            case "print" -> stream(request, rest + "\n");
            case "late" -> {
                if (previous != null) {
                    stream(previous, rest + "\n");
                }
            }
            case "getenv" ->
                    stream(request, variables.path(rest).asText(System.getenv(rest)) + "\n");
            case "folder" -> stream(request, Path.of("").toAbsolutePath() + "\n");
            case "cell" -> stream(request, request.metadata().path("cellId").asText() + "\n");
            case "show", "update" -> {
                String[] parts = rest.split(" ", 2);
                ObjectNode content = MAKE.objectNode();
                content.putObject("data").put("text/plain", parts[1]);
                content.putObject("metadata");
                content.putObject("transient").put("display_id", parts[0]);
                publish(
                        request,
                        words[0].equals("show") ? "display_data" : "update_display_data",
                        content);
            }
            case "clear" ->
                    publish(
                            request,
                            "clear_output",
                            MAKE.objectNode().put("wait", rest.equals("wait")));
            case "fail", "%living", "%settle" -> {
                reply.put("status", "error").put("ename", "Fault").put("evalue", rest);
                reply.putArray("traceback").add("Fault: " + rest);
                publish(request, "error", reply);
            }
            case "wait" -> {
                while (!interrupted.get()) {
                    Thread.sleep(5);
                }
            }
            case "wedge" -> Thread.sleep(Long.MAX_VALUE);
            case "flood" -> {
                while (!interrupted.get()) {
                    stream(request, "x".repeat(1000));
                }
            }
            case "forge" -> {
                Message forged = Message.request("s", "stream", MAKE.objectNode());
                Frames.send(iopub, new MessageCodec("another key").encode(forged));
                Frames.send(iopub, List.of(new byte[] {1}));
            }
            case "halt" -> {
                System.err.println("out of luck");
                Runtime.getRuntime().halt(Integer.parseInt(rest));
            }
            default -> throw new IllegalArgumentException(line);
        }
    }

    private void stream(Message request, String text) {
        publish(request, "stream", MAKE.objectNode().put("name", "stdout").put("text", text));
    }

    private void publish(Message request, String type, ObjectNode content) {
        Message message = request.answer("s", type, content).routedBy(List.of());
        Frames.send(iopub, codec.encode(message));
    }
}
