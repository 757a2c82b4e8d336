package org.skewback.desk.audit;

import com.fasterxml.jackson.databind.JsonNode;
import java.io.IOException;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.BitSet;
import java.util.Deque;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.skewback.desk.Json;
import org.skewback.quantity.Dimension;
import org.skewback.quantity.Numerals;
import org.skewback.quantity.Unit;
import org.skewback.sheet.Entry;
import org.skewback.sheet.Numbering;
import org.skewback.sheet.SheetRecord;

/** Says of each number of a record what it is on its sheet and which givens feed it. */
final class RecordIndex {

    private static final int MOST_GIVENS = 40;
    private static final int DIGITS = 5;
    private static final int ALL_DIGITS = 17;

    private final SheetRecord record;
    private final JsonNode nodes;
    private final JsonNode calls;
    private final Map<Integer, String> names = new LinkedHashMap<>();
    private final Map<Integer, Integer> named = new HashMap<>();
    private final Map<String, String> entries = new HashMap<>();
    private final List<String> order = new ArrayList<>();
    private final List<String> checks = new ArrayList<>();

    private RecordIndex(SheetRecord record, JsonNode root) {
        this.record = record;
        this.nodes = root.path("nodes");
        this.calls = root.path("calls");
        Numbering numbering = record.numbering();
        for (Entry entry : record.entries()) {
            entries.put(entry.id(), numbering.name(entry));
        }
        for (JsonNode entry : root.path("entries")) {
            name(entry);
        }
        for (int i = 0; i < nodes.size(); i++) {
            if (nodes.path(i).path("operation").asText("").equals("named")) {
                named.put(nodes.path(i).path("arguments").path(0).asInt(-1), i);
            }
        }
        for (JsonNode check : root.path("checks")) {
            String id = check.path("id").asText("");
            checks.add(entries.getOrDefault(id, "check") + ", " + check.path("title").asText(""));
        }
        // A number shown only as the demand or the limit of a check is called by that check.
        for (JsonNode entry : root.path("entries")) {
            if (entry.path("kind").asText("").equals("check")) {
                String of = " of " + spoken(entry);
                put(entry.path("demand"), "demand" + of);
                put(entry.path("least"), "lower limit" + of);
                put(entry.path("most"), (entry.has("least") ? "upper limit" : "limit") + of);
            }
        }
    }

    /**
     * Indexes a record.
     *
     * @param record the record as read
     * @param json its text
     * @throws IllegalArgumentException when the text is no JSON
     */
    static RecordIndex of(SheetRecord record, String json) {
        try {
            return new RecordIndex(record, Json.read(json));
        } catch (IOException e) {
            throw new IllegalArgumentException("the record is no JSON: " + Json.fault(e), e);
        }
    }

    SheetRecord record() {
        return record;
    }

    /** Number and title of the sheet. */
    String sheet() {
        return (record.number() + " " + record.title()).strip();
    }

    private void name(JsonNode entry) {
        String kind = entry.path("kind").asText("");
        String spoken = spoken(entry);
        order.add(spoken);
        switch (kind) {
            case "given", "step" -> {
                int node = entry.path("node").asInt(-1);
                put(entry.path("node"), spoken + symbol(node));
            }
            case "series" -> {
                int index = 0;
                for (JsonNode node : entry.path("nodes")) {
                    put(node, "given " + entry.path("symbol").asText("") + ", value " + ++index);
                }
            }
            case "table" -> {
                for (JsonNode column : entry.path("columns")) {
                    int row = 0;
                    for (JsonNode node : column.path("nodes")) {
                        put(
                                node,
                                spoken
                                        + ", "
                                        + column.path("heading").asText("")
                                        + ", row "
                                        + ++row);
                    }
                }
            }
            default -> {
                // Other blocks hold no number of their own.
            }
        }
    }

    private String spoken(JsonNode entry) {
        String name = entries.getOrDefault(entry.path("id").asText(""), "");
        return name.isEmpty() ? entry.path("kind").asText("block") : name;
    }

    private String symbol(int node) {
        String symbol = nodes.path(node).path("symbol").asText("");
        return symbol.isEmpty() ? "" : ", " + symbol;
    }

    private void put(JsonNode node, String name) {
        if (node.isInt()) {
            names.putIfAbsent(node.intValue(), name);
        }
    }

    /** Tells whether a number stands on the sheet under a name. */
    boolean isNamed(int node) {
        return names.containsKey(node);
    }

    /** The number on the sheet that gives this one a name, or −1 where none does. */
    int namedBy(int node) {
        Integer by = named.get(node);
        return by != null && isNamed(by) && !isNamed(node) ? by : -1;
    }

    /** Names a number; one that is not shown is named by what it leads to. */
    String name(int node) {
        String own = names.get(node);
        if (own != null) {
            return own;
        }
        BitSet rests = new BitSet();
        rests.set(node);
        for (int i = node + 1; i < nodes.size(); i++) {
            for (int operand : operands(i)) {
                if (rests.get(operand)) {
                    rests.set(i);
                    String name = names.get(i);
                    if (name != null) {
                        return "a number on the way to " + name;
                    }
                }
            }
        }
        return "a number that nothing shows";
    }

    /** Positions of the numbers from which a number was worked out. */
    List<Integer> operands(int node) {
        List<Integer> found = new ArrayList<>();
        JsonNode at = nodes.path(node);
        at.path("arguments").forEach(position -> found.add(position.asInt(-1)));
        if (at.has("call")) {
            calls.path(at.path("call").asInt(-1))
                    .path("inputs")
                    .forEach(position -> found.add(position.asInt(-1)));
        }
        return found;
    }

    /** The givens that feed a number, each with value and source. */
    List<String> givens(int node) {
        List<String> found = new ArrayList<>();
        BitSet seen = new BitSet();
        Deque<Integer> waiting = new ArrayDeque<>(List.of(node));
        List<Integer> givens = new ArrayList<>();
        while (!waiting.isEmpty()) {
            int next = waiting.pop();
            if (next < 0 || seen.get(next)) {
                continue;
            }
            seen.set(next);
            if (nodes.path(next).path("operation").asText("").equals("given")) {
                givens.add(next);
            }
            operands(next).forEach(waiting::push);
        }
        givens.sort(null);
        for (int given : givens) {
            if (found.size() == MOST_GIVENS) {
                found.add("… and " + (givens.size() - MOST_GIVENS) + " more");
                break;
            }
            found.add(given(given));
        }
        return found;
    }

    private String given(int node) {
        JsonNode at = nodes.path(node);
        JsonNode source = at.path("source");
        String place = source.path("place").asText("");
        String cited =
                source.isMissingNode()
                        ? "no source"
                        : source.path("kind").asText("")
                                + " "
                                + source.path("reference").asText("")
                                + (place.isEmpty() ? "" : ", " + place);
        return at.path("symbol").asText("")
                + " = "
                + shown(node, at.path("value").asDouble(), DIGITS)
                + " ("
                + cited
                + ")";
    }

    /** Writes two values of a number so that they look different where they are. */
    List<String> shown(int node, double before, double now) {
        String first = shown(node, before, DIGITS);
        String second = shown(node, now, DIGITS);
        return first.equals(second)
                ? List.of(shown(node, before, ALL_DIGITS), shown(node, now, ALL_DIGITS))
                : List.of(first, second);
    }

    private String shown(int node, double si, int digits) {
        if (!Double.isFinite(si)) {
            return "";
        }
        JsonNode at = nodes.path(node);
        Unit unit = at.has("unit") ? Unit.of(at.path("unit").asText("")) : usual(at);
        String number = Numerals.significant(unit.fromSi(si), digits);
        return unit.symbol().isEmpty() ? number : number + "\u00A0" + unit.symbol();
    }

    private static Unit usual(JsonNode node) {
        List<String> powers = new ArrayList<>();
        node.path("dimension").forEach(power -> powers.add(power.asText("")));
        return Unit.usual(Dimension.ofPowers(powers));
    }

    /** Says in words where a place such as {@code checks 2, verdict} is. */
    String place(String place) {
        String[] parts = place.split("[ ,]+", 3);
        if (parts.length > 1 && parts[1].matches("[0-9]{1,8}")) {
            int position = Integer.parseInt(parts[1]);
            String rest = parts.length > 2 ? ": " + parts[2] : "";
            if (parts[0].equals("checks") && position < checks.size()) {
                return checks.get(position) + rest;
            } else if (parts[0].equals("entries") && position < order.size()) {
                return order.get(position) + rest;
            } else if (parts[0].equals("nodes")) {
                return name(position) + rest;
            }
        }
        return place;
    }
}
