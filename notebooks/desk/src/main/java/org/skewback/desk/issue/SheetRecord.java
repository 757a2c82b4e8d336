package org.skewback.desk.issue;

import com.fasterxml.jackson.databind.JsonNode;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.skewback.desk.Json;
import org.skewback.desk.Problem;
import org.skewback.desk.notebook.Cell;
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

    private static final String FORMAT = "skewback-record";
    private static final int EDITION = 2;

    /** Keeps a copy of the list. */
    public SheetRecord {
        unpassed = List.copyOf(unpassed);
    }

    /**
     * Finds the record that a notebook showed last.
     *
     * @param notebook a notebook as run
     * @return the record, or null where the notebook keeps no sheet
     * @throws Problem when what it showed is not a record of an edition known here
     */
    public static @Nullable SheetRecord of(Notebook notebook) throws Problem {
        @Nullable JsonNode last = null;
        for (Cell cell : notebook.cells()) {
            for (Output output : cell.outputs()) {
                if (output instanceof Output.Display display && display.data().containsKey(MIME)) {
                    last = display.data().get(MIME);
                }
            }
        }
        return last == null ? null : read(last);
    }

    /**
     * Reads a record.
     *
     * @param shown the record, as a JSON object or as its text
     * @return the record
     * @throws Problem when it is not a record of an edition known here
     */
    static SheetRecord read(JsonNode shown) throws Problem {
        JsonNode record = shown;
        if (shown.isTextual()) {
            try {
                record = Json.read(shown.textValue());
            } catch (IOException e) {
                throw new Problem("its record is not JSON: " + Json.fault(e), e);
            }
        }
        if (!record.path("format").asText("").equals(FORMAT)) {
            throw new Problem("its record does not state the format " + FORMAT);
        }
        if (record.path("edition").asInt(0) != EDITION) {
            throw new Problem(
                    "its record is of edition "
                            + record.path("edition")
                            + "; this program knows edition "
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
