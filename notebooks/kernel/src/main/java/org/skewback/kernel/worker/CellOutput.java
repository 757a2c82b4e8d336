package org.skewback.kernel.worker;

import java.io.IOException;
import java.io.OutputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.concurrent.TimeUnit;
import java.util.function.ToIntFunction;

/**
 * Gathers what cells print and sends it in few packets: at once when 64 kB have come together, else
 * every 50 ms, and before each answer. What a run prints beyond {@value #MOST} bytes is not shown.
 *
 * <p>Where a packet ends is kept in the notebook by some clients, so the time of day must not decide
 * it: by the clock only whole lines are sent, and the beginning of a line, such as a prompt, only
 * when the rest has not come within {@value #HELD_MILLIS} ms.
 */
final class CellOutput {

    static final int BATCH = 1 << 16;
    static final int MOST = 1 << 22;
    private static final int PERIOD_MILLIS = 50;
    private static final int HELD_MILLIS = 250;

    /** One stream of one run. */
    private static final class Gathered {
        private final int run;
        private final boolean error;
        private byte[] bytes = new byte[256];
        private int length;
        private long total;
        private long since;

        Gathered(int run, boolean error) {
            this.run = run;
            this.error = error;
        }

        void add(byte[] more, int offset, int count) {
            if (length == 0) {
                since = System.nanoTime();
            }
            int allowed = (int) Math.max(0, Math.min(count, MOST - total));
            append(more, offset, allowed);
            if (allowed < count && total <= MOST) {
                byte[] note =
                        "\n(this cell has printed more than 4 MiB; the rest is not shown)\n"
                                .getBytes(StandardCharsets.UTF_8);
                append(note, 0, note.length);
                total = MOST + 1L;
                return;
            }
            total = Math.min(total + count, MOST + 1L);
        }

        private void append(byte[] more, int offset, int count) {
            if (length + count > bytes.length) {
                bytes = Arrays.copyOf(bytes, Math.max(2 * bytes.length, length + count));
            }
            System.arraycopy(more, offset, bytes, length, count);
            length += count;
        }

        /** Length without a character of which only the first bytes have come. */
        int whole() {
            for (int back = 1; back <= Math.min(3, length); back++) {
                int b = bytes[length - back] & 0xff;
                if (b < 0x80) {
                    return length;
                }
                if (b >= 0xc0) {
                    int needed = b >= 0xf0 ? 4 : b >= 0xe0 ? 3 : 2;
                    return needed > back ? length - back : length;
                }
            }
            return length;
        }

        /** Length up to the end of the last whole line. */
        int lines() {
            int end = length;
            while (end > 0 && bytes[end - 1] != '\n') {
                end--;
            }
            return end;
        }

        /** What is due at a time: whole lines, or all where the beginning of one was held enough. */
        int due(long now) {
            int lines = lines();
            boolean held = now - since >= TimeUnit.MILLISECONDS.toNanos(HELD_MILLIS);
            return lines == 0 && held ? whole() : lines;
        }

        byte[] take(int count) {
            byte[] taken = Arrays.copyOf(bytes, count);
            System.arraycopy(bytes, count, bytes, 0, length - count);
            length -= count;
            since = System.nanoTime();
            return taken;
        }
    }

    private final Link link;
    private final Displays displays;
    private final Map<Long, Gathered> streams = new LinkedHashMap<>();

    CellOutput(Link link, Displays displays) {
        this.link = link;
        this.displays = displays;
    }

    /** Starts the thread that sends what has come together. */
    void start() {
        Thread thread = new Thread(this::flushForEver, "skewback-output");
        thread.setDaemon(true);
        thread.start();
    }

    /** A stream for {@link System#setOut} or {@link System#setErr}. */
    PrintStream stream(boolean error) {
        OutputStream bytes =
                new OutputStream() {
                    @Override
                    public void write(int b) {
                        write(new byte[] {(byte) b}, 0, 1);
                    }

                    @Override
                    public void write(byte[] more, int offset, int count) {
                        CellOutput.this.write(error, more, offset, count);
                    }
                };
        return new PrintStream(bytes, false, StandardCharsets.UTF_8) {
            // A cell that closes its output must not silence the cells after it.
            @Override
            public void close() {
                flush();
            }
        };
    }

    private void write(boolean error, byte[] more, int offset, int count) {
        int run = Run.ofThisThread();
        synchronized (streams) {
            Gathered other = streams.get(key(run, !error));
            if (other != null && other.length > 0) {
                send(other, other.whole());
            }
            Gathered own = streams.computeIfAbsent(key(run, error), k -> new Gathered(run, error));
            own.add(more, offset, count);
            if (own.length >= BATCH) {
                int lines = own.lines();
                send(own, lines > 0 ? lines : own.whole());
            }
        }
    }

    /**
     * Sends all that the run of this thread has printed, whole lines of the others, and the last
     * state of what is shown in place.
     */
    void flush() {
        int run = Run.ofThisThread();
        flush(gathered -> gathered.run == run ? gathered.whole() : gathered.lines());
    }

    /** Sends all that has been printed. */
    void flushAll() {
        flush(Gathered::whole);
    }

    /** Sends what is due at a time of {@link System#nanoTime}. */
    void flushDue(long now) {
        flush(gathered -> gathered.due(now));
    }

    private void flush(ToIntFunction<Gathered> length) {
        try {
            displays.flush();
        } catch (IOException e) {
            WorkerMain.leave();
        }
        synchronized (streams) {
            for (Gathered gathered : streams.values()) {
                send(gathered, length.applyAsInt(gathered));
            }
            streams.values().removeIf(g -> g.length == 0 && g.run != Run.current());
        }
    }

    private void send(Gathered gathered, int count) {
        if (count == 0) {
            return;
        }
        try {
            link.send(
                    Link.packet(Link.Kind.OUTPUT)
                            .number(gathered.run)
                            .flag(gathered.error)
                            .bytes(gathered.take(count)));
        } catch (IOException e) {
            WorkerMain.leave();
        }
    }

    private void flushForEver() {
        while (true) {
            try {
                Thread.sleep(PERIOD_MILLIS);
            } catch (InterruptedException e) {
                Thread.currentThread().interrupt();
                return;
            }
            flushDue(System.nanoTime());
        }
    }

    private static long key(int run, boolean error) {
        return ((long) run << 1) | (error ? 1 : 0);
    }
}
