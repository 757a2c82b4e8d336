package org.skewback.desk.render;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.skewback.desk.issue.PackageInfo;
import org.skewback.desk.issue.RunPackage;

/**
 * Writes a package as pages for the screen: {@code index.html}, {@code basis.html}, {@code
 * cautions.html}, and one page a document in {@code sheets/}.
 *
 * <p>Each page stands alone, fonts and figures included, and runs no script at all; a content
 * security policy at its head keeps the browser from fetching anything. The pages are well-formed
 * XML. They link to {@code package.pdf}, {@code records/} and {@code notebooks/} beside them.
 */
public final class HtmlPackage implements PackageRenderer {

    private static final String POLICY =
            "default-src 'none'; img-src data:; font-src data:; style-src 'unsafe-inline';"
                    + " base-uri 'none'; form-action 'none'";

    private static final String BASIS = "Basis of the calculations";
    private static final String CAUTIONS = "Cautions";

    private final String style;
    private final FontFaces fonts = new FontFaces();

    /** Makes a writer; it keeps nothing of a package. */
    public HtmlPackage() {
        this.style = resource("page.css");
    }

    @Override
    public void render(RunPackage run, Path folder) throws IOException {
        Files.createDirectories(folder.resolve("sheets"));
        for (Map.Entry<String, String> page : pages(run).entrySet()) {
            Files.writeString(folder.resolve(page.getKey()), page.getValue());
        }
    }

    /**
     * Gives the pages of a package.
     *
     * @param run the package as run
     * @return the text of each page by its path in the issued folder
     */
    public Map<String, String> pages(RunPackage run) {
        return pages(ReadPackage.of(run));
    }

    /**
     * Gives the pages of a package that has been read.
     *
     * @param whole the package
     * @return the text of each page by its path in the issued folder
     */
    public Map<String, String> pages(ReadPackage whole) {
        Map<String, String> pages = new LinkedHashMap<>();
        pages.put("index.html", index(whole));
        Registers registers = new Registers(whole, HtmlPackage::fromIndex);
        pages.put(
                "basis.html",
                front(
                        whole,
                        BASIS,
                        "What the calculations rest on: standards, choices, units, signs.",
                        wide(new BasisWriter(whole, registers).all(), BASIS)));
        pages.put(
                "cautions.html",
                front(
                        whole,
                        CAUTIONS,
                        "What to know before using any number.",
                        registers.allCautions()));
        List<ReadDocument> documents = whole.documents();
        for (int i = 0; i < documents.size(); i++) {
            pages.put("sheets/" + documents.get(i).slug() + ".html", sheet(whole, i));
        }
        return pages;
    }

    private String index(ReadPackage whole) {
        PackageInfo info = whole.info();
        Registers registers = new Registers(whole, HtmlPackage::fromIndex);
        Tally tally = registers.tally();
        StringBuilder main = new StringBuilder("<div class=\"cover\"><h1>");
        main.append(Markup.text(info.title()))
                .append("</h1>")
                .append("<p class=\"summary\">")
                .append(Markup.text(info.summary()))
                .append("</p>")
                .append(registers.title())
                .append("<p class=\"tally\"><b>Checks.</b> ")
                .append(tally.all() == 0 ? "None." : tally.inWords())
                .append("</p></div>\n");
        section(
                main,
                "cautions",
                "Before using any number",
                Registers.deference()
                        + Registers.cautions(info)
                        + "<p><a href=\"cautions.html\">All cautions, those of the sheets"
                        + " included</a></p>\n");
        section(main, "contents", "Contents", contents(whole));
        section(
                main,
                "givens",
                "Register of givens and assumptions",
                wide(registers.givens(3), "All givens and assumptions"));
        section(main, "checks", "Register of checks", wide(registers.checks(), "All checks"));
        String stale = registers.stale();
        if (!stale.isEmpty()) {
            section(main, "stale", "What is stale", stale);
        }
        if (!whole.checking().isEmpty()) {
            section(
                    main,
                    "checking",
                    "From the checker",
                    wide(whole.checking().all(), "From the checker"));
        }
        section(main, "bare", "Numbers without a source", registers.withoutSource());
        section(main, "sources", "Sources cited", wide(registers.sources(), "Sources cited"));
        section(main, "files", "Files of this package", files(whole));
        section(main, "software", "Software and environment", registers.environment());
        String nav =
                "<nav class=\"inner\" aria-label=\"On this page\"><a"
                        + " href=\"#contents\">Contents</a> <a href=\"basis.html\">Basis</a> <a"
                        + " href=\"#givens\">Givens</a> <a href=\"#checks\">Checks</a> <a"
                        + " href=\"#sources\">Sources</a> <a href=\"#files\">Files</a> <a"
                        + " href=\"cautions.html\">Cautions</a> <a"
                        + " href=\"package.pdf\">PDF</a></nav>";
        return page(info.title(), info.summary(), info, nav, main.toString(), "");
    }

    /** A page beside the index. */
    private String front(ReadPackage whole, String title, String description, String content) {
        return page(
                title + " – " + whole.info().title(),
                description,
                whole.info(),
                "<nav class=\"inner\" aria-label=\"Pages\"><a href=\"index.html\">Contents</a> <a"
                        + " href=\"basis.html\">Basis</a> <a href=\"cautions.html\">Cautions</a> <a"
                        + " href=\"package.pdf\">PDF</a></nav>",
                "<article><h1>" + title + "</h1>" + content + "</article>\n",
                "");
    }

    private static void section(StringBuilder main, String id, String title, String content) {
        main.append("<section id=\"")
                .append(id)
                .append("\" aria-labelledby=\"")
                .append(id)
                .append("-title\"><h2 id=\"")
                .append(id)
                .append("-title\">")
                .append(title)
                .append("</h2>")
                .append(content)
                .append("</section>\n");
    }

    private static String wide(String markup, String label) {
        return "<div class=\"wide\" role=\"region\" tabindex=\"0\" aria-label=\""
                + label
                + "\">"
                + markup
                + "</div>";
    }

    private static String fromIndex(String slug, @Nullable String block) {
        String fragment = block == null ? "" : "#" + Markup.identifier(block);
        return "sheets/" + slug + ".html" + fragment;
    }

    private static String contents(ReadPackage whole) {
        StringBuilder markup = new StringBuilder("<ul class=\"contents\">");
        entry(markup, "basis.html", BASIS);
        entry(markup, "#givens", "Register of givens and assumptions");
        for (ReadDocument document : whole.documents()) {
            Tally tally = Tally.of(document.checks());
            markup.append("<li><a href=\"")
                    .append(Markup.attribute(fromIndex(document.slug(), null)))
                    .append("\">")
                    .append(Markup.text(document.heading()))
                    .append("</a>")
                    .append(standing(tally))
                    .append("</li>");
        }
        entry(markup, "#checks", "Register of checks");
        entry(markup, "#sources", "Sources cited");
        entry(markup, "#software", "Software and environment");
        entry(markup, "cautions.html", CAUTIONS);
        return markup.append("</ul>\n").toString();
    }

    private static void entry(StringBuilder markup, String address, String words) {
        markup.append("<li><a href=\"")
                .append(address)
                .append("\">")
                .append(words)
                .append("</a></li>");
    }

    private static String standing(Tally tally) {
        if (tally.all() == 0) {
            return "";
        }
        StringBuilder words = new StringBuilder(" <span class=\"standing\">");
        words.append(tally.passed()).append(" passed");
        if (tally.failed() > 0) {
            words.append(", <b class=\"verdict failed\">")
                    .append(tally.failed())
                    .append(" failed</b>");
        }
        if (tally.stale() > 0) {
            words.append(", <b class=\"verdict stale\">")
                    .append(tally.stale())
                    .append(" stale</b>");
        }
        return words.append("</span>").toString();
    }

    private static String files(ReadPackage whole) {
        StringBuilder markup =
                new StringBuilder(
                        "<p><a href=\"package.pdf\">The whole package for print (PDF)</a>. Of each"
                                + " document, the notebook as run and, where it keeps a sheet, the"
                                + " record from which these pages were made:</p><ul>");
        for (ReadDocument document : whole.documents()) {
            String slug = Markup.attribute(document.slug());
            markup.append("<li>")
                    .append(Markup.text(document.heading()))
                    .append(": <a href=\"notebooks/")
                    .append(slug)
                    .append(".ipynb\">notebook</a>");
            if (document.record() != null) {
                markup.append(", <a href=\"records/").append(slug).append(".json\">record</a>");
            }
            markup.append("</li>");
        }
        return markup.append("</ul>\n").toString();
    }

    private String sheet(ReadPackage whole, int position) {
        ReadDocument document = whole.documents().get(position);
        PageMedium medium = new PageMedium(whole);
        String body = new CellWriter(medium, whole, document).all();
        Tally tally = Tally.of(document.checks());
        StringBuilder main = new StringBuilder("<article><h1>");
        main.append(Markup.text(document.heading())).append("</h1>\n");
        if (tally.all() > 0) {
            main.append("<p class=\"tally\">").append(tally.inWords()).append("</p>");
        }
        main.append(body);
        String checking =
                document.record() == null ? "" : whole.checking().about(document.number());
        if (!checking.isEmpty()) {
            main.append("<section><h2>From the checker</h2>")
                    .append(wide(checking, "From the checker"))
                    .append("</section>\n");
        }
        main.append("</article>\n");
        String nav = neighbours(whole, position);
        String again = "<nav class=\"inner\" aria-label=\"Next sheets\">" + nav + "</nav>";
        return page(
                document.title() + " – " + whole.info().title(),
                document.title(),
                whole.info(),
                "<nav class=\"inner\" aria-label=\"Sheets\">" + nav + "</nav>",
                main.toString(),
                again);
    }

    private static String neighbours(ReadPackage whole, int position) {
        StringBuilder markup = new StringBuilder("<a href=\"../index.html\">Contents</a>");
        if (position > 0) {
            neighbour(markup, "prev", "Before: ", whole.documents().get(position - 1));
        }
        if (position + 1 < whole.documents().size()) {
            neighbour(markup, "next", "Next: ", whole.documents().get(position + 1));
        }
        return markup.toString();
    }

    private static void neighbour(
            StringBuilder markup, String relation, String word, ReadDocument document) {
        markup.append(" <a rel=\"")
                .append(relation)
                .append("\" href=\"")
                .append(Markup.attribute(document.slug()))
                .append(".html\">")
                .append(word)
                .append(Markup.text(document.heading()))
                .append("</a>");
    }

    private String page(
            String title,
            String description,
            PackageInfo info,
            String nav,
            String main,
            String closing) {
        String identity =
                Markup.text(info.number())
                        + " · revision "
                        + Markup.text(info.revision())
                        + " · "
                        + Markup.text(info.status())
                        + " · "
                        + info.date();
        String body =
                "<body>\n<a class=\"skip\" href=\"#main\">Skip to the content</a>\n<header><p"
                        + " class=\"identity\"><b>"
                        + Markup.text(info.title())
                        + "</b> <span>"
                        + identity
                        + "</span></p>"
                        + nav
                        + "</header>\n<main id=\"main\">\n"
                        + Markup.allowed(main)
                        + "</main>\n<footer>"
                        + closing
                        + "<p>"
                        + identity
                        + "</p>"
                        + Registers.deference()
                        + "</footer>\n</body>\n";
        return "<!DOCTYPE html>\n<html xmlns=\"http://www.w3.org/1999/xhtml\" lang=\"en\">\n<head>"
                + "<meta http-equiv=\"Content-Security-Policy\" content=\""
                + POLICY
                + "\"/><meta charset=\"utf-8\"/>\n<title>"
                + Markup.text(title)
                + "</title>\n<meta name=\"viewport\" content=\"width=device-width,"
                + " initial-scale=1\"/>\n<meta name=\"description\" content=\""
                + Markup.attribute(description)
                + "\"/>\n<style>\n"
                + fonts.of(body)
                + style
                + "</style>\n</head>\n"
                + body
                + "</html>\n";
    }

    static String resource(String name) {
        try (InputStream in = HtmlPackage.class.getResourceAsStream(name)) {
            if (in == null) {
                throw new IllegalStateException("the resource " + name + " is missing");
            }
            return new String(in.readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException e) {
            throw new UncheckedIOException("the resource " + name + " cannot be read", e);
        }
    }
}
