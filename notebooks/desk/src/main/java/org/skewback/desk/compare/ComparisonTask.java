package org.skewback.desk.compare;

import java.io.FileDescriptor;
import java.io.FileOutputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import org.skewback.desk.Problem;

/** Compares two issues in a Java of its own with little memory, and tells it in one line of JSON. */
final class ComparisonTask {

    private ComparisonTask() {}

    /**
     * Compares.
     *
     * @param words the earlier issue, the later one, and the utilisation worth a word
     */
    public static void main(String[] words) {
        String line;
        try {
            line =
                    ComparisonReports.line(
                            IssueComparison.of(
                                    Path.of(words[0]),
                                    Path.of(words[1]),
                                    Double.parseDouble(words[2])));
        } catch (Problem e) {
            line = ComparisonReports.line(e);
        }
        PrintStream out =
                new PrintStream(
                        new FileOutputStream(FileDescriptor.out), false, StandardCharsets.UTF_8);
        out.println(line);
        out.flush();
        System.exit(0);
    }
}
