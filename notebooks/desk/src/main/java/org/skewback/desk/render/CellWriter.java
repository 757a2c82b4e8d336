package org.skewback.desk.render;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;
import org.skewback.desk.notebook.Cell;
import org.skewback.desk.notebook.Output;
import org.skewback.sheet.Entry;
import org.skewback.sheet.Part;
import org.skewback.sheet.SheetRecord;

/** Sets the cells of one notebook with what they gave. */
final class CellWriter {

    /** ECMA-48 control sequences, by which a terminal is coloured. */
    private static final Pattern TERMINAL = Pattern.compile("\u001B\\[[0-9;?]*[ -/]*[@-~]");

    private static final int LONGEST_TEXT = 20_000;
    private static final Pattern BASE64 = Pattern.compile("[A-Za-z0-9+/=]+");
    private static final ObjectMapper JSON = new ObjectMapper();

    private final Medium medium;
    private final ReadDocument document;
    private final BlockWriter blocks;
    private final Prose prose;
    private @Nullable String title;
    private int sweeps;

    CellWriter(Medium medium, ReadPackage whole, ReadDocument document) {
        this.medium = medium;
        this.document = document;
        this.blocks = new BlockWriter(medium, whole, document);
        this.prose = new Prose(medium);
        this.title = document.title();
    }

    /** Sets all cells, then whatever the record holds that no cell showed. */
    String all() {
        StringBuilder markup = new StringBuilder();
        for (Cell cell : document.notebook().cells()) {
            markup.append(cell(cell));
        }
        List<Entry> rest = blocks.notShown();
        if (!rest.isEmpty()) {
            markup.append("<section class=\"rest\"><h2>Also on this sheet</h2>")
                    .append("<p>The record holds this too; no cell showed it.</p>")
                    .append(blocks.set(rest))
                    .append("</section>\n");
        }
        return markup.toString();
    }

    private String cell(Cell cell) {
        return switch (cell.kind()) {
            case MARKDOWN -> markdown(cell.source());
            case CODE -> code(cell);
            case RAW -> lines("raw", cell.source());
        };
    }

    private String markdown(String source) {
        String set = prose.set(source, title);
        title = null;
        return set.isBlank() ? "" : "<div class=\"prose\">" + set + "</div>\n";
    }

    private String code(Cell cell) {
        StringBuilder markup = new StringBuilder("<div class=\"cell\">");
        for (Output output : cell.outputs()) {
            markup.append(output(output));
        }
        if (!cell.source().isBlank()) {
            markup.append(medium.code(cell.source().strip()));
        }
        return markup.append("</div>\n").toString();
    }

    private String output(Output output) {
        if (output instanceof Output.Stream stream) {
            return lines("stream", plain(stream.text()));
        } else if (output instanceof Output.Failure failure) {
            return "<div class=\"failure\"><p><b>This cell failed.</b> "
                    + Markup.text(failure.name() + ": " + plain(failure.message()))
                    + "</p></div>\n";
        }
        return shown(((Output.Display) output).data());
    }

    private String shown(Map<String, JsonNode> data) {
        JsonNode part = data.get(Part.PART_TYPE);
        SheetRecord record = document.record();
        if (part != null && record != null) {
            boolean closes = data.containsKey(Part.RECORD_TYPE);
            return blocks.set(entries(part)) + (closes ? blocks.closing(record) : "");
        }
        JsonNode shownSweep = data.get(SweepStates.MIME);
        SweepStates sweep = shownSweep == null ? null : SweepStates.read(parsed(shownSweep));
        if (sweep != null) {
            sweeps++;
            return medium.sweep(sweep, "sweep-" + sweeps, "") + "\n";
        }
        JsonNode shownAnswer = data.get(ShownAnswer.MIME);
        ShownAnswer answer = shownAnswer == null ? null : ShownAnswer.read(parsed(shownAnswer));
        if (answer != null) {
            return medium.answer(answer.title(), prose.set(answer.markdown(), null)) + "\n";
        }
        String html = text(data, "text/html");
        List<ForeignHtml.Piece> pieces = html == null ? List.of() : ForeignHtml.pieces(html);
        if (pieces.size() == 1 && pieces.get(0) instanceof ForeignHtml.Picture picture) {
            return figure(picture);
        }
        String png = text(data, "image/png");
        if (png != null && BASE64.matcher(png.replaceAll("\\s", "")).matches()) {
            String words = text(data, "text/plain");
            return figure(
                    "image/png",
                    png.replaceAll("\\s", ""),
                    words == null ? "picture without a description" : words);
        }
        String latex = text(data, "text/latex");
        if (latex != null) {
            return "<div class=\"prose\">" + prose.set(display(latex), null) + "</div>\n";
        }
        String markdown = text(data, "text/markdown");
        if (markdown != null) {
            return "<div class=\"prose\">" + prose.set(markdown, null) + "</div>\n";
        }
        if (html != null) {
            StringBuilder set = new StringBuilder();
            for (ForeignHtml.Piece piece : pieces) {
                set.append(
                        piece instanceof ForeignHtml.Picture picture
                                ? figure(picture)
                                : foreign(((ForeignHtml.Words) piece).html()));
            }
            return set.toString();
        }
        String words = text(data, "text/plain");
        return words == null
                ? "<p class=\"foreign\">An output of a kind that this page does not show.</p>\n"
                : lines("stream", plain(words));
    }

    private static String display(String latex) {
        String bare = latex.strip();
        return bare.startsWith("$") ? bare : "$$" + bare + "$$";
    }

    private String foreign(String html) {
        return medium.wide("<div class=\"foreign\">" + Prose.titled(html) + "</div>", "Output")
                + "\n";
    }

    private String figure(ForeignHtml.Picture picture) {
        return figure(picture.mediaType(), picture.base64(), picture.alternative());
    }

    private String figure(String mediaType, String base64, String alternative) {
        return "<div class=\"figure\">"
                + medium.picture(mediaType, base64, alternative)
                + "</div>\n";
    }

    private String lines(String kind, String text) {
        String cut =
                text.length() <= LONGEST_TEXT
                        ? text
                        : text.substring(0, LONGEST_TEXT) + "\n… cut: the notebook has it all";
        return medium.lines(kind, cut.stripTrailing()) + "\n";
    }

    private List<Entry> entries(JsonNode shown) {
        List<Entry> entries = new ArrayList<>();
        for (JsonNode id : parsed(shown).path("blocks")) {
            Entry entry = document.entries().get(id.asText());
            if (entry != null) {
                entries.add(entry);
            }
        }
        return entries;
    }

    private static JsonNode parsed(JsonNode shown) {
        if (!shown.isTextual()) {
            return shown;
        }
        try {
            return JSON.readTree(shown.textValue());
        } catch (JsonProcessingException e) {
            // What cannot be read shows no block here; the record still brings it at the end.
            return JSON.createObjectNode();
        }
    }

    private static @Nullable String text(Map<String, JsonNode> data, String type) {
        JsonNode node = data.get(type);
        if (node == null) {
            return null;
        }
        if (node.isArray()) {
            StringBuilder joined = new StringBuilder();
            node.forEach(line -> joined.append(line.asText()));
            return joined.toString();
        }
        return node.isTextual() ? node.textValue() : null;
    }

    private static String plain(String text) {
        return TERMINAL.matcher(text).replaceAll("");
    }
}
