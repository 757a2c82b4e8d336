package org.skewback.desk.compare;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.Map;
import org.skewback.desk.Problem;
import org.skewback.desk.holding.Holding;
import org.skewback.desk.issue.IssuedManifest;
import org.skewback.desk.issue.Manifest;
import org.skewback.desk.issue.PackageInfo;
import org.skewback.sheet.RecordReader;
import org.skewback.sheet.SheetRecord;

/**
 * An issue as far as a comparison reads it.
 *
 * @param info what the package says of itself
 * @param software versions of what it ran on
 * @param sheets records by the sheet's number, or by the name of its files where it has none
 */
record ReadIssue(PackageInfo info, Map<String, String> software, Map<String, SheetRecord> sheets) {

    /**
     * Reads an issue.
     *
     * @param issue an issued folder, or the PDF of one
     * @throws Problem when it is none, or a record in it is none
     */
    static ReadIssue of(Path issue) throws Problem {
        try (Holding holding = Holding.of(issue)) {
            if (!holding.paths().contains(Manifest.FILE)) {
                throw new Problem(issue + " is no issue: it has no " + Manifest.FILE);
            }
            IssuedManifest manifest =
                    IssuedManifest.read(holding.read(Manifest.FILE, IssuedManifest.LONGEST));
            Map<String, SheetRecord> sheets = new LinkedHashMap<>();
            for (String slug : manifest.slugs()) {
                String path = "records/" + slug + ".json";
                if (holding.paths().contains(path)) {
                    SheetRecord record = read(issue, path, holding);
                    sheets.put(record.number().isEmpty() ? slug : record.number(), record);
                }
            }
            return new ReadIssue(manifest.info(), manifest.software(), sheets);
        } catch (IOException e) {
            throw Problem.of("cannot read the issue " + issue, e);
        }
    }

    private static SheetRecord read(Path issue, String path, Holding holding)
            throws IOException, Problem {
        try {
            return RecordReader.read(
                    new String(holding.read(path, Holding.LONGEST), StandardCharsets.UTF_8));
        } catch (IllegalArgumentException e) {
            throw new Problem(issue + ", " + path + ": " + e.getMessage(), e);
        }
    }

    /** Number and title of a sheet. */
    static String name(SheetRecord sheet) {
        return (sheet.number() + " " + sheet.title()).strip();
    }
}
