package org.skewback.desk.render;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.skewback.desk.issue.Basis;
import org.skewback.desk.issue.PackageInfo;
import org.skewback.desk.issue.RunDocument;
import org.skewback.desk.issue.RunPackage;
import org.skewback.desk.notebook.Cell;
import org.skewback.desk.notebook.Notebook;
import org.skewback.desk.notebook.Output;
import org.skewback.display.Displayable;
import org.skewback.figure.ChainTurnedOver;
import org.skewback.figure.Sweep;
import org.skewback.lesson.HiddenAnswer;
import org.skewback.quantity.Quantity;
import org.skewback.quantity.Source;
import org.skewback.sheet.Column;
import org.skewback.sheet.Figure;
import org.skewback.sheet.Part;
import org.skewback.sheet.Sheet;
import org.skewback.sheet.Table;

/** A package with real sheets, prose with mathematics, and hostile bits wherever text can be. */
final class SamplePackage {

    static final String SCRIPT = "<script>alert('run')</script>";
    static final String MARKED = "<b onclick=\"alert(1)\">bold</b> & \"quoted\" 'single'";
    static final String LONG = "Q".repeat(50_000);

    private static final ObjectMapper JSON = new ObjectMapper();
    private static final String PIXEL =
            "iVBORw0KGgoAAAANSUhEUgAAAAEAAAABCAYAAAAfFcSJAAAADUlEQVR42mNkYPj/HwADBwIAMCbH"
                    + "YQAAAABJRU5ErkJggg==";

    private SamplePackage() {}

    static RunPackage calm() {
        return new RunPackage(
                info("Ostrel Gorge crossing", "Calculations for a deck arch of 336 m, invented."),
                List.of(form(), forces()),
                environment());
    }

    static RunPackage hostile() {
        return new RunPackage(
                info("Gorge " + SCRIPT, "Summary " + MARKED + " \u0000\u0007 \uFFFE"),
                List.of(form(), forces(), hostileDocument()),
                environment());
    }

    /** A package of which one given was changed after the rest had run. */
    static RunPackage stale() {
        return new RunPackage(
                info("Ostrel Gorge crossing", "One given was changed."),
                List.of(staleDocument()),
                environment());
    }

    private static RunDocument staleDocument() {
        Sheet sheet = Sheet.numbered("06", "Form of the rib");
        Source drawing = Source.drawing("OG-201", "B");
        List<Cell> cells = new ArrayList<>();
        sheet.cellStarts("s1");
        Quantity load = sheet.given("g", 148, "kN/m", "permanent load", drawing);
        sheet.cellStarts("s2");
        Quantity force =
                sheet.step("F", load.times(Quantity.of(336, "m")), "kN", "load of the span");
        Part worked = sheet.latest();
        sheet.cellStarts("s3");
        sheet.check("load of the span", force).atMost(Quantity.of(60, "MN"));
        sheet.figure(new Hostile(), force);
        sheet.table(Table.of("In words", Column.texts("load", List.of(force.toString()))), force);
        Part checked = sheet.latest();
        sheet.cellStarts("s1");
        sheet.given("g", 190, "kN/m", "permanent load", drawing);
        cells.add(code("s1", "Quantity g = sheet.given(…);", sheet.latest()));
        cells.add(code("s2", "Quantity F = sheet.step(…);", worked));
        cells.add(code("s3", "sheet.check(…);", checked));
        sheet.cellStarts("s4");
        cells.add(code("s4", "sheet.conclude(…)", sheet.conclude("To be run again.")));
        return document("06-form", "06 Form of the rib", cells, sheet);
    }

    private static Map<String, String> environment() {
        Map<String, String> environment = new LinkedHashMap<>();
        environment.put("library", "0.1.0");
        environment.put("Java", "17.0.12");
        environment.put("system", "Linux, amd64");
        return environment;
    }

    static PackageInfo info(String title, String summary) {
        return new PackageInfo(
                "gorge-crossing",
                title,
                "OG-C-001",
                "B",
                "preliminary",
                LocalDate.of(2026, 11, 20),
                "the designers",
                "",
                summary,
                List.of(
                        "The crossing is invented; no number here describes a real structure.",
                        "Working at height, rock fall and lifting need plans of their own."),
                List.of("06-form.ipynb", "08-forces.ipynb"),
                new Basis(
                        List.of("EN 1990:2002, with the national choices of nobody"),
                        List.of("Permanent load is taken with its mean value."),
                        List.of(),
                        List.of("Thrust is positive in compression."),
                        List.of("Drawings are preliminary & not signed.")));
    }

    static RunDocument form() {
        Sheet sheet = Sheet.numbered("06", "Form of the rib");
        List<Cell> cells = new ArrayList<>();
        cells.add(
                prose(
                        "# 06 Form of the rib\n\n"
                            + "A rib that follows the *line of thrust* carries its load without"
                            + " bending. For a uniform load $g$ along the span the line is a"
                            + " parabola,\n\n"
                            + "$$z(x) = \\frac{4 f}{L^2}\\, x \\left(L - x\\r"
                            + "ight), \\qquad H = \\frac{g L^2}{8 f}$$\n\n"
                            + "and the length of its axis is\n\n"
                            + "$$s = \\int_0^L \\sqrt{1 +"
                            + " \\left(\\frac{\\mathrm{d}z}{\\mathrm{d}x}\\r"
                            + "ight)^2}\\,\\mathrm{d}x \\approx L\\left(1 + \\tfrac{8}{3}"
                            + " \\frac{f^2}{L^2}\\r"
                            + "ight)$$\n\n"
                            + "Here $f/L \\le 0.25$ and $\\sum_i F_{z,i} = 0$; the code `$g * 2$`"
                            + " stays code, and it costs $5 and $6.\n\n"
                            + "| part | count | mass [t] |\n"
                            + "|---|---:|---:|\n"
                            + "| rib | 2 | 2 410 |\n"
                            + "| deck | 14 | 3 980 |\n\n"
                            + "See [the forces](08-forces.ipynb).\n\n"
                            + "## Givens"));
        sheet.cellStarts("c1");
        sheet.purpose("Finds the form in which permanent load makes no bending.");
        sheet.assume("Permanent load is uniform along the span.");
        Quantity span =
                sheet.given(
                        "L", 336, "m", "span between springings", Source.drawing("OG-201", "B"));
        Quantity rise =
                sheet.given("f", 72, "m", "rise of the rib axis", Source.drawing("OG-201", "B"));
        Quantity load =
                sheet.given(
                        "g_k",
                        148,
                        "kN/m",
                        "permanent load of one rib",
                        Source.assumption("to be replaced by the sheet of actions"));
        List<Quantity> columns =
                sheet.series(
                        "x",
                        new double[] {24, 48, 72, 96, 120, 144},
                        "m",
                        "columns from the west springing",
                        Source.survey("Valley survey of 2025", "section 3"));
        cells.add(code("c1", "Quantity L = sheet.given(\"L\", 336, \"m\");", sheet.latest()));
        cells.add(prose("## Thrust and length"));
        sheet.cellStarts("c2");
        Quantity thrust =
                sheet.step(
                        "H",
                        load.times(span.squared()).over(rise.times(8)),
                        "kN",
                        "horizontal thrust under permanent load");
        Quantity slope =
                sheet.step(
                        "tan_φ", rise.times(4).over(span), "", "slope of the axis at a springing");
        Quantity force =
                sheet.step(
                        "N_Ed",
                        thrust.times(slope.squared().plus(1).root()),
                        "MN",
                        "force along the axis at a springing");
        Quantity area =
                sheet.step(
                        "A",
                        Quantity.of(1.2, "m")
                                .times(Quantity.of(38, "mm"))
                                .times(4)
                                .minus(Quantity.of(38, "mm").squared().times(4)),
                        "m²",
                        "area of one chord");
        Quantity stress =
                sheet.step(
                        "σ_Ed",
                        force.over(area.times(2))
                                .plus(load.times(Quantity.of(3, "m")).over(area.times(1000)))
                                .minus(Quantity.of(0.5, "MPa").times(slope.plus(1).power(3, 2))),
                        "MPa",
                        "mean stress in a chord with a share of local bending, less the relief"
                                + " from the bracing");
        sheet.step("x_m", Quantity.sum(columns).over(columns.size()), "m", "mean of the columns");
        List<Quantity> many =
                java.util.Collections.nCopies(5, columns).stream().flatMap(List::stream).toList();
        sheet.step("x_all", Quantity.sum(many).over(many.size()), "m", "mean of them all");
        cells.add(code("c2", "Quantity H = sheet.step(\"H\", …);", sheet.latest()));
        sheet.cellStarts("c3");
        sheet.table(
                Table.of(
                        "Levels along the axis",
                        Column.texts("column", List.of("1", "2", "3", "4", "5", "6")),
                        Column.of("from the springing", "m", columns),
                        Column.of(
                                "height above it",
                                "m",
                                columns.stream()
                                        .map(
                                                x ->
                                                        rise.times(4)
                                                                .over(span.squared())
                                                                .times(x)
                                                                .times(span.minus(x)))
                                        .toList(),
                                2)));
        cells.add(code("c-sweep", "sweep", sweep()));
        cells.add(
                code(
                        "c-answer",
                        "answer",
                        HiddenAnswer.under("Answer to question 1")
                                .saying("The thrust doubles, and <nothing> moves.")
                                .showing(stress)));
        sheet.figure(new Drawing());
        sheet.check("stress in the chord at the springing", stress)
                .atMost(Quantity.of(355, "MPa").named("f_yd", "MPa", "yield strength"));
        sheet.check("rise-to-span ratio, from common practice", rise.over(span))
                .atLeast(Quantity.of(0.25));
        sheet.check("rise-to-span ratio within what was built before", rise.over(span))
                .between(Quantity.of(0.1), Quantity.of(0.2));
        sheet.section("Limits of this sheet");
        sheet.note("What follows holds while the load stays as it is.\n\nIt does not.");
        sheet.subsection("Loads");
        sheet.preparedBy("A. Designer", "2026-11-18");
        sheet.comment("B. Checker", "2026-11-19", "Where does the load come from?");
        sheet.caution("The form holds for one load only; see sheet 08 for all others.");
        cells.add(code("c3", "sheet.table(levels);", sheet.latest()));
        sheet.cellStarts("c4");
        cells.add(
                code(
                        "c4",
                        "sheet.conclude(\"…\")",
                        sheet.conclude("A parabola serves; the ratio asks for a higher crown.")));
        return document("06-form", "06 Form of the rib", cells, sheet);
    }

    static RunDocument forces() {
        Sheet sheet = Sheet.numbered("08", "Forces");
        List<Cell> cells = new ArrayList<>();
        cells.add(prose("# 08 Forces\n\nWhat the form leads to."));
        sheet.cellStarts("d1");
        Quantity thrust =
                sheet.given(
                        "H",
                        29_008,
                        "kN",
                        "horizontal thrust",
                        Source.sheet("06", "H, record 0123456789ab"));
        Quantity limit =
                sheet.given(
                        "H_Rd", 41, "MN", "what the abutment bears", Source.commonPractice("none"));
        sheet.check("thrust on the abutment", thrust).atMost(limit);
        cells.add(code("d1", "Quantity H = sheet.take(\"06\", \"H\");", sheet.latest()));
        sheet.cellStarts("d2");
        cells.add(code("d2", "sheet.conclude(\"…\")", sheet.conclude("The abutment bears it.")));
        return document("08-forces", "08 Forces", cells, sheet);
    }

    static RunDocument hostileDocument() {
        Sheet sheet = Sheet.titled("Hostile " + SCRIPT);
        List<Cell> cells = new ArrayList<>();
        cells.add(
                prose(
                        "# Hostile\n\n"
                                + SCRIPT
                                + "\n\n<img src=x onerror=alert(1)>\n\n[bad](javascript:alert(1))"
                                + " [file](file:///etc/passwd) ![far](http://example.org/a.png)"
                                + " ![near](../secret.png) [good](https://example.org/?a=1&b=2)\n\n"
                                + "$\\newcommand{\\a}{\\a}\\a$ and $<script>$ and $$\\href{x}{y}"
                                + "$$ \uE0001\uE001 "
                                + "![$x$](data:image/png;base64,"
                                + PIXEL
                                + ")\n\n```\n$not$ "
                                + SCRIPT
                                + "\n```\n\n"
                                + "> ".repeat(200)
                                + "deep"));
        sheet.cellStarts("h1");
        Quantity given =
                sheet.given("q", 3, "kN/m²", MARKED, Source.book(SCRIPT, "page \"3\" <i>]]></i>"));
        Quantity twice = sheet.step("q_2", given.times(2), "kN/m²", SCRIPT + "\u0000");
        sheet.check(SCRIPT, twice).atMost(given);
        sheet.section(SCRIPT);
        sheet.note(SCRIPT + "\n\n" + MARKED);
        sheet.checkedBy(MARKED, "2026-11-19");
        sheet.comment(SCRIPT, "2026-11-19", MARKED);
        sheet.caution(MARKED + "\n\n" + SCRIPT + " \uD83D\uDE00 漢字 \u0301");
        cells.add(code("h1", "// " + SCRIPT, sheet.latest()));
        cells.add(
                shown(
                        "h2",
                        Map.of(
                                "text/html",
                                "<p onclick=\"x()\">kept<script>alert(2)</script>"
                                        + "<iframe src=\"http://example.org\"></iframe>"
                                        + "<a href=\"javascript:x\">a</a><svg onload=\"x()\"></svg>"
                                        + "<img src=\"http://example.org/x.png\"></p>")));
        cells.add(
                shown(
                        "h3",
                        Map.of(
                                "text/html",
                                "<img alt=\"&quot; onerror=&quot;x\" src=\"data:image/png;base64,"
                                        + PIXEL
                                        + "\">")));
        cells.add(
                shown(
                        "h4",
                        Map.of(
                                "text/html",
                                "<div onclick=\"x()\"><b>before</b><p><img alt=\"between words\""
                                        + " src=\"data:image/png;base64,"
                                        + PIXEL
                                        + "\" style=\"max-width:100%\"></p><i>after</i></div>")));
        cells.add(shown("p1", picture("image/png", "bm90IGEgcGljdHVyZQ==")));
        cells.add(
                shown(
                        "p2",
                        picture(
                                "image/svg+xml",
                                base64(
                                        "<svg xmlns=\"http://www.w3.org/2000/svg\" viewBox=\"0 0 9"
                                                + " 9\"><path d=\"M0 0 L zz\"/></svg>"))));
        cells.add(
                shown(
                        "p3",
                        picture(
                                "image/svg+xml",
                                base64(
                                        "<svg xmlns=\"http://www.w3.org/2000/svg\""
                                                + " width=\"1000000000\""
                                                + " height=\"-5\"><text>a</text></svg>"))));
        cells.add(shown("p4", picture("image/svg+xml", base64("<svg><not closed"))));
        cells.add(
                shown(
                        "p5",
                        picture(
                                "image/svg+xml",
                                base64(
                                        "<!DOCTYPE svg [<!ENTITY a \"b\">]><svg"
                                            + " xmlns=\"http://www.w3.org/2000/svg\"><text>&a;</text></svg>"))));
        cells.add(shown("h4", Map.of("text/plain", LONG + SCRIPT)));
        cells.add(shown("h5", Map.of("text/latex", "$$\\frac{a}{b$$", "text/plain", "a/b")));
        cells.add(shown("h6", Map.of("text/markdown", "**strong** " + SCRIPT)));
        cells.add(
                shown(
                        "h-sweep",
                        Map.of(
                                Sweep.TYPE,
                                "{\"format\":\"skewback-sweep\",\"edition\":1,\"title\":\"<b"
                                    + " onclick=x>\","
                                    + "\"parameter\":\"\\\"><script>\",\"opening\":0,\"printed\":[0,1],\"states\":[{\"label\":\"<i>\",\"description\":\"\\\""
                                    + " onload=\\\"x\",\"svg\":\"<svg"
                                    + " onload='x()'><script>1</script></svg>\"},{\"label\":\"2\",\"svg\":\"no"
                                    + " svg\"}]}")));
        cells.add(
                shown(
                        "h-answer",
                        Map.of(
                                HiddenAnswer.TYPE,
                                "{\"format\":\"skewback-answer\",\"edition\":1,\"title\":\"<b"
                                        + " onclick=x>\",\"markdown\":\"<script>1</script>"
                                        + " [a](javascript:x)\"}")));
        cells.add(
                shown(
                        "h-answer-later",
                        Map.of(
                                HiddenAnswer.TYPE,
                                "{\"format\":\"skewback-answer\",\"edition\":2}",
                                "text/plain",
                                "an answer of a later edition")));
        cells.add(shown("h7", Map.of("application/x-unknown", "?")));
        cells.add(
                new Cell(
                        "h8",
                        Cell.Kind.CODE,
                        "fails()",
                        JsonNodeFactory.instance.objectNode(),
                        9,
                        List.of(
                                new Output.Stream("stdout", "\u001B[31mred\u001B[0m " + SCRIPT),
                                new Output.Failure("E" + SCRIPT, MARKED, List.of("line")))));
        sheet.cellStarts("h9");
        sheet.figure(new Hostile());
        sheet.figure(sweep());
        sheet.assume("No cell shows this.");
        return document("99-hostile", "Hostile", cells, sheet);
    }

    /** Three states of a chain, of which paper shows two. */
    /** A sheet of tables and of lists of givens, between texts that shift each down the page. */
    static RunPackage tables() {
        Sheet sheet = Sheet.numbered("09", "Tables");
        List<Cell> cells = new ArrayList<>();
        sheet.given("γ_G", 1.35, "", "on permanent load", Source.assumption("an example"));
        sheet.given("ψ_b", 65, "°", "inclination of a face", Source.assumption("an example"));
        for (int i = 1; i <= 30; i++) {
            for (int line = 0; line < i % 7; line++) {
                sheet.note("A line of text before table " + i + ".");
            }
            sheet.given("x_" + i, i, "m", "a length", Source.drawing("OG-201", "B"));
            sheet.table(
                    Table.of(
                            "Numbered " + i,
                            Column.texts("place", List.of("west", "crown", "east")),
                            Column.texts("seen", List.of("yes", "no", "yes"))));
            cells.add(code("t" + i, "sheet.table(" + i + ")", sheet.latest()));
        }
        cells.add(code("end", "sheet.conclude", sheet.conclude("No title stands alone.")));
        return new RunPackage(
                info("Tables", "Many tables."),
                List.of(document("tables", "09 Tables", cells, sheet)),
                environment());
    }

    static Sweep sweep() {
        List<Quantity> sags =
                List.of(Quantity.of(2, "m"), Quantity.of(3, "m"), Quantity.of(4, "m"));
        return Sweep.of(
                        "Chain of three sags",
                        "sag of the chain",
                        sags,
                        sag ->
                                ChainTurnedOver.of(
                                        "Chain and arch",
                                        new double[] {0, 5, 10},
                                        new double[] {0, sag.in("m"), 0},
                                        new double[] {0, 1, 0}))
                .opening(sags.get(1))
                .printing(List.of(sags.get(0), sags.get(2)));
    }

    private static RunDocument document(String slug, String title, List<Cell> cells, Sheet sheet) {
        String record = new Part(sheet.record(), List.of(), true).display().get(Part.RECORD_TYPE);
        return new RunDocument(
                slug, title, new Notebook(cells, JsonNodeFactory.instance.objectNode()), record);
    }

    private static Cell prose(String markdown) {
        return new Cell(
                "m" + markdown.hashCode(),
                Cell.Kind.MARKDOWN,
                markdown,
                JsonNodeFactory.instance.objectNode(),
                null,
                List.of());
    }

    private static Cell code(String id, String source, Displayable value) {
        Map<String, JsonNode> data = new LinkedHashMap<>();
        value.display()
                .forEach(
                        (type, text) ->
                                data.put(
                                        type,
                                        type.endsWith("+json")
                                                ? json(text)
                                                : JsonNodeFactory.instance.textNode(text)));
        return cell(id, source, data);
    }

    private static Cell shown(String id, Map<String, String> texts) {
        Map<String, JsonNode> data = new LinkedHashMap<>();
        texts.forEach((type, text) -> data.put(type, JsonNodeFactory.instance.textNode(text)));
        return cell(id, "show()", data);
    }

    private static Map<String, String> picture(String type, String base64) {
        String tag = "<img alt=\"broken\" src=\"data:" + type + ";base64," + base64 + "\">";
        return Map.of("text/html", tag);
    }

    private static String base64(String text) {
        return java.util.Base64.getEncoder()
                .encodeToString(text.getBytes(java.nio.charset.StandardCharsets.UTF_8));
    }

    private static Cell cell(String id, String source, Map<String, JsonNode> data) {
        JsonNode none = JsonNodeFactory.instance.objectNode();
        return new Cell(
                id, Cell.Kind.CODE, source, none, 1, List.of(new Output.Display(data, none, true)));
    }

    private static JsonNode json(String text) {
        try {
            return JSON.readTree(text);
        } catch (java.io.IOException e) {
            throw new IllegalStateException(e);
        }
    }

    private record Drawing() implements Figure {
        @Override
        public String title() {
            return "Axis of the rib";
        }

        @Override
        public String description() {
            return "A parabola over 336 m, 72 m high, with its two springings.";
        }

        @Override
        public String svg() {
            return "<svg xmlns=\"http://www.w3.org/2000/svg\" viewBox=\"0 0 640 190\" width=\"640\""
                    + " height=\"190\" font-family=\"'Source Sans 3',sans-serif\" font-size=\"13\">"
                    + "<title>Axis of the rib</title><desc>A parabola.</desc><path d=\"M40 160"
                    + " Q320 -90 600 160\" fill=\"none\" stroke=\"#00527f\" stroke-width=\"1.8\"/>"
                    + "<path d=\"M40 170H600M40 165v10M600 165v10\" stroke=\"#555\" fill=\"none\""
                    + " stroke-width=\"0.7\"/><text x=\"320\" y=\"185\" text-anchor=\"middle\">"
                    + "336 m</text><text x=\"320\" y=\"28\" text-anchor=\"middle\">crown +836,0 −"
                    + " ≤ 72 m</text></svg>";
        }

        @Override
        public byte[] png() {
            return new byte[0];
        }
    }

    private record Hostile() implements Figure {
        @Override
        public String title() {
            return SCRIPT;
        }

        @Override
        public String description() {
            return MARKED;
        }

        @Override
        public String svg() {
            return "<svg xmlns=\"http://www.w3.org/2000/svg\""
                    + " xmlns:xlink=\"http://www.w3.org/1999/xlink\" viewBox=\"0 0 10 10\""
                    + " width=\"10\" height=\"10\"><script>alert(3)</script><image width=\"9\""
                    + " height=\"9\" xlink:href=\"file:///etc/hostname\"/><rect width=\"5\""
                    + " height=\"5\" onload=\"alert(4)\"/></svg>";
        }

        @Override
        public byte[] png() {
            return new byte[0];
        }
    }
}
