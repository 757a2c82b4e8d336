package org.skewback.kernel;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import java.util.ArrayList;
import java.util.Collections;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.function.Predicate;
import java.util.regex.Pattern;

/** What has been run in this session. Used by one thread. */
final class History {

    private static final int SESSION = 1;

    private record Entry(int line, String input, String output) {}

    private final List<Entry> entries = new ArrayList<>();

    /** Adds a cell and the text of its value, which may be empty. */
    void add(int line, String input, String output) {
        entries.add(new Entry(line, input, output));
    }

    /**
     * Answers a request.
     *
     * @param request content of a {@code history_request}
     * @return the list of the reply: session, line and input, with the output where it is asked for
     */
    ArrayNode answer(JsonNode request) {
        List<Entry> found =
                switch (request.path("hist_access_type").asText("")) {
                    case "range" -> range(request);
                    case "search" -> search(request);
                    default -> last(entries, request.path("n").asInt(entries.size()));
                };
        boolean output = request.path("output").asBoolean(false);
        ArrayNode list = JsonNodeFactory.instance.arrayNode();
        for (Entry entry : found) {
            ArrayNode item = list.addArray().add(SESSION).add(entry.line);
            if (output) {
                ArrayNode both = item.addArray().add(entry.input);
                if (entry.output.isEmpty()) {
                    both.addNull();
                } else {
                    both.add(entry.output);
                }
            } else {
                item.add(entry.input);
            }
        }
        return list;
    }

    private List<Entry> range(JsonNode request) {
        int session = request.path("session").asInt(0);
        if (session != 0 && session != SESSION) {
            return List.of();
        }
        int start = request.path("start").asInt(0);
        int stop = request.path("stop").asInt(Integer.MAX_VALUE);
        return entries.stream().filter(e -> e.line >= start && e.line < stop).toList();
    }

    private List<Entry> search(JsonNode request) {
        Predicate<String> wanted = glob(request.path("pattern").asText("*"));
        boolean unique = request.path("unique").asBoolean(false);
        List<Entry> found = new ArrayList<>();
        Set<String> seen = new HashSet<>();
        for (int i = entries.size() - 1; i >= 0; i--) {
            Entry entry = entries.get(i);
            if (wanted.test(entry.input) && (seen.add(entry.input) || !unique)) {
                found.add(entry);
            }
        }
        Collections.reverse(found);
        return last(found, request.path("n").asInt(found.size()));
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
