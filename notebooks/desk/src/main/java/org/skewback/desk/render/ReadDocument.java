package org.skewback.desk.render;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.skewback.desk.issue.RunDocument;
import org.skewback.desk.notebook.Notebook;
import org.skewback.quantity.Quantity;
import org.skewback.quantity.Source;
import org.skewback.sheet.Entry;
import org.skewback.sheet.Numbering;
import org.skewback.sheet.RecordReader;
import org.skewback.sheet.SheetRecord;

/**
 * A document with its record read.
 *
 * @param slug name of its files
 * @param title its title
 * @param notebook cells with their outputs
 * @param record the sheet's record, or null where the notebook kept no sheet
 * @param entries the record's entries by identifier, in order
 */
record ReadDocument(
        String slug,
        String title,
        Notebook notebook,
        @Nullable SheetRecord record,
        Map<String, Entry> entries) {

    static ReadDocument of(RunDocument document) {
        SheetRecord record = null;
        Map<String, Entry> entries = new LinkedHashMap<>();
        if (document.record() != null) {
            record = read(document.slug(), document.record());
            record.entries().forEach(entry -> entries.put(entry.id(), entry));
        }
        return new ReadDocument(
                document.slug(), document.title(), document.notebook(), record, entries);
    }

    private static SheetRecord read(String slug, String json) {
        try {
            return RecordReader.read(json);
        } catch (IllegalArgumentException e) {
            throw new IllegalArgumentException(
                    "the record of " + slug + " cannot be read: " + e.getMessage(), e);
        }
    }

    /** The sheet's number; empty where it has none. */
    String number() {
        return record == null ? "" : record.number();
    }

    /** Number and title, as contents and headings show them. */
    String heading() {
        return title.startsWith(number()) ? title : number() + " " + title;
    }

    /** Every check with its verdict, in order; empty where there is no record. */
    List<Entry> checks() {
        return record == null ? List.of() : record.checks();
    }

    /** What must be worked out again, in order; empty where there is no record. */
    List<Entry> stale() {
        return record == null ? List.of() : record.stale();
    }

    /** The numbers that the sheet's parts bear. */
    Numbering numbering() {
        return record == null ? Numbering.of("", List.of()) : record.numbering();
    }

    /** Numbers that an author wrote into a formula without naming a source. */
    List<Quantity> withoutSource() {
        return record == null ? List.of() : record.withoutSource();
    }

    /** The sources that numbers and tables behind all that the sheet shows name, each once. */
    Set<Source> sources() {
        return record == null ? Set.of() : record.sources().keySet();
    }
}
