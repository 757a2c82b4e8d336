package org.skewback.kernel.wire;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.zeromq.ZMQ;

/** Sends and receives whole multipart messages. */
public final class Frames {

    private Frames() {}

    /**
     * Receives one multipart message.
     *
     * @param socket the socket, used by one thread only
     * @param flags 0 to wait, {@link ZMQ#DONTWAIT} not to
     * @return its frames, or null where nothing came
     */
    public static @Nullable List<byte[]> receive(ZMQ.Socket socket, int flags) {
        byte[] frame = socket.recv(flags);
        if (frame == null) {
            return null;
        }
        List<byte[]> frames = new ArrayList<>();
        frames.add(frame);
        while (socket.hasReceiveMore()) {
            frames.add(socket.recv());
        }
        return frames;
    }

    /**
     * Sends one multipart message.
     *
     * @param socket the socket, used by one thread only
     * @param frames its frames, at least one
     */
    public static void send(ZMQ.Socket socket, List<byte[]> frames) {
        for (int i = 0; i < frames.size(); i++) {
            socket.send(frames.get(i), i < frames.size() - 1 ? ZMQ.SNDMORE : 0);
        }
    }
}
