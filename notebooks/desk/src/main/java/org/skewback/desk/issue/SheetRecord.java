package org.skewback.desk.issue;

import com.fasterxml.jackson.databind.JsonNode;
import java.io.IOException;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.skewback.desk.Json;
import org.skewback.desk.Problem;
import org.skewback.desk.notebook.Cell;
import org.skewback.desk.notebook.Notebook;
import org.skewback.desk.notebook.Output;

/**
 * The record of one sheet, as far as issuing needs to understand it.
 *
 * @param number the sheet's number; empty where it has none
 * @param text the record's JSON, laid out for reading
 * @param checks count of its checks
 * @param unpassed one line for each check that failed or is stale, in the record's order
 */
public record SheetRecord(String number, String text, CheckCount checks, List<String> unpassed) {

    /** MIME type under which a sheet shows its record. */
    public static final String MIME = "application/vnd.skewback.record+json";

    /** MIME type of the list of blocks that a cell showed. */
    private static final String PART_MIME = "application/vnd.skewback.part+json";

    /** Name of a sheet whose parts do not say of which sheet they are. */
    private static final String UNNAMED = "";

    private static final String FORMAT = "skewback-record";
    private static final int OLDEST_EDITION = 2;
    private static final int EDITION = 3;

    /** Keeps a copy of the list. */
    public SheetRecord {
        unpassed = List.copyOf(unpassed);
    }

    /**
     * Finds the record with which a notebook closed its sheet.
     *
     * @param notebook a notebook as run
     * @param living what live values held at its end
     * @return the record, or null where the notebook keeps no sheet
     * @throws Problem when what it showed is not a record of an edition known here, is of two
     *     sheets, or leaves out what the notebook says, shown or not, so that a check could be missed
     */
    public static @Nullable SheetRecord of(Notebook notebook, List<Output> living) throws Problem {
        requireNoNamesakes(notebook, living);
        @Nullable JsonNode last = null;
        Map<String, Set<String>> said = new LinkedHashMap<>();
        for (Output.Display display : displays(notebook)) {
            @Nullable JsonNode closing = display.data().get(MIME);
            if (closing != null) {
                JsonNode record = object(closing, "record");
                requireSameSheet(last, record);
                last = record;
                said.remove(name(record));
                said.remove(UNNAMED);
                continue;
            }
            gather(display, said);
        }
        for (Output output : living) {
            if (output instanceof Output.Display display) {
                gather(display, said);
            }
        }
        if (last != null) {
            for (JsonNode entry : last.path("entries")) {
                String id = entry.path("id").asText("");
                said.getOrDefault(name(last), new LinkedHashSet<>()).remove(id);
                said.getOrDefault(UNNAMED, new LinkedHashSet<>()).remove(id);
            }
        }
        said.values().removeIf(Set::isEmpty);
        requireNothingLost(last, said);
        return last == null ? null : read(last);
    }

    /**
     * A sheet counts its blocks and shows each under one cell. Where another cell shows one of the
     * same count, or one of the same count says something else, a second sheet of the same number
     * and title has begun to count anew.
     */
    private static void requireNoNamesakes(Notebook notebook, List<Output> living) throws Problem {
        Map<String, Set<String>> before = new LinkedHashMap<>();
        Map<String, String> sums = new HashMap<>();
        for (Cell cell : notebook.cells()) {
            Map<String, Set<String>> here = new LinkedHashMap<>();
            for (Output output : cell.outputs()) {
                if (output instanceof Output.Display display) {
                    gather(display, here);
                    requireSameSums(display, sums);
                }
            }
            for (Map.Entry<String, Set<String>> shown : here.entrySet()) {
                Set<String> earlier =
                        before.computeIfAbsent(shown.getKey(), name -> new LinkedHashSet<>());
                for (String block : shown.getValue()) {
                    if (!earlier.add(block)) {
                        throw begunTwice(shown.getKey());
                    }
                }
            }
        }
        for (Output output : living) {
            if (output instanceof Output.Display display) {
                requireSameSums(display, sums);
            }
        }
    }

    /** Parts of older libraries have no sums. */
    private static void requireSameSums(Output.Display display, Map<String, String> sums)
            throws Problem {
        @Nullable JsonNode shown = display.data().get(PART_MIME);
        if (shown == null) {
            return;
        }
        JsonNode part = object(shown, "part");
        for (int i = 0; i < part.path("sums").size(); i++) {
            String block = name(part) + "\n" + part.path("blocks").path(i).asText("");
            String sum = part.path("sums").path(i).asText("");
            @Nullable String earlier = sums.putIfAbsent(block, sum);
            if (earlier != null && !earlier.equals(sum)) {
                throw begunTwice(name(part));
            }
        }
    }

    private static Problem begunTwice(String name) {
        return new Problem(
                "it begins the sheet"
                        + quoted(Set.of(name))
                        + " twice, so that blocks of the first would be taken for blocks of the"
                        + " second; keep one sheet in a notebook");
    }

    /** Takes note of the blocks that a part names, by the sheet that says them. */
    private static void gather(Output.Display display, Map<String, Set<String>> said)
            throws Problem {
        @Nullable JsonNode shown = display.data().get(PART_MIME);
        if (shown != null) {
            JsonNode part = object(shown, "part");
            Set<String> blocks = said.computeIfAbsent(name(part), name -> new LinkedHashSet<>());
            part.path("blocks").forEach(id -> blocks.add(id.asText("")));
        }
    }

    private static void requireNothingLost(
            @Nullable JsonNode record, Map<String, Set<String>> missing) throws Problem {
        if (missing.isEmpty()) {
            return;
        }
        if (record == null) {
            throw new Problem(
                    "it keeps a sheet"
                            + quoted(missing.keySet())
                            + " and never shows its conclusion, so its checks would be lost; let"
                            + " the last cell end with sheet.conclude(…)");
        }
        missing.keySet().remove(UNNAMED);
        if (missing.isEmpty() || missing.containsKey(name(record))) {
            throw new Problem(
                    "it says more after its conclusion, which its record would leave out; move"
                            + " sheet.conclude(…) to the end");
        }
        throw new Problem(
                "it concludes the sheet"
                        + quoted(Set.of(name(record)))
                        + " and never"
                        + quoted(missing.keySet())
                        + "; keep one sheet in a notebook");
    }

    private static String quoted(Set<String> names) {
        return names.stream()
                .filter(name -> !name.equals(UNNAMED))
                .map(name -> " \"" + name + "\"")
                .collect(Collectors.joining(" and"));
    }

    private static List<Output.Display> displays(Notebook notebook) {
        return notebook.cells().stream()
                .flatMap(cell -> cell.outputs().stream())
                .filter(Output.Display.class::isInstance)
                .map(Output.Display.class::cast)
                .toList();
    }

    private static void requireSameSheet(@Nullable JsonNode earlier, JsonNode later)
            throws Problem {
        if (earlier != null && !name(earlier).equals(name(later))) {
            throw new Problem(
                    "it concludes two sheets, \""
                            + name(earlier)
                            + "\" and \""
                            + name(later)
                            + "\"; keep one sheet in a notebook");
        }
    }

    private static String name(JsonNode record) {
        return (record.path("number").asText("") + " " + record.path("title").asText("")).strip();
    }

    private static JsonNode object(JsonNode shown, String what) throws Problem {
        if (!shown.isTextual()) {
            return shown;
        }
        try {
            return Json.read(shown.textValue());
        } catch (IOException e) {
            throw new Problem("its " + what + " is not JSON: " + Json.fault(e), e);
        }
    }

    /**
     * Reads a record.
     *
     * @param shown the record, as a JSON object or as its text
     * @return the record
     * @throws Problem when it is not a record of an edition known here
     */
    static SheetRecord read(JsonNode shown) throws Problem {
        JsonNode record = object(shown, "record");
        if (!record.path("format").asText("").equals(FORMAT)) {
            throw new Problem("its record does not state the format " + FORMAT);
        }
        int edition = record.path("edition").asInt(0);
        if (edition < OLDEST_EDITION || edition > EDITION) {
            throw new Problem(
                    "its record is of edition "
                            + record.path("edition")
                            + "; this program knows editions "
                            + OLDEST_EDITION
                            + " to "
                            + EDITION
                            + ". Use a library and a program of the same version");
        }
        CheckCount count = CheckCount.NONE;
        List<String> unpassed = new ArrayList<>();
        for (JsonNode check : record.path("checks")) {
            String title = check.path("title").asText("");
            String verdict = check.path("verdict").asText("");
            @Nullable CheckCount one = COUNTS.get(verdict);
            if (one == null) {
                throw new Problem(
                        "its record gives the check \""
                                + title
                                + "\" the verdict \""
                                + verdict
                                + "\"; known are passed, failed and stale");
            }
            count = count.plus(one);
            if (!one.allPassed()) {
                unpassed.add(verdict + ": " + title);
            }
        }
        int stale = 0;
        for (JsonNode entry : record.path("entries")) {
            boolean check = entry.path("kind").asText("").equals("check");
            stale += entry.path("stale").asBoolean(false) && !check ? 1 : 0;
        }
        if (stale > 0) {
            unpassed.add(
                    "stale: "
                            + stale
                            + (stale == 1
                                    ? " number, table or figure"
                                    : " numbers, tables or figures")
                            + " besides the checks");
        }
        return new SheetRecord(
                record.path("number").asText(""), Json.page(record), count, unpassed);
    }

    private static final Map<String, CheckCount> COUNTS =
            Map.of(
                    "passed", new CheckCount(1, 0, 0),
                    "failed", new CheckCount(0, 1, 0),
                    "stale", new CheckCount(0, 0, 1));
}
