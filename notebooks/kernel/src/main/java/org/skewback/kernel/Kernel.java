package org.skewback.kernel;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.UUID;
import java.util.concurrent.BlockingQueue;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.LinkedBlockingQueue;
import java.util.concurrent.atomic.AtomicInteger;
import org.jspecify.annotations.Nullable;
import org.skewback.kernel.evaluation.Assistant;
import org.skewback.kernel.evaluation.Cell;
import org.skewback.kernel.evaluation.CellEvents;
import org.skewback.kernel.evaluation.CellResult;
import org.skewback.kernel.evaluation.CommMessage;
import org.skewback.kernel.evaluation.Evaluator;
import org.skewback.kernel.evaluation.Libraries;
import org.skewback.kernel.evaluation.Shown;
import org.skewback.kernel.repository.MavenLibraries;
import org.skewback.kernel.wire.ConnectionFile;
import org.skewback.kernel.wire.ExactJson;
import org.skewback.kernel.wire.Message;

/**
 * The kernel: answers requests of the shell channel on one thread and those of the control channel on
 * another, as the Jupyter message specification says. What asks the compiler or the worker waits for its
 * turn on the first, whichever channel it came by.
 *
 * @see <a href="https://jupyter-client.readthedocs.io/en/stable/messaging.html">Jupyter client
 *     documentation, "Messaging in Jupyter"</a>
 */
public final class Kernel implements CellEvents {

    private static final int MOST_PARENTS = 4096;

    /** How long an orderly end may take, whatever the kernel is busy with. */
    private static final int END_MILLIS = 10_000;

    /** What asks the compiler or the worker, neither of which serves two threads at a time. */
    private static final Set<String> IN_TURN =
            Set.of(
                    "execute_request",
                    "afresh_request",
                    "is_complete_request",
                    "complete_request",
                    "inspect_request",
                    "comm_open",
                    "comm_msg",
                    "comm_close");

    /** A message and the channel it came by, on which it is answered. */
    private record Received(Channel channel, Message message) {}

    /** A request that is being run and may read input. */
    private record Reading(int run, Message request, boolean allowed) {}

    private final String session = UUID.randomUUID().toString();
    private final BlockingQueue<Received> shell = new LinkedBlockingQueue<>();
    private final BlockingQueue<Received> control = new LinkedBlockingQueue<>();
    private final History history = new History(HistoryFile.ofThisUser());
    private final Map<Integer, Message> parents =
            Collections.synchronizedMap(
                    new LinkedHashMap<>() {
                        private static final long serialVersionUID = 1L;

                        @Override
                        protected boolean removeEldestEntry(Map.Entry<Integer, Message> eldest) {
                            return size() > MOST_PARENTS;
                        }
                    });
    private final Map<String, String> comms = new ConcurrentHashMap<>();
    private final AtomicInteger runs = new AtomicInteger();
    private final Evaluator evaluator;
    private final KernelSockets sockets;

    // Used by the thread of the shell channel only.
    private final List<Runnable> afterwards = new ArrayList<>();
    private int executionCount;
    private volatile @Nullable Reading reading;

    private Kernel(ConnectionFile connection, Libraries libraries) throws IOException {
        evaluator = new Evaluator(this, libraries, connection.ports());
        sockets = new KernelSockets(connection, this::received, this::welcome);
    }

    /**
     * Starts a kernel and serves it until it is told to shut down.
     *
     * @param arguments the path of the connection file
     * @throws IOException if the connection file cannot be read or the kernel cannot listen
     */
    public static void main(String[] arguments) throws IOException {
        if (arguments.length != 1) {
            throw new IllegalArgumentException(
                    "the kernel takes one argument, the path of its connection file; it was given "
                            + arguments.length);
        }
        Kernel kernel =
                new Kernel(ConnectionFile.read(Path.of(arguments[0])), MavenLibraries.ofThisUser());
        Runtime.getRuntime().addShutdownHook(new Thread(kernel::end, "skewback-end"));
        ParentWatch.start(() -> System.exit(0));
        kernel.start();
    }

    /** What a client is told once its subscription is known here, so that it need not guess. */
    private Message welcome(String subscription) {
        return Message.request(
                        session,
                        "iopub_welcome",
                        Replies.object().put("subscription", subscription))
                .routedBy(List.of(subscription.getBytes(StandardCharsets.UTF_8)));
    }

    private void start() {
        sockets.start();
        ObjectNode content = Replies.object().put("execution_state", "starting");
        sockets.send(
                Channel.IOPUB,
                Message.request(session, "status", content).routedBy(topic("status")));
        new Thread(() -> serve(shell), "skewback-shell").start();
        new Thread(() -> serve(control), "skewback-control").start();
    }

    private void end() {
        // A client that has its reply may ask for the end before the cell is written down.
        history.keep();
        try {
            evaluator.close();
        } catch (IOException e) {
            KernelSockets.log("the temporary folder was not removed", e);
        }
    }

    private void received(Channel channel, Message message) {
        switch (channel) {
            case SHELL -> shell.add(new Received(channel, message));
            case CONTROL ->
                    (IN_TURN.contains(message.type()) ? shell : control)
                            .add(new Received(channel, message));
            case STDIN -> {
                if (message.type().equals("input_reply")) {
                    evaluator.giveInput(message.content().path("value").asText(""));
                }
            }
            case IOPUB -> throw new IllegalStateException("nothing is received on this channel");
        }
    }

    private void serve(BlockingQueue<Received> queue) {
        while (true) {
            Received received;
            try {
                received = queue.take();
            } catch (InterruptedException e) {
                Thread.currentThread().interrupt();
                return;
            }
            Channel channel = received.channel();
            Message request = received.message();
            boolean last = request.type().equals("shutdown_request");
            if (last) {
                endInTime();
            }
            status(request, "busy");
            try {
                handle(channel, request);
            } catch (InterruptedException e) {
                Thread.currentThread().interrupt();
                return;
            } catch (RuntimeException | Error e) {
                // Whatever goes wrong with one request, the next is served.
                KernelSockets.log("a request of type " + request.type() + " failed", e);
                reply(channel, request, Replies.error("KernelError", String.valueOf(e)));
            }
            status(request, "idle");
            if (queue == shell) {
                finish();
            }
            if (last) {
                sockets.close();
                System.exit(0);
            }
        }
    }

    /** Does what nobody waits for. */
    private void finish() {
        for (Runnable work : afterwards) {
            try {
                work.run();
            } catch (RuntimeException e) {
                KernelSockets.log("what was left to do after a request failed", e);
            }
        }
        afterwards.clear();
    }

    /** Ends this process, and with it its worker, even where something keeps it from its end. */
    private static void endInTime() {
        Thread thread =
                new Thread(
                        () -> {
                            try {
                                Thread.sleep(END_MILLIS);
                            } catch (InterruptedException e) {
                                Thread.currentThread().interrupt();
                            }
                            Runtime.getRuntime().halt(0);
                        },
                        "skewback-end-in-time");
        thread.setDaemon(true);
        thread.start();
    }

    private void handle(Channel channel, Message request) throws InterruptedException {
        JsonNode content = request.content();
        switch (request.type()) {
            case "kernel_info_request" -> reply(channel, request, Replies.kernelInfo());
            case "execute_request" -> execute(channel, request);
            case "afresh_request" -> {
                beginAfresh(content.path("environment"));
                reply(channel, request, Replies.ok());
            }
            case "is_complete_request" -> reply(channel, request, completeness(content));
            case "complete_request" -> reply(channel, request, completions(content));
            case "inspect_request" -> reply(channel, request, inspection(content));
            case "history_request" -> {
                ObjectNode reply = Replies.ok();
                reply.set("history", history.answer(content));
                reply(channel, request, reply);
            }
            case "comm_info_request" -> {
                ObjectNode reply = Replies.ok();
                reply.set("comms", comms(content.path("target_name").asText("")));
                reply(channel, request, reply);
            }
            case "comm_open", "comm_msg", "comm_close" -> comm(request);
            case "interrupt_request" -> {
                evaluator.interrupt();
                reply(channel, request, Replies.ok());
            }
            case "shutdown_request" -> {
                // What threads of the cells have printed still goes out.
                end();
                ObjectNode reply = Replies.ok();
                reply.put("restart", content.path("restart").asBoolean(false));
                reply(channel, request, reply);
            }
            case "debug_request" ->
                    reply(
                            channel,
                            request,
                            Replies.error("NotSupported", "this kernel has no debugger"));
            default ->
                    reply(
                            channel,
                            request,
                            Replies.error(
                                    "NotSupported", "this kernel does not know " + request.type()));
        }
    }

    /**
     * Serves another notebook as a kernel that has just started would: nothing that cells declared, ran, put
     * on their class path or opened is left, and a worker of its own runs the cells. Whoever drives many
     * notebooks is spared the start of a compiler for each of them. The message specification has no such
     * request; a kernel that does not know it refuses it.
     *
     * @param environment further environment variables for the cells
     */
    private void beginAfresh(JsonNode environment) {
        Map<String, String> variables = new LinkedHashMap<>();
        environment
                .properties()
                .forEach(entry -> variables.put(entry.getKey(), entry.getValue().asText("")));
        evaluator.beginAfresh(variables);
        executionCount = 0;
        comms.clear();
        parents.clear();
        history.beginSession();
    }

    private ObjectNode comms(String target) {
        ObjectNode open = Replies.object();
        comms.forEach(
                (id, name) -> {
                    if (target.isEmpty() || target.equals(name)) {
                        open.putObject(id).put("target_name", name);
                    }
                });
        return open;
    }

    private void comm(Message request) {
        JsonNode content = request.content();
        String id = content.path("comm_id").asText("");
        String target = content.path("target_name").asText("");
        JsonNode data = content.path("data");
        CommMessage message =
                new CommMessage(
                        request.type(), id, target, data.isObject() ? data.toString() : "{}");
        boolean opens = message.type().equals("comm_open");
        if (opens) {
            comms.put(id, target);
        } else if (message.type().equals("comm_close")) {
            comms.remove(id);
        }
        int run = runs.incrementAndGet();
        parents.put(run, request);
        if (!evaluator.comm(run, message) && (opens || comms.containsKey(id))) {
            // The specification asks whoever does not know the target to close at once.
            comms.remove(id);
            publishComm(request, new CommMessage("comm_close", id, "", "{}"));
        }
    }

    private void publishComm(Message parent, CommMessage message) {
        ObjectNode content = Replies.object();
        content.put("comm_id", message.id());
        if (message.type().equals("comm_open")) {
            content.put("target_name", message.target());
        }
        try {
            content.set("data", ExactJson.read(message.json()));
        } catch (IOException e) {
            content.put("name", "stderr");
            content.put("text", "what a comm was to send is not JSON: " + e.getMessage() + "\n");
            content.remove("comm_id");
            publish(parent, "stream", content);
            return;
        }
        publish(parent, message.type(), content);
    }

    private void execute(Channel channel, Message request) {
        JsonNode content = request.content();
        String code = content.path("code").asText("");
        boolean silent = isSilent(request);
        boolean store = content.path("store_history").asBoolean(true) && !silent;
        if (store) {
            executionCount++;
        }
        int count = executionCount;
        if (!silent) {
            ObjectNode input = Replies.object();
            input.put("code", code);
            input.put("execution_count", count);
            publish(request, "execute_input", input);
        }
        String id = request.metadata().path("cellId").asText("");
        CellResult result = run(request, count, id, code);
        ObjectNode reply;
        String shown = "";
        if (result instanceof CellResult.Failed failed) {
            reply = Replies.error(failed);
            ObjectNode error = reply.deepCopy();
            error.remove("status");
            if (!silent) {
                publish(request, "error", error);
            }
        } else {
            reply = Replies.ok();
            Map<String, String> value = ((CellResult.Done) result).content();
            shown = value.getOrDefault("text/plain", "");
            if (!silent && !value.isEmpty()) {
                ObjectNode executed = Replies.object();
                executed.put("execution_count", count);
                executed.set("data", MimeContent.data(value));
                executed.putObject("metadata");
                publish(request, "execute_result", executed);
            }
            reply.set("user_expressions", userExpressions(request, count));
            reply.putArray("payload");
        }
        reply.put("execution_count", count);
        boolean failed = result instanceof CellResult.Failed;
        if (result instanceof CellResult.Failed lost
                && lost.name().equals(Evaluator.WORKER_STOPPED)) {
            for (String comm : List.copyOf(comms.keySet())) {
                comms.remove(comm);
                publishComm(request, new CommMessage("comm_close", comm, "", "{}"));
            }
        }
        // Decided before the reply is out: what a client sends after it is not to be aborted.
        if (failed && content.path("stop_on_error").asBoolean(true)) {
            queued().forEach(waiting -> afterwards.add(() -> abort(waiting)));
        }
        if (store) {
            history.add(count, code, shown);
            // Nobody is to wait for a disk.
            afterwards.add(history::keep);
        }
        sockets.send(
                channel,
                request.answer(session, "execute_reply", reply)
                        .describedBy(Replies.software(evaluator.libraries())));
    }

    private CellResult run(Message request, int count, @Nullable String cellId, String code) {
        int run = runs.incrementAndGet();
        parents.put(run, request);
        reading = new Reading(run, request, request.content().path("allow_stdin").asBoolean(false));
        try {
            return evaluator.run(new Cell(run, count, cellId, code));
        } finally {
            reading = null;
        }
    }

    private ObjectNode userExpressions(Message request, int count) {
        ObjectNode values = Replies.object();
        for (Map.Entry<String, JsonNode> entry :
                request.content().path("user_expressions").properties()) {
            CellResult result = run(request, count, null, entry.getValue().asText(""));
            if (result instanceof CellResult.Failed failed) {
                values.set(entry.getKey(), Replies.error(failed));
            } else {
                ObjectNode value = Replies.ok();
                value.set("data", MimeContent.data(((CellResult.Done) result).content()));
                value.putObject("metadata");
                values.set(entry.getKey(), value);
            }
        }
        return values;
    }

    /** Takes the execute requests that wait; whatever else waits is still to be served. */
    private List<Received> queued() {
        List<Received> waiting = new ArrayList<>();
        shell.drainTo(waiting);
        List<Received> executes = new ArrayList<>();
        for (Received received : waiting) {
            if (received.message().type().equals("execute_request")) {
                executes.add(received);
            } else {
                shell.add(received);
            }
        }
        return executes;
    }

    private void abort(Received received) {
        Message request = received.message();
        status(request, "busy");
        ObjectNode reply = Replies.object();
        reply.put("status", "aborted");
        reply.put("execution_count", executionCount);
        reply(received.channel(), request, reply);
        status(request, "idle");
    }

    private ObjectNode completeness(JsonNode content) {
        Assistant.Completeness found =
                evaluator.assistant().completeness(content.path("code").asText(""));
        ObjectNode reply = Replies.object();
        reply.put("status", found.status());
        if (found.status().equals("incomplete")) {
            reply.put("indent", found.indent());
        }
        return reply;
    }

    private ObjectNode completions(JsonNode content) {
        String code = content.path("code").asText("");
        Assistant.Completions found =
                evaluator.assistant().completions(code, cursor(code, content));
        ObjectNode reply = Replies.ok();
        int start = code.codePointCount(0, found.start());
        int end = code.codePointCount(0, found.end());
        reply.put("cursor_start", start);
        reply.put("cursor_end", end);
        ArrayNode matches = reply.putArray("matches");
        // The name under which front ends look for the types of matches.
        ArrayNode types = reply.putObject("metadata").putArray("_jupyter_types_experimental");
        for (Assistant.Match match : found.matches()) {
            matches.add(match.text());
            ObjectNode type = types.addObject();
            type.put("text", match.text()).put("type", match.type());
            type.put("signature", match.signature()).put("start", start).put("end", end);
        }
        return reply;
    }

    private ObjectNode inspection(JsonNode content) {
        String code = content.path("code").asText("");
        boolean full = content.path("detail_level").asInt(0) > 0;
        ObjectNode reply = Replies.ok();
        ObjectNode data = reply.putObject("data");
        evaluator
                .assistant()
                .inspection(code, cursor(code, content), full)
                .ifPresent(text -> data.put("text/plain", text));
        reply.put("found", !data.isEmpty());
        reply.putObject("metadata");
        return reply;
    }

    /** The protocol counts characters, Java UTF-16 units. */
    private static int cursor(String code, JsonNode content) {
        int length = code.codePointCount(0, code.length());
        int cursor = content.path("cursor_pos").asInt(length);
        return code.offsetByCodePoints(0, Math.max(0, Math.min(length, cursor)));
    }

    private void reply(Channel channel, Message request, ObjectNode content) {
        String type = request.type().replaceFirst("_request$", "") + "_reply";
        sockets.send(channel, request.answer(session, type, content));
    }

    private void publish(Message parent, String type, ObjectNode content) {
        sockets.send(Channel.IOPUB, parent.answer(session, type, content).routedBy(topic(type)));
    }

    private void status(Message parent, String state) {
        publish(parent, "status", Replies.object().put("execution_state", state));
    }

    private static List<byte[]> topic(String type) {
        return List.of(type.getBytes(StandardCharsets.US_ASCII));
    }

    /** The request that what a run publishes belongs to, or null where it is to be silent. */
    private @Nullable Message audience(int run) {
        Message parent = parents.get(run);
        return parent == null || isSilent(parent) ? null : parent;
    }

    private static boolean isSilent(Message request) {
        return request.content().path("silent").asBoolean(false);
    }

    @Override
    public void printed(int run, boolean error, String text) {
        Message parent = audience(run);
        if (parent != null) {
            ObjectNode content = Replies.object();
            content.put("name", error ? "stderr" : "stdout");
            content.put("text", text);
            publish(parent, "stream", content);
        }
    }

    @Override
    public void shows(int run, Shown shown) {
        Message parent = audience(run);
        if (parent != null) {
            ObjectNode content = Replies.object();
            content.set("data", MimeContent.data(shown.content()));
            content.putObject("metadata");
            ObjectNode transientData = content.putObject("transient");
            if (!shown.id().isEmpty()) {
                transientData.put("display_id", shown.id());
            }
            publish(parent, shown.again() ? "update_display_data" : "display_data", content);
        }
    }

    @Override
    public void clears(int run, boolean wait) {
        Message parent = audience(run);
        if (parent != null) {
            publish(parent, "clear_output", Replies.object().put("wait", wait));
        }
    }

    @Override
    public void says(int run, CommMessage message) {
        switch (message.type()) {
            case "comm_open" -> comms.put(message.id(), message.target());
            case "comm_close" -> comms.remove(message.id());
            default -> {
                // Nothing is opened or closed.
            }
        }
        Message parent = parents.get(run);
        if (parent != null) {
            publishComm(parent, message);
        }
    }

    @Override
    public void wantsInput(int run, String prompt, boolean secret) {
        Reading now = reading;
        if (now == null || now.run != run || !now.allowed) {
            evaluator.giveInput(null);
            return;
        }
        ObjectNode content = Replies.object();
        content.put("prompt", prompt);
        content.put("password", secret);
        sockets.send(Channel.STDIN, now.request.answer(session, "input_request", content));
    }
}
