package org.skewback.kernel;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.concurrent.TimeUnit;
import org.jspecify.annotations.Nullable;
import org.skewback.kernel.wire.BadMessageException;
import org.skewback.kernel.wire.ConnectionFile;
import org.skewback.kernel.wire.Frames;
import org.skewback.kernel.wire.Message;
import org.skewback.kernel.wire.MessageCodec;
import org.zeromq.SocketType;
import org.zeromq.ZContext;
import org.zeromq.ZMQ;

/** Starts a kernel as a process of its own and speaks with it over real sockets. */
final class KernelClient implements AutoCloseable {

    /** What came back for one execute request. */
    record Run(JsonNode reply, List<Message> published) {

        /** All texts of one stream. */
        String stream(String name) {
            StringBuilder text = new StringBuilder();
            for (Message message : of("stream")) {
                if (message.content().path("name").asText().equals(name)) {
                    text.append(message.content().path("text").asText());
                }
            }
            return text.toString();
        }

        /** The messages of one type. */
        List<Message> of(String type) {
            return published.stream().filter(m -> m.type().equals(type)).toList();
        }

        /** The value shown, or an empty object. */
        JsonNode data() {
            List<Message> results = of("execute_result");
            return results.isEmpty()
                    ? JsonNodeFactory.instance.objectNode()
                    : results.get(0).content().path("data");
        }

        /** The value shown as text. */
        String text() {
            return data().path("text/plain").asText("");
        }

        /** The lines of the traceback. */
        String traceback() {
            List<String> lines = new ArrayList<>();
            reply.path("traceback").forEach(line -> lines.add(line.asText()));
            return String.join("\n", lines);
        }
    }

    private static final int TIMEOUT_MILLIS = 30_000;
    private static final String SESSION = "test";

    private final ZContext context = new ZContext();
    private final Process process;
    private final MessageCodec codec;
    private final ZMQ.Socket shell;
    private final ZMQ.Socket control;
    private final ZMQ.Socket stdin;
    private final ZMQ.Socket iopub;
    private final String published;

    KernelClient(Path folder, Map<String, String> environment) throws IOException {
        ConnectionFile connection = ConnectionFile.onLoopback();
        Path file = folder.resolve("connection-" + connection.shellPort() + ".json");
        connection.write(file);
        ProcessBuilder builder =
                new ProcessBuilder(
                        Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                        "-XX:+UseSerialGC",
                        "-XX:TieredStopAtLevel=1",
                        // What a kernel that is killed leaves behind goes with the test's folder.
                        "-Djava.io.tmpdir=" + folder,
                        // No settings of whoever runs the tests, and no server.
                        "-Duser.home=" + offlineHome(folder),
                        "-cp",
                        System.getProperty("java.class.path"),
                        Kernel.class.getName(),
                        file.toString());
        builder.environment().put("SKEWBACK_HISTORY", "off");
        builder.environment().putAll(environment);
        builder.redirectErrorStream(true);
        builder.redirectOutput(folder.resolve("kernel.log").toFile());
        process = builder.start();
        codec = new MessageCodec(connection.key());
        published = connection.address(connection.iopubPort());
        iopub = socket(SocketType.SUB, published);
        iopub.subscribe(new byte[0]);
        shell = socket(SocketType.DEALER, connection.address(connection.shellPort()));
        control = socket(SocketType.DEALER, connection.address(connection.controlPort()));
        stdin = socket(SocketType.DEALER, connection.address(connection.stdinPort()));
        waitUntilHeard();
    }

    private static Path offlineHome(Path folder) throws IOException {
        Path maven = Files.createDirectories(folder.resolve(".m2"));
        Files.writeString(
                maven.resolve("settings.xml"), "<settings><offline>true</offline></settings>");
        return folder;
    }

    private ZMQ.Socket socket(SocketType type, String address) {
        ZMQ.Socket socket = context.createSocket(type);
        socket.setReceiveTimeOut(TIMEOUT_MILLIS);
        // Input requests come back by the same name on which the request came in.
        socket.setIdentity(SESSION.getBytes(StandardCharsets.US_ASCII));
        socket.setHWM(0);
        socket.connect(address);
        return socket;
    }

    /** A subscription takes effect some time after it was asked for. */
    private void waitUntilHeard() throws IOException {
        iopub.setReceiveTimeOut(200);
        List<byte[]> heard = null;
        for (int i = 0; heard == null && i < 100; i++) {
            ask(shell, "kernel_info_request", object());
            heard = Frames.receive(iopub, 0);
        }
        if (heard == null) {
            throw new IOException("the kernel publishes nothing");
        }
        iopub.setReceiveTimeOut(TIMEOUT_MILLIS);
    }

    static ObjectNode object() {
        return JsonNodeFactory.instance.objectNode();
    }

    /** Makes an execute request. */
    static Message execute(String code) {
        return Message.request(
                SESSION, "execute_request", object().put("code", code).put("allow_stdin", false));
    }

    /** Asks on the shell channel and gives the content of the reply. */
    JsonNode ask(String type, ObjectNode content) throws IOException {
        return ask(shell, type, content);
    }

    /** Asks on the control channel and gives the content of the reply. */
    JsonNode askControl(String type) throws IOException {
        return ask(control, type, object());
    }

    private JsonNode ask(ZMQ.Socket socket, String type, ObjectNode content) throws IOException {
        Message request = Message.request(SESSION, type, content);
        Frames.send(socket, codec.encode(request));
        return reply(socket, request).content();
    }

    private Message reply(ZMQ.Socket socket, Message request) throws IOException {
        while (true) {
            Message message = receive(socket);
            if (message.parentId().equals(request.id())) {
                return message;
            }
        }
    }

    private Message receive(ZMQ.Socket socket) throws IOException {
        List<byte[]> frames = Frames.receive(socket, 0);
        if (frames == null) {
            throw new IOException("the kernel is silent");
        }
        try {
            return codec.decode(frames);
        } catch (BadMessageException e) {
            throw new IOException(e);
        }
    }

    /** Tells the kernel to end, and waits for nothing. */
    void shutDown() {
        sendControl(Message.request(SESSION, "shutdown_request", object()));
    }

    /** Sends on the control channel and waits for nothing. */
    void sendControl(Message request) {
        Frames.send(control, codec.encode(request));
    }

    /** Waits for the reply to what was sent on the control channel and gives its content. */
    JsonNode awaitControl(Message request) throws IOException {
        return reply(control, request).content();
    }

    /** Sends on the shell channel and waits for nothing. */
    void send(Message request) {
        Frames.send(shell, codec.encode(request));
    }

    /** Sends frames as they are. */
    void sendRaw(List<byte[]> frames) {
        Frames.send(shell, frames);
    }

    /** The frames of a message, signed. */
    List<byte[]> frames(Message message) {
        return codec.encode(message);
    }

    /** Runs a cell. */
    Run run(String code) throws IOException {
        Message request = execute(code);
        send(request);
        return await(request);
    }

    /**
     * Subscribes to a topic and waits for the welcome. On a busy machine about one connection in a hundred
     * that JeroMQ makes never carries anything (with libzmq, which Jupyter uses, none in 1500), so it is
     * tried again on a new one.
     */
    Message welcome(String topic) throws IOException {
        for (int i = 0; i < 5; i++) {
            try (ZMQ.Socket subscriber = socket(SocketType.SUB, published)) {
                subscriber.setReceiveTimeOut(5000);
                subscriber.subscribe(topic);
                List<byte[]> frames = Frames.receive(subscriber, 0);
                while (frames != null) {
                    Message message = codec.decode(frames);
                    if (message.type().equals("iopub_welcome")) {
                        return message;
                    }
                    frames = Frames.receive(subscriber, 0);
                }
            } catch (BadMessageException e) {
                throw new IOException(e);
            }
        }
        throw new IOException("nobody was welcomed");
    }

    /** Waits for the next published message. */
    Message published() throws IOException {
        return receive(iopub);
    }

    /** Waits for the next published message of a type that belongs to a request. */
    Message published(Message request, String type) throws IOException {
        while (true) {
            Message message = receive(iopub);
            if (message.parentId().equals(request.id()) && message.type().equals(type)) {
                return message;
            }
        }
    }

    /** Waits for the reply to what was sent on the shell channel, not for what is published. */
    void awaitReply(Message request) throws IOException {
        reply(shell, request);
    }

    /** Waits for what belongs to a request: the reply and all that is published until it is idle. */
    Run await(Message request) throws IOException {
        JsonNode reply = reply(shell, request).content();
        List<Message> published = new ArrayList<>();
        while (true) {
            Message message = receive(iopub);
            if (!message.parentId().equals(request.id())) {
                continue;
            }
            published.add(message);
            if (message.content().path("execution_state").asText("").equals("idle")) {
                return new Run(reply, published);
            }
        }
    }

    /** Waits for the next request for input. */
    Message inputRequest() throws IOException {
        return receive(stdin);
    }

    /** Answers the next request for input and gives what it asked. */
    JsonNode giveInput(String line) throws IOException {
        Message request = inputRequest();
        Frames.send(
                stdin,
                codec.encode(
                        request.answer(SESSION, "input_reply", object().put("value", line))
                                .routedBy(List.of())));
        return request.content();
    }

    /** Waits for the kernel's end and gives its exit status, or null if it does not end. */
    @Nullable Integer exitStatus() throws InterruptedException {
        return process.waitFor(10, TimeUnit.SECONDS) ? process.exitValue() : null;
    }

    @Override
    public void close() {
        context.setLinger(0);
        context.close();
        process.destroyForcibly();
    }
}
