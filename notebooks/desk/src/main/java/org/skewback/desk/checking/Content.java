package org.skewback.desk.checking;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.Map;
import java.util.TreeMap;
import org.skewback.desk.issue.Manifest;
import org.skewback.desk.issue.RunDocument;
import org.skewback.desk.issue.RunPackage;
import org.skewback.desk.notebook.NotebookWriter;

/** The files from which pages are made. */
public final class Content {

    private Content() {}

    /**
     * Gives the content of a package that has run.
     *
     * @param run the package
     * @return bytes by path in the issue
     */
    public static Map<String, byte[]> files(RunPackage run) {
        Map<String, byte[]> files = new TreeMap<>(run.checking().files());
        for (RunDocument document : run.documents()) {
            files.put(
                    "notebooks/" + document.slug() + ".ipynb",
                    NotebookWriter.text(document.notebook()).getBytes(StandardCharsets.UTF_8));
            String record = document.record();
            if (record != null) {
                files.put(
                        "records/" + document.slug() + ".json",
                        record.getBytes(StandardCharsets.UTF_8));
            }
        }
        return files;
    }

    /**
     * Gives the digests of the content of a package that has run.
     *
     * @param run the package
     * @return SHA-256 in hexadecimal, by path in the issue
     */
    public static Map<String, String> digests(RunPackage run) {
        Map<String, String> digests = new TreeMap<>();
        files(run)
                .forEach(
                        (path, bytes) -> {
                            try {
                                digests.put(path, Manifest.sha256(new ByteArrayInputStream(bytes)));
                            } catch (IOException e) {
                                throw new IllegalStateException("an array that cannot be read", e);
                            }
                        });
        return digests;
    }
}
