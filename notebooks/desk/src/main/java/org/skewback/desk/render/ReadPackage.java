package org.skewback.desk.render;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import org.jspecify.annotations.Nullable;
import org.skewback.desk.issue.PackageInfo;
import org.skewback.desk.issue.RunPackage;
import org.skewback.quantity.Source;
import org.skewback.sheet.SheetRecord;

/**
 * A package with its records read.
 *
 * @param info what the package says of itself
 * @param documents the documents in reading order
 * @param environment versions of what they ran on, by name
 * @param checking sets what stands on the checker's side
 */
public record ReadPackage(
        PackageInfo info,
        List<ReadDocument> documents,
        Map<String, String> environment,
        CheckingWriter checking) {

    /**
     * Reads the records of a package.
     *
     * @param run the package as run
     * @return the package with its records
     * @throws IllegalArgumentException when one of its records is none
     */
    public static ReadPackage of(RunPackage run) {
        List<ReadDocument> documents = run.documents().stream().map(ReadDocument::of).toList();
        return new ReadPackage(
                run.info(),
                documents,
                new LinkedHashMap<>(run.environment()),
                new CheckingWriter(run, documents));
    }

    /**
     * Gives the records.
     *
     * @return the record of each document that kept a sheet, by the name of its files
     */
    public Map<String, SheetRecord> records() {
        Map<String, SheetRecord> records = new LinkedHashMap<>();
        for (ReadDocument document : documents) {
            if (document.record() != null) {
                records.put(document.slug(), document.record());
            }
        }
        return records;
    }

    /** Finds the document whose sheet bears a number. */
    @Nullable ReadDocument sheet(String number) {
        for (ReadDocument document : documents) {
            SheetRecord record = document.record();
            if (record != null && record.number().equals(number)) {
                return document;
            }
        }
        return null;
    }

    /** Finds a document by the name of its files. */
    boolean has(String slug) {
        return documents.stream().anyMatch(document -> document.slug().equals(slug));
    }

    /** What is cited, by kind and reference in alphabetical order, with the documents that do so. */
    Map<Source.Kind, Map<String, Cited>> cited() {
        Map<Source.Kind, Map<String, Cited>> all = new TreeMap<>();
        for (ReadDocument document : documents) {
            for (Source source : document.sources()) {
                if (source.kind() == Source.Kind.SHEET) {
                    continue;
                }
                Cited cited =
                        all.computeIfAbsent(source.kind(), kind -> new TreeMap<>())
                                .computeIfAbsent(source.reference(), reference -> Cited.none());
                if (!source.place().isEmpty()) {
                    cited.places.add(source.place());
                }
                cited.slugs.add(document.slug());
            }
        }
        return all;
    }

    /**
     * Where something is cited.
     *
     * @param places the places in it
     * @param slugs the documents that cite it
     */
    record Cited(Set<String> places, Set<String> slugs) {
        static Cited none() {
            return new Cited(new TreeSet<>(), new TreeSet<>());
        }
    }
}
