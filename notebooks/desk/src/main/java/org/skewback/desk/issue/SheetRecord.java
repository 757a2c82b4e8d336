package org.skewback.desk.issue;

import com.fasterxml.jackson.databind.JsonNode;
import java.io.IOException;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.skewback.desk.Json;
import org.skewback.desk.Problem;
import org.skewback.desk.notebook.Notebook;
import org.skewback.desk.notebook.Output;

/**
 * The record of one sheet, as far as issuing needs to understand it.
 *
 * @param text the record's JSON, laid out for reading
 * @param checks count of its checks
 * @param unpassed one line for each check that failed or is stale, in the record's order
 */
public record SheetRecord(String text, CheckCount checks, List<String> unpassed) {

    /** MIME type under which a sheet shows its record. */
    public static final String MIME = "application/vnd.skewback.record+json";

    /** MIME type of the list of blocks that a cell showed. */
    private static final String PART_MIME = "application/vnd.skewback.part+json";

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
     * @return the record, or null where the notebook keeps no sheet
     * @throws Problem when what it showed is not a record of an edition known here, is of two
     *     sheets, or leaves out what the notebook showed, so that a check could be missed
     */
    public static @Nullable SheetRecord of(Notebook notebook) throws Problem {
        @Nullable JsonNode last = null;
        Set<String> shownSince = new LinkedHashSet<>();
        for (Output.Display display : displays(notebook)) {
            @Nullable JsonNode closing = display.data().get(MIME);
            if (closing != null) {
                JsonNode record = object(closing, "record");
                requireSameSheet(last, record);
                last = record;
                shownSince.clear();
                continue;
            }
            @Nullable JsonNode part = display.data().get(PART_MIME);
            if (part != null) {
                object(part, "part").path("blocks").forEach(id -> shownSince.add(id.asText("")));
            }
        }
        if (last != null) {
            last.path("entries").forEach(entry -> shownSince.remove(entry.path("id").asText("")));
        }
        if (!shownSince.isEmpty()) {
            throw new Problem(
                    last == null
                            ? "it shows a sheet that it never concludes, so its checks would be"
                                    + " lost; end the notebook with sheet.conclude(…)"
                            : "it says more after its conclusion, which its record would leave"
                                    + " out; move sheet.conclude(…) to the end");
        }
        return last == null ? null : read(last);
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
        return new SheetRecord(Json.page(record), count, unpassed);
    }

    private static final Map<String, CheckCount> COUNTS =
            Map.of(
                    "passed", new CheckCount(1, 0, 0),
                    "failed", new CheckCount(0, 1, 0),
                    "stale", new CheckCount(0, 0, 1));
}
