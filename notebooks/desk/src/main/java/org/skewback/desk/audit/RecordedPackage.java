package org.skewback.desk.audit;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;
import org.skewback.desk.Problem;
import org.skewback.desk.checking.Checking;
import org.skewback.desk.checking.CheckingReader;
import org.skewback.desk.holding.Holding;
import org.skewback.desk.issue.IssuedManifest;
import org.skewback.desk.issue.RunDocument;
import org.skewback.desk.issue.RunPackage;
import org.skewback.desk.issue.Titles;
import org.skewback.desk.notebook.Notebook;
import org.skewback.desk.notebook.NotebookReader;

/** Brings back from an issue what its pages were made from. */
final class RecordedPackage {

    private RecordedPackage() {}

    /**
     * Reads notebooks and records of an issue.
     *
     * @throws Problem when one is missing or is none
     * @throws IOException when one cannot be read
     */
    static RunPackage of(IssuedManifest manifest, Holding holding) throws IOException, Problem {
        List<RunDocument> documents = new ArrayList<>();
        for (String slug : manifest.slugs()) {
            String path = "notebooks/" + slug + ".ipynb";
            Notebook notebook = NotebookReader.parse(path, holding.read(path, Holding.LONGEST));
            String kept = "records/" + slug + ".json";
            @Nullable String record =
                    holding.paths().contains(kept)
                            ? new String(
                                    holding.read(kept, Holding.LONGEST), StandardCharsets.UTF_8)
                            : null;
            documents.add(new RunDocument(slug, Titles.of(notebook, slug), notebook, record));
        }
        Map<String, byte[]> files = new TreeMap<>();
        for (String path : holding.paths()) {
            if (Checking.isKnown(path)) {
                files.put(path, holding.read(path, Holding.LONGEST));
            }
        }
        return new RunPackage(
                manifest.info(), documents, manifest.software(), CheckingReader.of(files));
    }
}
