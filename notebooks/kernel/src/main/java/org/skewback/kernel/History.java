package org.skewback.kernel;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import java.io.IOException;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Collections;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Queue;
import java.util.Set;
import java.util.function.Predicate;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;
import org.skewback.kernel.HistoryFile.Entry;

/**
 * What has been run, in this session and in those before it. A history that cannot be read or written
 * is told once, and this session's alone is kept.
 */
final class History {

    private static final int MOST_KEPT = 5000;

    private @Nullable HistoryFile file;
    private final List<Entry> own = new ArrayList<>();
    private final Queue<Entry> notYetKept = new ArrayDeque<>();
    private boolean begun;
    private int session;

    History(Optional<HistoryFile> file) {
        this.file = file.orElse(null);
    }

    /** Adds a cell and the text of its value, which may be empty; the disk is left for later. */
    synchronized void add(int line, String input, String output) {
        notYetKept.add(new Entry(0, line, input, output));
    }

    /** Writes down whatever has been added since the last time. */
    synchronized void keep() {
        for (Entry added = notYetKept.poll(); added != null; added = notYetKept.poll()) {
            Entry entry = new Entry(session(), added.line(), added.input(), added.output());
            own.add(entry);
            if (own.size() > MOST_KEPT) {
                own.remove(0);
            }
            HistoryFile kept = file;
            if (kept != null) {
                try {
                    kept.add(entry);
                } catch (IOException e) {
                    giveUp(e);
                }
            }
        }
    }

    /** Has what is added from now on belong to another session. */
    synchronized void beginSession() {
        keep();
        begun = false;
    }

    private void giveUp(IOException e) {
        file = null;
        KernelSockets.log("the history is not kept over sessions", e);
    }

    private int session() {
        HistoryFile kept = file;
        if (!begun) {
            begun = true;
            session++;
            if (kept != null) {
                try {
                    session = kept.begin();
                } catch (IOException e) {
                    giveUp(e);
                }
            }
        }
        return session;
    }

    private List<Entry> all() {
        List<Entry> all = new ArrayList<>();
        HistoryFile kept = file;
        if (kept != null) {
            try {
                // Another kernel that began at the same time may have the same number.
                for (Entry entry : kept.read()) {
                    if (entry.session() < session()) {
                        all.add(entry);
                    }
                }
            } catch (IOException e) {
                giveUp(e);
            }
        }
        all.addAll(own);
        return all;
    }

    /**
     * Answers a request.
     *
     * @param request content of a {@code history_request}
     * @return the list of the reply: session, line and input, with the output where it is asked for
     */
    synchronized ArrayNode answer(JsonNode request) {
        keep();
        List<Entry> found =
                switch (request.path("hist_access_type").asText("")) {
                    case "range" -> range(request);
                    case "search" -> search(request);
                    default -> last(all(), request.path("n").asInt(Integer.MAX_VALUE));
                };
        boolean output = request.path("output").asBoolean(false);
        ArrayNode list = JsonNodeFactory.instance.arrayNode();
        for (Entry entry : found) {
            ArrayNode item = list.addArray().add(entry.session()).add(entry.line());
            if (output) {
                ArrayNode both = item.addArray().add(entry.input());
                if (entry.output().isEmpty()) {
                    both.addNull();
                } else {
                    both.add(entry.output());
                }
            } else {
                item.add(entry.input());
            }
        }
        return list;
    }

    /** A session of 0 is this one, one below 0 as many before it. */
    private List<Entry> range(JsonNode request) {
        int asked = request.path("session").asInt(0);
        int wanted = asked > 0 ? asked : session() + asked;
        int start = request.path("start").asInt(0);
        int stop = request.path("stop").asInt(Integer.MAX_VALUE);
        return all().stream()
                .filter(e -> e.session() == wanted && e.line() >= start && e.line() < stop)
                .toList();
    }

    private List<Entry> search(JsonNode request) {
        Predicate<String> wanted = glob(request.path("pattern").asText("*"));
        boolean unique = request.path("unique").asBoolean(false);
        List<Entry> entries = all();
        List<Entry> found = new ArrayList<>();
        Set<String> seen = new HashSet<>();
        for (int i = entries.size() - 1; i >= 0; i--) {
            Entry entry = entries.get(i);
            if (wanted.test(entry.input()) && (seen.add(entry.input()) || !unique)) {
                found.add(entry);
            }
        }
        Collections.reverse(found);
        return last(found, request.path("n").asInt(Integer.MAX_VALUE));
    }

    private static List<Entry> last(List<Entry> list, int count) {
        return list.subList(Math.max(0, list.size() - Math.max(0, count)), list.size());
    }

    private static Predicate<String> glob(String pattern) {
        StringBuilder regex = new StringBuilder();
        for (int i = 0; i < pattern.length(); i++) {
            char c = pattern.charAt(i);
            regex.append(
                    switch (c) {
                        case '*' -> ".*";
                        case '?' -> ".";
                        default -> Pattern.quote(String.valueOf(c));
                    });
        }
        return Pattern.compile(regex.toString(), Pattern.DOTALL).asMatchPredicate();
    }
}
