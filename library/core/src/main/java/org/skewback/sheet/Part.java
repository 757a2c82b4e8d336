package org.skewback.sheet;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.skewback.display.Displayable;

/**
 * Some of what a sheet says, to be shown under a cell.
 *
 * @param sheet the record of the whole sheet
 * @param entries those of its entries to show, in order
 * @param closes whether this closes the sheet, so that its record goes along
 */
public record Part(SheetRecord sheet, List<Entry> entries, boolean closes) implements Displayable {

    /** MIME type of the list of blocks that a cell showed. */
    public static final String PART_TYPE = "application/vnd.skewback.part+json";

    /** MIME type of a sheet's record. */
    public static final String RECORD_TYPE = "application/vnd.skewback.record+json";

    /**
     * Keeps a copy, so that nobody can change it from outside.
     *
     * @param sheet the record of the whole sheet
     * @param entries those of its entries to show, in order
     * @param closes whether this closes the sheet, so that its record goes along
     */
    public Part {
        entries = List.copyOf(entries);
    }

    /**
     * Gives the record that goes along.
     *
     * @return the record of the whole sheet where this closes it, else null
     */
    public @Nullable SheetRecord closing() {
        return closes ? sheet : null;
    }

    /**
     * Gives what has become stale in other cells.
     *
     * @return the entries of the sheet that are stale and not shown here, in order
     */
    public List<Entry> staleElsewhere() {
        Set<String> shown = entries.stream().map(Entry::id).collect(Collectors.toSet());
        return sheet.stale().stream().filter(entry -> !shown.contains(entry.id())).toList();
    }

    @Override
    public Map<String, String> display() {
        Map<String, String> bundle = new LinkedHashMap<>();
        bundle.put(PART_TYPE, RecordWriter.part(this));
        if (closes) {
            bundle.put(RECORD_TYPE, RecordWriter.write(sheet));
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
