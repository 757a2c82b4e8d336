package org.skewback.sheet;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.skewback.display.Displayable;

/**
 * Some of what a sheet says, to be shown under a cell.
 *
 * @param entries what to show, in order
 * @param numbering the numbers that the entries bear in their sheet
 * @param closing the record of the whole sheet where this closes it, else null
 */
public record Part(List<Entry> entries, Numbering numbering, @Nullable SheetRecord closing)
        implements Displayable {

    /** MIME type of the list of blocks that a cell showed. */
    public static final String PART_TYPE = "application/vnd.skewback.part+json";

    /** MIME type of a sheet's record. */
    public static final String RECORD_TYPE = "application/vnd.skewback.record+json";

    /**
     * Keeps copies, so that nobody can change it from outside.
     *
     * @param entries what to show, in order
     * @param numbering the numbers that the entries bear in their sheet
     * @param closing the record of the whole sheet where this closes it, else null
     */
    public Part {
        entries = List.copyOf(entries);
    }

    /**
     * Closes a sheet.
     *
     * @param entries what to show, in order
     * @param closing the record of the whole sheet
     */
    public Part(List<Entry> entries, SheetRecord closing) {
        this(entries, closing.numbering(), closing);
    }

    @Override
    public Map<String, String> display() {
        Map<String, String> bundle = new LinkedHashMap<>();
        bundle.put(PART_TYPE, RecordWriter.part(entries));
        if (closing != null) {
            bundle.put(RECORD_TYPE, RecordWriter.write(closing));
        }
        bundle.put("text/markdown", MarkdownSheet.write(this));
        bundle.put("text/plain", PlainSheet.write(this));
        return bundle;
    }

    @Override
    public String toString() {
        return PlainSheet.write(this);
    }
}
