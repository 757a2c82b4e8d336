package org.skewback.desk.report;

import org.skewback.desk.render.Markup;

/** A page that stands alone: no script, no font, nothing from elsewhere. */
public final class ReportPage {

    private static final String POLICY =
            "default-src 'none'; style-src 'unsafe-inline'; base-uri 'none'; form-action 'none'";

    private static final String STYLE =
            """
            body { margin: 0 auto; max-width: 72rem; padding: 1rem 1.2rem 3rem; color: #1b2126;
              background: #fff; font: 1rem/1.5 "Source Sans 3", system-ui, sans-serif; }
            h1 { font-size: 1.7rem; line-height: 1.2; margin: 1rem 0 .4rem; }
            h2 { font-size: 1.2rem; margin: 1.8rem 0 .4rem; }
            p { margin: .4rem 0; max-width: 46rem; }
            .quiet { color: #4a545c; }
            .wide { overflow-x: auto; }
            table { border-collapse: collapse; font-variant-numeric: tabular-nums; }
            th, td { text-align: left; vertical-align: top; padding: .35rem 1rem .35rem 0;
              border-bottom: 1px solid #d8d3c7; overflow-wrap: break-word; max-width: 26rem; }
            th { white-space: nowrap; }
            summary { cursor: pointer; color: #4a545c; white-space: nowrap; }
            thead th { border-bottom: 1.5px solid #1b2126; font-weight: 600; }
            ul { margin: .2rem 0; padding-left: 1.1rem; }
            .bad { color: #a8201a; font-weight: 600; }
            .open { color: #7a4a00; font-weight: 600; }
            .good { color: #1e5a3c; font-weight: 600; }
            .verdict { font-size: 1.2rem; border-left: 4px solid currentColor; padding-left: .8rem; }
            @media print { body { font-size: 9.5pt; max-width: none; padding: 0; } a { color: inherit; } }
            """;

    private ReportPage() {}

    /**
     * Makes a page.
     *
     * @param title its title, as text
     * @param body what stands under the title, as well-formed markup
     * @return the page
     */
    public static String of(String title, String body) {
        String heading = Markup.text(title);
        return "<!DOCTYPE html>\n<html xmlns=\"http://www.w3.org/1999/xhtml\" lang=\"en\">\n<head>"
                + "<meta http-equiv=\"Content-Security-Policy\" content=\""
                + POLICY
                + "\"/><meta charset=\"utf-8\"/>\n<title>"
                + heading
                + "</title>\n<meta name=\"viewport\" content=\"width=device-width,"
                + " initial-scale=1\"/>\n<style>\n"
                + STYLE
                + "</style>\n</head>\n<body>\n<main>\n<h1>"
                + heading
                + "</h1>\n"
                + Markup.allowed(body)
                + "</main>\n</body>\n</html>\n";
    }

    /**
     * Puts a table into a box that scrolls by itself.
     *
     * @param label what it holds, for whoever reaches it by keyboard
     * @param markup the table
     * @return markup
     */
    public static String wide(String label, String markup) {
        return "<div class=\"wide\" role=\"region\" tabindex=\"0\" aria-label=\""
                + Markup.text(label)
                + "\">"
                + markup
                + "</div>\n";
    }
}
