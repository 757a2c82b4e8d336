package org.skewback.kernel.worker;

import java.io.IOException;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.TimeUnit;

/**
 * Sends the values that cells show, within bounds: of a display that changes faster than every 50 ms
 * only the last state of each period is sent, and of values shown by one run no more than {@value
 * #MOST}.
 */
final class Displays {

    static final int MOST = 2_000;
    private static final long PERIOD_NANOS = TimeUnit.MILLISECONDS.toNanos(50);
    private static final String PLAIN = "text/plain";

    /** A state of a display that waits to be sent. */
    private record State(int run, String name, Map<String, String> content) {}

    private final Link link;
    private final Map<String, Long> sent = new LinkedHashMap<>();
    private final Map<String, State> waiting = new LinkedHashMap<>();
    private int run = Run.NONE;
    private int shown;

    Displays(Link link) {
        this.link = link;
    }

    /** Shows a value, under a name where that is not empty. */
    synchronized void show(String name, Map<String, String> content) throws IOException {
        int owner = Run.ofThisThread();
        if (owner != run) {
            run = owner;
            shown = 0;
        }
        shown++;
        if (shown <= MOST) {
            send(new State(owner, name, content), false);
        } else if (shown == MOST + 1) {
            String note =
                    "(this cell has shown more than " + MOST + " values; the rest is left out)";
            send(new State(owner, "", Map.of(PLAIN, note)), false);
        }
    }

    /** Shows a value in place of what was shown under a name. */
    synchronized void showAgain(String name, Map<String, String> content) throws IOException {
        State state = new State(Run.ofThisThread(), name, content);
        Long before = sent.get(name);
        if (before == null || System.nanoTime() - before >= PERIOD_NANOS) {
            waiting.remove(name);
            sent.put(name, System.nanoTime());
            send(state, true);
        } else {
            waiting.put(name, state);
        }
    }

    /** Sends the last states that wait. */
    synchronized void flush() throws IOException {
        List<State> states = new ArrayList<>(waiting.values());
        waiting.clear();
        long now = System.nanoTime();
        sent.values().removeIf(time -> now - time >= PERIOD_NANOS);
        for (State state : states) {
            sent.put(state.name, now);
            send(state, true);
        }
    }

    private void send(State state, boolean again) throws IOException {
        Link.Writer packet =
                Link.packet(Link.Kind.DISPLAY).number(state.run).text(state.name).flag(again);
        link.send(content(packet, state.content));
    }

    /** Writes content by MIME type. */
    static Link.Writer content(Link.Writer packet, Map<String, String> content) {
        packet.number(content.size());
        content.forEach((type, text) -> packet.text(type).text(text));
        return packet;
    }
}
