package org.skewback.kernel.install;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.Closeable;
import java.io.IOException;
import java.util.List;
import java.util.concurrent.TimeUnit;
import java.util.function.BooleanSupplier;
import org.skewback.kernel.wire.BadMessageException;
import org.skewback.kernel.wire.ConnectionFile;
import org.skewback.kernel.wire.Frames;
import org.skewback.kernel.wire.Message;
import org.skewback.kernel.wire.MessageCodec;
import org.zeromq.SocketType;
import org.zeromq.ZContext;
import org.zeromq.ZMQ;

/** Asks a kernel on its shell channel, one request after the other. */
final class KernelTalk implements Closeable {

    private static final String SESSION = "installation";
    private static final int LOOK_MILLIS = 200;
    private static final int MOST_SECONDS = 40;

    private final ZContext context = new ZContext();
    private final ZMQ.Socket shell;
    private final MessageCodec codec;
    private final BooleanSupplier alive;

    /**
     * Connects; the kernel need not listen yet.
     *
     * @param connection where it listens
     * @param alive says whether the kernel can still answer
     */
    KernelTalk(ConnectionFile connection, BooleanSupplier alive) {
        this.alive = alive;
        codec = new MessageCodec(connection.key());
        context.setLinger(0);
        shell = context.createSocket(SocketType.DEALER);
        shell.setReceiveTimeOut(LOOK_MILLIS);
        shell.connect(connection.address(connection.shellPort()));
    }

    static ObjectNode object() {
        return JsonNodeFactory.instance.objectNode();
    }

    /**
     * Asks.
     *
     * @param type type of the request
     * @param content its content
     * @return content of the reply
     * @throws IOException if no answer came in time, or one that cannot be read
     */
    JsonNode ask(String type, ObjectNode content) throws IOException {
        Message request = Message.request(SESSION, type, content);
        Frames.send(shell, codec.encode(request));
        long deadline = System.nanoTime() + TimeUnit.SECONDS.toNanos(MOST_SECONDS);
        while (true) {
            List<byte[]> frames = Frames.receive(shell, 0);
            if (frames == null) {
                if (!alive.getAsBoolean() || System.nanoTime() > deadline) {
                    throw new IOException("the kernel does not answer");
                }
                continue;
            }
            try {
                Message reply = codec.decode(frames);
                if (reply.parentId().equals(request.id())) {
                    return reply.content();
                }
            } catch (BadMessageException e) {
                throw new IOException("the kernel's answer cannot be read: " + e.getMessage(), e);
            }
        }
    }

    /**
     * Runs a cell.
     *
     * @param code the cell
     * @return content of the reply
     * @throws IOException if no answer came in time
     */
    JsonNode execute(String code) throws IOException {
        return ask("execute_request", object().put("code", code).put("allow_stdin", false));
    }

    @Override
    public void close() {
        context.close();
    }
}
