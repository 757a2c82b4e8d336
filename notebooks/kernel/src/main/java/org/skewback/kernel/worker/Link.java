package org.skewback.kernel.worker;

import java.io.BufferedInputStream;
import java.io.BufferedOutputStream;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.Closeable;
import java.io.DataInputStream;
import java.io.DataOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.net.Socket;
import java.nio.charset.StandardCharsets;

/**
 * Packets between front and worker over one stream. Packets may be sent from any thread; one thread
 * receives.
 */
public final class Link implements Closeable {

    /** What a packet is. */
    public enum Kind {
        /** Worker to front, first packet: the token. */
        HELLO,
        /** Front to worker: a cell starts; run, cell identifier, live variables. */
        CELL_STARTS,
        /** Front to worker: hand over what live values have for programs; run, live variables. */
        LIVING,
        /** Front to worker: wait for the threads of cells to end; run, longest wait in ms. */
        SETTLE,
        /** Front to worker: define classes. */
        LOAD,
        /** Front to worker: redefine classes. */
        REDEFINE,
        /** Front to worker: invoke a static method. */
        INVOKE,
        /** Front to worker: render the value of the last invocation. */
        RENDER,
        /** Front to worker: forget the value of an expression. */
        FORGET,
        /** Front to worker: add to the class path. */
        CLASS_PATH,
        /** Front to worker: stop the cell that runs. */
        STOP,
        /** Front to worker: a line of input, or the refusal of one. */
        INPUT,
        /** Either way: a comm is opened, spoken over or closed; run, type, id, target, JSON. */
        COMM,
        /** Front to worker: send what has been printed, and end. */
        END,
        /** Worker to front: the answer to a request. */
        ANSWER,
        /** Worker to front: text of a stream. */
        OUTPUT,
        /** Worker to front: a value to show; run, name of the display, whether it is shown again. */
        DISPLAY,
        /** Worker to front: the output of a cell is to be cleared; run, whether to wait. */
        CLEAR,
        /** Worker to front: a cell wants a line of input; run, prompt, whether it is secret. */
        INPUT_WANTED,
        /** Worker to front: a thread that a cell had started failed; run, its name, the exceptions. */
        THREAD_FAILED
    }

    /** How a request to the worker ended. */
    public enum Outcome {
        /** Done; what was asked for follows. */
        DONE,
        /** The cell threw; the chain of its exceptions follows. */
        FAILED,
        /** The cell was told to stop and has stopped. */
        STOPPED,
        /** The cell used a declaration that is not complete; its number and the frames follow. */
        UNRESOLVED,
        /** The request could not be served; the reason follows as text. */
        REFUSED
    }

    /** A packet being written. Strings and arrays carry their length. */
    public static final class Writer {

        private final ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        private final DataOutputStream out = new DataOutputStream(bytes);

        private Writer(Kind kind) {
            text(kind.name());
        }

        /**
         * Writes an integer.
         *
         * @param value the integer
         * @return this
         */
        public Writer number(int value) {
            try {
                out.writeInt(value);
            } catch (IOException e) {
                throw new UncheckedIOException(e);
            }
            return this;
        }

        /**
         * Writes a truth value.
         *
         * @param value the truth value
         * @return this
         */
        public Writer flag(boolean value) {
            return number(value ? 1 : 0);
        }

        /**
         * Writes bytes.
         *
         * @param value the bytes
         * @return this
         */
        public Writer bytes(byte[] value) {
            number(value.length);
            bytes.writeBytes(value);
            return this;
        }

        /**
         * Writes an outcome.
         *
         * @param value the outcome
         * @return this
         */
        public Writer outcome(Outcome value) {
            return text(value.name());
        }

        /**
         * Writes a text.
         *
         * @param value the text
         * @return this
         */
        public Writer text(String value) {
            return bytes(value.getBytes(StandardCharsets.UTF_8));
        }
    }

    /** A packet being read, in the order in which it was written. */
    public static final class Reader {

        private final Kind kind;
        private final DataInputStream in;

        private Reader(byte[] packet) {
            in = new DataInputStream(new ByteArrayInputStream(packet));
            kind = Kind.valueOf(text());
        }

        /**
         * Gives the kind of packet.
         *
         * @return the kind
         */
        public Kind kind() {
            return kind;
        }

        /**
         * Reads an integer.
         *
         * @return the integer
         */
        public int number() {
            try {
                return in.readInt();
            } catch (IOException e) {
                throw new UncheckedIOException(e);
            }
        }

        /**
         * Reads a truth value.
         *
         * @return the truth value
         */
        public boolean flag() {
            return number() != 0;
        }

        /**
         * Reads bytes.
         *
         * @return the bytes
         */
        public byte[] bytes() {
            try {
                byte[] value = new byte[number()];
                in.readFully(value);
                return value;
            } catch (IOException e) {
                throw new UncheckedIOException(e);
            }
        }

        /**
         * Reads an outcome.
         *
         * @return the outcome
         */
        public Outcome outcome() {
            return Outcome.valueOf(text());
        }

        /**
         * Reads a text.
         *
         * @return the text
         */
        public String text() {
            return new String(bytes(), StandardCharsets.UTF_8);
        }
    }

    private static final int LARGEST = 1 << 30;

    private final Socket socket;
    private final DataInputStream in;
    private final DataOutputStream out;

    /**
     * Uses a connected socket.
     *
     * @param socket the socket
     * @throws IOException if it is not connected
     */
    public Link(Socket socket) throws IOException {
        socket.setTcpNoDelay(true);
        this.socket = socket;
        InputStream raw = socket.getInputStream();
        this.in = new DataInputStream(new BufferedInputStream(raw, 1 << 16));
        this.out =
                new DataOutputStream(new BufferedOutputStream(socket.getOutputStream(), 1 << 16));
    }

    /**
     * Starts a packet.
     *
     * @param kind its kind
     * @return the packet, to be filled and sent
     */
    public static Writer packet(Kind kind) {
        return new Writer(kind);
    }

    /**
     * Sends a packet.
     *
     * @param packet the packet
     * @throws IOException if the other side is gone
     */
    public void send(Writer packet) throws IOException {
        synchronized (out) {
            out.writeInt(packet.bytes.size());
            packet.bytes.writeTo(out);
            out.flush();
        }
    }

    /**
     * Waits for a packet.
     *
     * @return the packet
     * @throws IOException if the other side is gone
     */
    public Reader receive() throws IOException {
        int length = in.readInt();
        if (length < 0 || length > LARGEST) {
            throw new IOException("a packet of " + length + " bytes");
        }
        byte[] packet = new byte[length];
        in.readFully(packet);
        return new Reader(packet);
    }

    @Override
    public void close() throws IOException {
        socket.close();
    }
}
