package org.skewback.desk.render;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.skewback.desk.issue.RunDocument;
import org.skewback.desk.issue.RunPackage;

/**
 * Makes large packages for measurements by hand: a package folder of ten sheets, to be issued by the
 * program, or a PDF of many pages.
 */
final class LargePackages {

    private static final int SHEETS = 10;

    private LargePackages() {}

    /**
     * Makes one.
     *
     * @param words {@code sheets}, the folder of the demo package and the folder to write; or {@code
     *     pages} and how many copies of a sheet of about four pages to print
     */
    public static void main(String[] words) throws IOException {
        if (words[0].equals("sheets")) {
            sheets(Path.of(words[1]).toAbsolutePath(), Path.of(words[2]));
        } else {
            pages(Integer.parseInt(words[1]));
        }
    }

    /** Writes the demo's sheet ten times, each with a rise and a number of its own. */
    private static void sheets(Path demo, Path folder) throws IOException {
        String notebook = Files.readString(demo.resolve("06-form-of-the-rib.ipynb"));
        String shared = demo.resolve("../../shared").normalize().toString();
        Files.createDirectories(folder);
        List<String> order = new ArrayList<>();
        for (int i = 1; i <= SHEETS; i++) {
            String number = String.format(Locale.ROOT, "%02d", i);
            String name = number + "-form-of-the-rib.ipynb";
            order.add('"' + name + '"');
            Files.writeString(
                    folder.resolve(name),
                    notebook.replace("../../shared", shared)
                            .replace("# 06 Form", "# " + number + " Form")
                            .replace("numbered(\\\"06\\\"", "numbered(\\\"" + number + "\\\"")
                            .replace("(\\\"f\\\", 72,", "(\\\"f\\\", " + (72 + i / 10.0) + ","));
        }
        String about = Files.readString(demo.resolve("package.toml"));
        Files.writeString(
                folder.resolve("package.toml"),
                about.replaceFirst("(?m)^name = .*", "name = \"ten-sheets\"")
                        .replaceFirst(
                                "(?m)^order = .*", "order = [" + String.join(", ", order) + "]"));
    }

    private static void pages(int copies) throws IOException {
        RunDocument form = SamplePackage.form();
        List<RunDocument> documents = new ArrayList<>();
        for (int i = 1; i <= copies; i++) {
            documents.add(
                    new RunDocument("form-" + i, form.title(), form.notebook(), form.record()));
        }
        RunPackage run =
                new RunPackage(
                        SamplePackage.info("Many pages", "One sheet again and again."),
                        documents,
                        Map.of());
        long start = System.nanoTime();
        byte[] pdf = new PdfPackage().bytes(run, Map.of());
        Duration time = Duration.ofNanos(System.nanoTime() - start);
        try (PDDocument read = Loader.loadPDF(pdf)) {
            System.out.printf(
                    Locale.ROOT,
                    "%d pages, %d bytes, %.1f s%n",
                    read.getNumberOfPages(),
                    pdf.length,
                    time.toMillis() / 1000.0);
        }
    }
}
