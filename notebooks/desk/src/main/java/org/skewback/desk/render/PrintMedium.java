package org.skewback.desk.render;

import java.awt.geom.PathIterator;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Base64;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;
import org.skewback.quantity.Quantity;

/** Paper: equations as outlines with words that stand for them, code at the end of its document. */
final class PrintMedium implements Medium {

    /** Size of the mathematics, in points, beside text of 10 points. */
    private static final double SIZE = 10.8;

    /** Width left for an equation on the page, in points. */
    private static final double WIDEST = 440;

    /** About as many letters of mathematics stand in that width. */
    private static final int LETTERS = 90;

    private static final int COLUMNS = 96;

    /** Size of a table's text, in points, as in the style sheet. */
    private static final double TABLE_SIZE = 9.5;

    /** Width left for a table, in em of its text: 168 mm less what rounding may take. */
    private static final double TABLE = 168 * 72 / 25.4 / TABLE_SIZE - 0.3;

    /** Room beside each text of a table: 4 mm. */
    private static final double BETWEEN = 4 * 72 / 25.4 / TABLE_SIZE;

    /** A picture of unknown width counts as so many em. */
    private static final double UNKNOWN_PICTURE = 12;

    private static final Pattern PICTURE_WIDTH =
            Pattern.compile("style=\"width:(\\d{1,5}(?:\\.\\d{1,2})?)pt");

    /** Up to so many lines are kept on one page. */
    private static final int SHORT = 20;

    private static final int UNITS = 1000;

    /** White round the outline, in em, so that no edge is cut. */
    private static final double MARGIN = 0.05;

    private static final byte[] NOTHING = {};

    private final ReadPackage whole;
    private final Drawing drawing;
    private final @Nullable Typesetter typesetter;
    private final Map<String, String> set = new HashMap<>();
    private final List<String> cells = new ArrayList<>();
    private final List<String> answers = new ArrayList<>();

    /**
     * Makes the medium.
     *
     * @param drawing whether equations and pictures are drawn; where they are not, only their words
     *     stand there
     */
    PrintMedium(ReadPackage whole, Drawing drawing) {
        this.whole = whole;
        this.drawing = drawing;
        this.typesetter =
                drawing == Drawing.DONE ? new Typesetter(new MathGlyphs(), WIDEST / SIZE) : null;
    }

    /** Gives the sources of the cells since the last time, in order. */
    List<String> takeCells() {
        List<String> taken = List.copyOf(cells);
        cells.clear();
        return taken;
    }

    /** Gives the hidden answers since the last time, in order. */
    List<String> takeAnswers() {
        List<String> taken = List.copyOf(answers);
        answers.clear();
        return taken;
    }

    @Override
    public String answer(String title, String markup) {
        answers.add("<h3>" + Markup.text(title) + "</h3>" + markup);
        return "<p class=\"answer\">" + Markup.text(title) + ": at the end.</p>";
    }

    /** What is wider by the typesetter's own measure, it breaks further. */
    @Override
    public String worked(Quantity quantity) {
        return equation(quantity.worked().mathml(LETTERS), true);
    }

    @Override
    public String equation(String mathml, boolean display) {
        return set.computeIfAbsent(
                mathml, formula -> picture(FlatBrackets.acrossRows(formula), display));
    }

    private String picture(String mathml, boolean display) {
        String words = MathWords.of(mathml);
        Box box = typesetter == null ? null : typesetter.set(mathml);
        if (box == null || box.width() <= 0) {
            return "<span class=\"formula\">" + Markup.text(words) + "</span>";
        }
        double size = Math.min(SIZE, WIDEST / box.width());
        String style =
                "width:"
                        + points(box.width() * size)
                        + "pt;height:"
                        + points((box.height() + 2 * MARGIN) * size)
                        + "pt"
                        + (display
                                ? ""
                                : ";vertical-align:-"
                                        + points((box.descent() + MARGIN) * size)
                                        + "pt");
        return "<img class=\"formula\" alt=\""
                + Markup.attribute(words)
                + "\" style=\""
                + style
                + "\" src=\"data:image/svg+xml;base64,"
                + Base64.getEncoder()
                        .encodeToString(svg(box, size).getBytes(StandardCharsets.UTF_8))
                + "\"/>";
    }

    private static String svg(Box box, double size) {
        long top = Math.round((box.ascent() + MARGIN) * UNITS);
        long height = Math.round((box.height() + 2 * MARGIN) * UNITS);
        long width = Math.round(box.width() * UNITS);
        return "<svg xmlns=\"http://www.w3.org/2000/svg\" width=\""
                + points(box.width() * size)
                + "pt\" height=\""
                + points((box.height() + 2 * MARGIN) * size)
                + "pt\" viewBox=\"0 "
                + -top
                + " "
                + width
                + " "
                + height
                + "\"><path fill=\"#1b2126\" d=\""
                + path(box)
                + "\"/></svg>";
    }

    private static String path(Box box) {
        StringBuilder path = new StringBuilder();
        double[] c = new double[6];
        for (PathIterator at = box.outline().path().getPathIterator(null);
                !at.isDone();
                at.next()) {
            switch (at.currentSegment(c)) {
                case PathIterator.SEG_MOVETO -> append(path.append('M'), c, 2);
                case PathIterator.SEG_LINETO -> append(path.append('L'), c, 2);
                case PathIterator.SEG_QUADTO -> append(path.append('Q'), c, 4);
                case PathIterator.SEG_CUBICTO -> append(path.append('C'), c, 6);
                default -> path.append('Z');
            }
        }
        return path.toString();
    }

    /** The page counts y downwards. */
    private static void append(StringBuilder path, double[] c, int count) {
        for (int i = 0; i < count; i++) {
            double value = i % 2 == 0 ? c[i] : -c[i];
            path.append(i == 0 ? "" : " ").append(Math.round(value * UNITS));
        }
    }

    private static String points(double value) {
        return String.valueOf(Math.round(value * 100) / 100.0);
    }

    @Override
    public String picture(String mediaType, String base64, String alternative) {
        String said = alternative.isBlank() ? "picture without a description" : alternative;
        byte[] bytes = drawing == Drawing.LEFT_OUT ? NOTHING : PrintedPicture.of(mediaType, base64);
        if (bytes.length == 0 && drawing != Drawing.LEFT_OUT) {
            return "<span class=\"formula\">[picture that cannot be printed: "
                    + Markup.text(said)
                    + "]</span>";
        }
        String shown = Base64.getEncoder().encodeToString(bytes);
        return "<img class=\"picture\" alt=\""
                + Markup.attribute(said)
                + "\" src=\"data:"
                + mediaType
                + ";base64,"
                + shown
                + "\"/>";
    }

    @Override
    public String result(Quantity quantity) {
        return ": <span class=\"result\">" + BlockWriter.value(quantity) + "</span>";
    }

    @Override
    public String origin(Quantity quantity) {
        return "";
    }

    @Override
    public String code(String source) {
        cells.add(source);
        return "";
    }

    @Override
    public String lines(String kind, String text) {
        boolean isShort = text.lines().count() <= SHORT;
        String kinds = kind + " lines" + (isShort ? " short" : "");
        return "<div class=\"" + kinds + "\">" + broken(text) + "</div>";
    }

    /** Breaks lines by count, since no browser is there to scroll them. */
    private static String broken(String text) {
        StringBuilder markup = new StringBuilder();
        for (String line : text.split("\n", -1)) {
            String rest = line.replace("\t", "    ");
            do {
                int count = Math.min(COLUMNS, rest.length());
                if (count < rest.length() && Character.isHighSurrogate(rest.charAt(count - 1))) {
                    count--;
                }
                String part = rest.substring(0, count);
                rest = rest.substring(count);
                markup.append("<div>")
                        .append(part.isEmpty() ? "\u00A0" : Markup.text(part))
                        .append("</div>");
            } while (!rest.isEmpty());
        }
        return markup.toString();
    }

    @Override
    public @Nullable String address(String slug, @Nullable String block) {
        if (!whole.has(slug)) {
            return null;
        }
        return "#" + (block == null ? anchor(slug) : identifier(slug, block));
    }

    /** The identifier of a document's heading. */
    static String anchor(String slug) {
        return "document-" + Markup.identifier(slug);
    }

    @Override
    public String identifier(String slug, String block) {
        return anchor(slug, block);
    }

    /** The identifier of a block's element. */
    static String anchor(String slug, String block) {
        return "block-" + Markup.identifier(slug) + "-" + Markup.identifier(block);
    }

    @Override
    public String wide(String markup, String label) {
        return markup;
    }

    @Override
    public String table(String markup, String label) {
        if (drawing != Drawing.DONE) {
            return markup;
        }
        TableMarkup table = TableMarkup.of(markup, PrintMedium::pictureWidth);
        if (!table.isRegular()) {
            return markup;
        }
        ColumnWidths columns = new ColumnWidths(table, BETWEEN);
        if (columns.fitUnbroken(TABLE) || !columns.fit(TABLE)) {
            return markup;
        }
        double[] widths = columns.divided(TABLE);
        // In points, for the engine drops the fraction of a percentage; padding comes on top.
        StringBuilder divided = new StringBuilder();
        int from = 0;
        for (int i = 0; i < widths.length; i++) {
            int at = table.rows().get(0).get(i).at();
            divided.append(markup, from, at)
                    .append(" style=\"width:")
                    .append(points((widths[i] - BETWEEN) * TABLE_SIZE))
                    .append("pt\"");
            from = at;
        }
        String whole = divided.append(markup.substring(from)).toString();
        return whole.replaceFirst("<table\\b", "<table style=\"width:100%;table-layout:fixed\"");
    }

    /** The width of a picture among words, in em of a table's text. */
    private static double pictureWidth(String tag) {
        Matcher width = PICTURE_WIDTH.matcher(tag);
        return width.find() ? Double.parseDouble(width.group(1)) / TABLE_SIZE : UNKNOWN_PICTURE;
    }

    @Override
    public String sweep(SweepStates sweep, String name, String number) {
        StringBuilder markup = new StringBuilder("<div class=\"figure\"><table class=\"states\">");
        for (int printed : sweep.printed()) {
            SweepStates.State state = sweep.states().get(printed);
            markup.append("<tr><td>")
                    .append(picture("image/svg+xml", state.base64(), state.description()))
                    .append("<p>")
                    .append(Markup.text(state.label()))
                    .append("</p></td></tr>");
        }
        return markup.append("</table><p class=\"caption\">")
                .append(number)
                .append(Markup.text(sweep.title()))
                .append(": ")
                .append(sweep.printed().size())
                .append(" of ")
                .append(sweep.states().size())
                .append(" states of the ")
                .append(Markup.text(sweep.parameter()))
                .append("</p></div>")
                .toString();
    }
}
