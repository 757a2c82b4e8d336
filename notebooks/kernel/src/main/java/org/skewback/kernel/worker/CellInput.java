package org.skewback.kernel.worker;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.concurrent.LinkedBlockingQueue;
import org.jspecify.annotations.Nullable;

/** Standard input of the cells: asks the front for one line at a time. */
final class CellInput extends InputStream {

    /** Thrown to a cell that reads where nobody can answer. */
    static final class NobodyAnswers extends IllegalStateException {
        private static final long serialVersionUID = 1L;

        NobodyAnswers() {
            super(
                    "the cell asks for input, but whoever runs this notebook does not take input"
                            + " (System.in is closed to it); give the value in the cell itself");
        }
    }

    /** A line, or the refusal of one. */
    private record Reply(boolean given, String line) {}

    private final Link link;
    private final CellOutput output;
    private final LinkedBlockingQueue<Reply> replies = new LinkedBlockingQueue<>();
    private byte[] line = new byte[0];
    private int position;

    CellInput(Link link, CellOutput output) {
        this.link = link;
        this.output = output;
    }

    /** Hands over what the front sent. */
    void received(boolean given, String text) {
        replies.add(new Reply(given, text));
    }

    @Override
    public synchronized int available() {
        return line.length - position;
    }

    @Override
    public int read() throws IOException {
        byte[] one = new byte[1];
        return read(one, 0, 1) < 0 ? -1 : one[0] & 0xff;
    }

    @Override
    public synchronized int read(byte @Nullable [] target, int offset, int count)
            throws IOException {
        if (target == null || count == 0) {
            return 0;
        }
        if (position == line.length) {
            line = (ask("", false) + "\n").getBytes(StandardCharsets.UTF_8);
            position = 0;
        }
        int taken = Math.min(count, line.length - position);
        System.arraycopy(line, position, target, offset, taken);
        position += taken;
        return taken;
    }

    /**
     * Asks for one line.
     *
     * @throws NobodyAnswers if nobody takes input; unchecked, because Scanner turns an IOException
     *     into "no line found"
     * @throws Stop.CellStopped if the cell is interrupted while it waits
     */
    synchronized String ask(String prompt, boolean secret) throws IOException {
        replies.clear();
        output.flush();
        link.send(
                Link.packet(Link.Kind.INPUT_WANTED)
                        .number(Run.ofThisThread())
                        .text(prompt)
                        .flag(secret));
        Reply reply;
        try {
            reply = replies.take();
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            throw new Stop.CellStopped();
        }
        if (!reply.given) {
            throw new NobodyAnswers();
        }
        return reply.line;
    }
}
