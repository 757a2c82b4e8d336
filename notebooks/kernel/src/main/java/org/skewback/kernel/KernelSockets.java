package org.skewback.kernel;

import java.io.Closeable;
import java.io.IOException;
import java.net.InetAddress;
import java.nio.ByteBuffer;
import java.nio.channels.Pipe;
import java.nio.charset.StandardCharsets;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.BlockingQueue;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.LinkedBlockingQueue;
import java.util.concurrent.TimeUnit;
import java.util.function.BiConsumer;
import java.util.function.Function;
import org.skewback.kernel.wire.BadMessageException;
import org.skewback.kernel.wire.ConnectionFile;
import org.skewback.kernel.wire.Frames;
import org.skewback.kernel.wire.Message;
import org.skewback.kernel.wire.MessageCodec;
import org.zeromq.SocketType;
import org.zeromq.ZContext;
import org.zeromq.ZMQ;

/**
 * Owns all sockets with one thread, which waits without a timeout for whatever comes first: a request,
 * a heartbeat or a message to send. A bad message is logged and dropped.
 */
final class KernelSockets implements Closeable {

    private static final int LINGER_MILLIS = 1000;
    private static final int MOST_BYTES = 16 << 20;
    private static final int WAIT_MILLIS = 100;
    private static final int MOST_WAITING = 1000;

    private record Outgoing(Channel channel, Message message) {}

    private final ZContext context = new ZContext();
    private final Map<Channel, ZMQ.Socket> sockets = new EnumMap<>(Channel.class);
    private final ZMQ.Socket heartbeat;
    private final MessageCodec codec;
    private final BiConsumer<Channel, Message> receiver;
    private final Function<String, Message> welcome;
    private final BlockingQueue<Outgoing> outgoing = new LinkedBlockingQueue<>(MOST_WAITING);
    private final Pipe wake;
    private final CountDownLatch ended = new CountDownLatch(1);
    private volatile boolean closing;

    /**
     * Binds the sockets.
     *
     * @param connection where to listen
     * @param receiver called on the sockets' own thread for each good message, must return at once
     * @param welcome makes what is published once somebody has subscribed to a topic
     * @throws IOException if the address is not one of the loopback interface
     */
    KernelSockets(
            ConnectionFile connection,
            BiConsumer<Channel, Message> receiver,
            Function<String, Message> welcome)
            throws IOException {
        if (!InetAddress.getByName(connection.ip()).isLoopbackAddress()) {
            throw new IOException(
                    "the connection file asks to listen on "
                            + connection.ip()
                            + "; this kernel listens on the loopback interface only, such as"
                            + " 127.0.0.1");
        }
        this.receiver = receiver;
        this.welcome = welcome;
        this.codec = new MessageCodec(connection.key());
        this.wake = Pipe.open();
        wake.source().configureBlocking(false);
        wake.sink().configureBlocking(false);
        context.setLinger(LINGER_MILLIS);
        bind(Channel.SHELL, SocketType.ROUTER, connection.address(connection.shellPort()));
        bind(Channel.CONTROL, SocketType.ROUTER, connection.address(connection.controlPort()));
        bind(Channel.STDIN, SocketType.ROUTER, connection.address(connection.stdinPort()));
        bind(Channel.IOPUB, SocketType.XPUB, connection.address(connection.iopubPort()));
        // Each client is to be welcomed, not only the first of a topic.
        socket(Channel.IOPUB).setXpubVerbose(true);
        heartbeat = socket(SocketType.REP, connection.address(connection.heartbeatPort()));
    }

    private void bind(Channel channel, SocketType type, String address) {
        sockets.put(channel, socket(type, address));
    }

    private ZMQ.Socket socket(SocketType type, String address) {
        ZMQ.Socket socket = context.createSocket(type);
        // No output is dropped for a slow reader: what a cell prints is bounded in the worker.
        socket.setHWM(0);
        // Whoever sends more in one frame is cut off before it fills the memory.
        socket.setMaxMsgSize(MOST_BYTES);
        socket.bind(address);
        return socket;
    }

    /** Starts the thread that owns the sockets. */
    void start() {
        new Thread(this::serve, "skewback-sockets").start();
    }

    /**
     * Sends a message in turn. Whoever sends faster than the sockets take it has to wait.
     *
     * @param channel where to send it
     * @param message the message
     */
    void send(Channel channel, Message message) {
        try {
            Outgoing next = new Outgoing(channel, message);
            while (!outgoing.offer(next, WAIT_MILLIS, TimeUnit.MILLISECONDS)) {
                if (ended.getCount() == 0) {
                    return;
                }
                wake();
            }
            wake();
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        }
    }

    private void wake() {
        try {
            // A full pipe is as good a sign as one more byte.
            int written = wake.sink().write(ByteBuffer.wrap(new byte[1]));
            assert written <= 1;
        } catch (IOException e) {
            log("the sockets' thread could not be woken", e);
        }
    }

    private void serve() {
        try (ZMQ.Poller poller = context.createPoller(6)) {
            poller.register(socket(Channel.CONTROL), ZMQ.Poller.POLLIN);
            poller.register(socket(Channel.SHELL), ZMQ.Poller.POLLIN);
            poller.register(socket(Channel.STDIN), ZMQ.Poller.POLLIN);
            poller.register(heartbeat, ZMQ.Poller.POLLIN);
            poller.register(wake.source(), ZMQ.Poller.POLLIN);
            poller.register(socket(Channel.IOPUB), ZMQ.Poller.POLLIN);
            ByteBuffer bytes = ByteBuffer.allocate(4096);
            while (!closing || !outgoing.isEmpty()) {
                sendAll();
                if (!closing) {
                    poller.poll(-1);
                    receiveAll(poller.pollin(4), bytes);
                }
            }
        } finally {
            context.close();
            ended.countDown();
        }
    }

    /** Whatever one message does, the next is received. */
    private void receiveAll(boolean woken, ByteBuffer bytes) {
        try {
            if (woken) {
                bytes.clear();
                int read = wake.source().read(bytes);
                assert read <= bytes.capacity();
            }
            receiveAll(Channel.CONTROL);
            receiveAll(Channel.SHELL);
            receiveAll(Channel.STDIN);
            welcomeAll();
            List<byte[]> beat = Frames.receive(heartbeat, ZMQ.DONTWAIT);
            if (beat != null) {
                Frames.send(heartbeat, beat);
            }
        } catch (IOException | RuntimeException | OutOfMemoryError e) {
            log("what was received was dropped", e);
        }
    }

    private void welcomeAll() {
        ZMQ.Socket iopub = socket(Channel.IOPUB);
        for (List<byte[]> frames = Frames.receive(iopub, ZMQ.DONTWAIT);
                frames != null;
                frames = Frames.receive(iopub, ZMQ.DONTWAIT)) {
            byte[] frame = frames.get(0);
            // ZeroMQ RFC 29, publish-subscribe: 1 and the topic is a subscription.
            if (frame.length > 0 && frame[0] == 1) {
                String topic = new String(frame, 1, frame.length - 1, StandardCharsets.UTF_8);
                Frames.send(iopub, codec.encode(welcome.apply(topic)));
            }
        }
    }

    private ZMQ.Socket socket(Channel channel) {
        ZMQ.Socket socket = sockets.get(channel);
        if (socket == null) {
            throw new IllegalStateException("no socket for " + channel);
        }
        return socket;
    }

    private void sendAll() {
        for (Outgoing next = outgoing.poll(); next != null; next = outgoing.poll()) {
            try {
                Frames.send(socket(next.channel), codec.encode(next.message));
            } catch (RuntimeException e) {
                log("a message of type " + next.message.type() + " could not be sent", e);
            }
        }
    }

    private void receiveAll(Channel channel) {
        ZMQ.Socket socket = socket(channel);
        for (List<byte[]> frames = Frames.receive(socket, ZMQ.DONTWAIT);
                frames != null;
                frames = Frames.receive(socket, ZMQ.DONTWAIT)) {
            try {
                receiver.accept(channel, codec.decode(frames));
            } catch (BadMessageException | RuntimeException | OutOfMemoryError e) {
                log("a message on the " + channel + " channel was dropped", e);
            }
        }
    }

    /** Writes to the kernel's log, which is its standard error. */
    static void log(String what, Throwable e) {
        System.err.println("skewback: " + what + ": " + e);
    }

    /** Sends what waits, closes the sockets and returns when that is done. */
    @Override
    public void close() {
        closing = true;
        wake();
        try {
            ended.await();
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        }
    }
}
