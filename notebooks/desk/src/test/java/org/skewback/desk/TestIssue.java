package org.skewback.desk;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.skewback.desk.issue.Issued;
import org.skewback.desk.issue.Manifest;
import org.skewback.desk.issue.PackageIssue;
import org.skewback.desk.issue.Progress;
import org.skewback.desk.jupyter.CellRun;
import org.skewback.desk.jupyter.KernelLauncher;
import org.skewback.desk.jupyter.KernelSession;
import org.skewback.desk.notebook.Cell;
import org.skewback.desk.notebook.Notebook;
import org.skewback.desk.notebook.NotebookWriter;
import org.skewback.desk.notebook.Output;
import org.skewback.desk.render.HtmlPackage;
import org.skewback.desk.render.PackageRenderer;
import org.skewback.desk.render.PdfPackage;
import org.skewback.form.CatenaryRoutine;
import org.skewback.quantity.Quantity;
import org.skewback.quantity.Routine;
import org.skewback.quantity.Routines;
import org.skewback.quantity.Source;
import org.skewback.quantity.Stop;
import org.skewback.sheet.Column;
import org.skewback.sheet.Part;
import org.skewback.sheet.Sheet;
import org.skewback.sheet.Table;

/**
 * A package of two real sheets, the second of which takes from the first, issued by the program with
 * kernels inside the test.
 *
 * @param span span of the arch, in m
 * @param load load, in kN/m
 * @param revision revision of the drawing that gives span and rise
 * @param eccentricity eccentricity on the second sheet, in m
 * @param twist what is odd about it
 */
public record TestIssue(
        double span, double load, String revision, double eccentricity, Twist twist) {

    /** What may be odd about the package. */
    public enum Twist {
        /** Nothing. */
        NONE,
        /** The eccentricity was changed after all else of its sheet had run. */
        STALE,
        /** The routine of the catenary gave 1 % more than the installed one of its edition. */
        OTHER_ROUTINE
    }

    /** Makes a package with nothing odd about it. */
    public TestIssue(double span, double load, String revision, double eccentricity) {
        this(span, load, revision, eccentricity, Twist.NONE);
    }

    /** The same with something odd about it. */
    public TestIssue with(Twist odd) {
        return new TestIssue(span, load, revision, eccentricity, odd);
    }

    /** Version that the issue states. */
    public static final String PROGRAM = "0.1.0";

    /** The package that most tests start from. */
    public static final TestIssue FIRST = new TestIssue(336, 148, "B", 0.2);

    private static final String FORM = "form";
    private static final String FORCES = "forces";

    /** Writes the package folder, its notebooks not run. */
    public Path source(Path folder, String more) throws Exception {
        Files.createDirectories(folder);
        Files.writeString(
                folder.resolve("package.toml"),
                """
                name = "two-sheets"
                title = "Two sheets"
                number = "T-1"
                revision = "A"
                status = "for checking"
                date = 2026-11-25
                prepared-by = "A. Designer"
                checked-by = ""
                summary = "A thrust and what it does."
                cautions = ["Invented throughout."]
                order = ["06-form.ipynb", "08-forces.ipynb"]
                """
                        + more);
        Files.writeString(folder.resolve("06-form.ipynb"), notebook("06 Form", FORM));
        Files.writeString(folder.resolve("08-forces.ipynb"), notebook("08 Forces", FORCES));
        return folder;
    }

    private static String notebook(String title, String code) {
        JsonNode none = JsonNodeFactory.instance.objectNode();
        return NotebookWriter.text(
                new Notebook(
                        List.of(
                                new Cell(
                                        "m",
                                        Cell.Kind.MARKDOWN,
                                        "# "
                                                + title
                                                + "\n\n"
                                                + "3. A list, and $a^2$.\n"
                                                + "4. Its end.\n\n"
                                                + "- No number\n"
                                                + "- here",
                                        none,
                                        null,
                                        List.of()),
                                new Cell("c", Cell.Kind.CODE, code, none, null, List.of())),
                        none));
    }

    /** Issues the package with all its forms. */
    public Path issue(Path home) throws Exception {
        return issue(home, List.of(new HtmlPackage(), new PdfPackage())).folder();
    }

    /** Issues the package. */
    public Issued issue(Path home, List<PackageRenderer> renderers) throws Exception {
        Path source = source(home.resolve("source"), "");
        return issuer(renderers).issue(source, home.resolve("issued"));
    }

    /** Gives what issues a package folder with the sheets of these values. */
    public PackageIssue issuer(List<PackageRenderer> renderers) {
        return new PackageIssue(
                kernels(),
                renderers,
                Map.of("Skewback", PROGRAM, "Java", Runtime.version() + " (test)"),
                null,
                Progress.SILENT);
    }

    /** Gives kernels that run the sheets of these values. */
    public KernelLauncher kernels() {
        return (folder, environment) ->
                new KernelSession() {
                    private Output shown = new Output.Stream("stdout", "");

                    @Override
                    public CellRun run(Cell cell) {
                        String kind = cell.source();
                        Part part = kind.equals(FORM) ? form() : forces();
                        Map<String, JsonNode> data = new LinkedHashMap<>();
                        part.display().forEach((type, text) -> data.put(type, node(type, text)));
                        shown =
                                new Output.Display(
                                        data, JsonNodeFactory.instance.objectNode(), false);
                        return new CellRun(1, null);
                    }

                    @Override
                    public List<Output> outputs(String cellId) {
                        return List.of(shown);
                    }

                    @Override
                    public List<Output> living() {
                        return List.of();
                    }

                    @Override
                    public void close() {
                        // Nothing runs.
                    }
                };
    }

    private static JsonNode node(String type, String text) {
        try {
            return type.endsWith("+json")
                    ? Json.read(text)
                    : JsonNodeFactory.instance.textNode(text);
        } catch (IOException e) {
            throw new IllegalStateException(e);
        }
    }

    private Part form() {
        Sheet sheet = Sheet.numbered("06", "Form");
        Source drawing = Source.drawing("OG-201", revision);
        Quantity length = sheet.given("L", span, "m", "span between springings", drawing);
        Quantity rise = sheet.given("f", 72, "m", "rise of the axis", drawing);
        Quantity weight =
                sheet.given("g", load, "kN/m", "permanent load", Source.assumption("estimate"));
        Quantity thrust =
                sheet.step(
                        "H",
                        weight.times(length.squared()).over(rise.times(8)),
                        "kN",
                        "horizontal thrust");
        CatenaryRoutine.Output chain =
                Routines.call(
                        twist == Twist.OTHER_ROUTINE ? new OtherCatenary() : new CatenaryRoutine(),
                        new CatenaryRoutine.Input(length, rise));
        sheet.step("a", chain.parameter(), "m", "parameter of the catenary");
        sheet.table(
                Table.of(
                        "Thrust at half and full load",
                        Column.texts("load", List.of("half", "full")),
                        Column.of("thrust", "MN", List.of(thrust.over(2), thrust))));
        Quantity limit = Quantity.of(35, "MN");
        sheet.check("thrust the rock can take", thrust).atMost(limit);
        return sheet.conclude("The rock takes it.");
    }

    private Part forces() {
        Sheet sheet = Sheet.numbered("08", "Forces");
        Quantity original = thrust();
        Quantity thrust =
                sheet.given(
                        "H",
                        original.in("kN"),
                        "kN",
                        "horizontal thrust",
                        Source.sheet("06", "H, record " + digest()));
        sheet.cellStarts("given");
        Quantity arm =
                sheet.given("e", eccentricity, "m", "eccentricity", Source.assumption("as cast"));
        sheet.cellStarts("moment");
        Quantity moment = sheet.step("M", thrust.times(arm), "MN·m", "moment");
        Quantity capacity =
                sheet.given("M_Rd", 6, "MN·m", "resistance", Source.standard("EN 1993-1-1", "6.2"));
        sheet.check("moment in the rib", moment).atMost(capacity);
        if (twist == Twist.STALE) {
            sheet.cellStarts("given");
            sheet.given("e", eccentricity / 2, "m", "eccentricity", Source.assumption("as cast"));
        }
        return sheet.conclude("The rib takes it.");
    }

    /** The same name and edition, and another result. */
    private static final class OtherCatenary
            implements Routine<CatenaryRoutine.Input, CatenaryRoutine.Output> {

        private final CatenaryRoutine installed = new CatenaryRoutine();

        @Override
        public String name() {
            return installed.name();
        }

        @Override
        public int edition() {
            return installed.edition();
        }

        @Override
        public CatenaryRoutine.Output run(CatenaryRoutine.Input input, Stop stop) {
            return new CatenaryRoutine.Output(installed.run(input, stop).parameter().times(1.01));
        }
    }

    private Quantity thrust() {
        Quantity length = Quantity.of(span, "m");
        Quantity rise = Quantity.of(72, "m");
        return Quantity.of(load, "kN/m").times(length.squared()).over(rise.times(8));
    }

    private String digest() {
        try {
            String text = Json.page(Json.read(form().display().get(Part.RECORD_TYPE)));
            return Manifest.sha256(new ByteArrayInputStream(text.getBytes(StandardCharsets.UTF_8)))
                    .substring(0, 12);
        } catch (IOException e) {
            throw new IllegalStateException(e);
        }
    }
}
