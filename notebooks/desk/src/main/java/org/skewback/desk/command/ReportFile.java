package org.skewback.desk.command;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import org.jspecify.annotations.Nullable;
import org.skewback.desk.Problem;

/** Writes a report beside its place and moves it in when it is whole. */
final class ReportFile {

    private ReportFile() {}

    /**
     * Writes a report.
     *
     * @param file where to, or null for nowhere
     * @param text its text
     * @throws Problem when the system refuses
     */
    static void write(@Nullable Path file, String text) throws Problem {
        if (file == null) {
            return;
        }
        Path place = file.toAbsolutePath();
        Path beside = place.resolveSibling("." + place.getFileName() + ".new");
        try {
            Files.write(beside, text.getBytes(StandardCharsets.UTF_8));
            Files.move(beside, place, StandardCopyOption.REPLACE_EXISTING);
        } catch (IOException e) {
            throw Problem.of("cannot write the report " + file, e);
        }
    }
}
