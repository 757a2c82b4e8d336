package org.skewback.figure;

import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;
import java.util.List;

/** Writes a picture as SVG: plain paths and real text, no style sheet, no script, no reference. */
final class SvgWriter {

    private static final double MILLIMETRES_PER_POINT = 25.4 / 72;

    /** Most text has this size, so it is said once for all. */
    private static final double USUAL_SIZE = Board.TEXT;

    private SvgWriter() {}

    static String write(Picture picture) {
        StringBuilder body = new StringBuilder();
        picture.marks().forEach(mark -> mark(body, mark));
        String prefix = prefix(picture, body);
        String width = number(picture.width());
        String height = number(picture.height());
        return "<svg xmlns=\"http://www.w3.org/2000/svg\" viewBox=\"0 0 "
                + width
                + " "
                + height
                + "\" width=\""
                + number(picture.width() * MILLIMETRES_PER_POINT)
                + "mm\" height=\""
                + number(picture.height() * MILLIMETRES_PER_POINT)
                + "mm\" role=\"img\" aria-labelledby=\""
                + prefix
                + "-title "
                + prefix
                + "-desc\">\n<title id=\""
                + prefix
                + "-title\">"
                + escape(picture.title())
                + "</title>\n<desc id=\""
                + prefix
                + "-desc\">"
                + escape(picture.description())
                + "</desc>\n<rect width=\""
                + width
                + "\" height=\""
                + height
                + "\" fill=\"#ffffff\"/>\n"
                + "<g font-family=\"'Source Sans 3','Source Sans Pro','Segoe UI',"
                + "'Liberation Sans',Arial,sans-serif\" font-size=\""
                + number(USUAL_SIZE)
                + "\" style=\"font-size-adjust:0.486\" stroke-linejoin=\"round\">\n"
                + body
                + "</g>\n</svg>\n";
    }

    private static void mark(StringBuilder out, Mark mark) {
        if (mark instanceof Mark.Stroke stroke) {
            out.append("<path fill=\"none\" stroke=\"")
                    .append(stroke.pen().ink().hex())
                    .append("\" stroke-width=\"")
                    .append(number(stroke.pen().width()));
            if (!stroke.pen().dash().isEmpty()) {
                out.append("\" stroke-dasharray=\"")
                        .append(
                                String.join(
                                        " ",
                                        stroke.pen().dash().stream()
                                                .map(SvgWriter::number)
                                                .toList()));
            }
            out.append("\" d=\"");
            stroke.lines().forEach(line -> path(out, line, stroke.closed()));
            out.append("\"/>\n");
        } else if (mark instanceof Mark.Fill fill) {
            out.append("<path fill=\"").append(fill.ink().hex()).append("\" d=\"");
            fill.polygons().forEach(polygon -> path(out, polygon, true));
            out.append("\"/>\n");
        } else if (mark instanceof Mark.Words words) {
            words(out, words);
        }
    }

    private static void path(StringBuilder out, double[] xy, boolean closed) {
        long lastX = 0;
        long lastY = 0;
        for (int i = 0; i < xy.length; i += 2) {
            long x = hundredths(xy[i]);
            long y = hundredths(xy[i + 1]);
            // Relative steps are shorter; they are taken between rounded points, so nothing drifts.
            if (i == 0) {
                out.append('M').append(decimal(x)).append(' ').append(decimal(y));
            } else {
                String dx = decimal(x - lastX);
                String dy = decimal(y - lastY);
                out.append('l').append(dx).append(dy.startsWith("-") ? "" : " ").append(dy);
            }
            lastX = x;
            lastY = y;
        }
        if (closed) {
            out.append('z');
        }
    }

    private static void words(StringBuilder out, Mark.Words words) {
        out.append("<text x=\"")
                .append(number(words.x()))
                .append("\" y=\"")
                .append(number(words.y()))
                .append('"');
        if (words.anchor() != Mark.Anchor.START) {
            out.append(" text-anchor=\"").append(words.anchor().svg()).append('"');
        }
        if (words.size() != USUAL_SIZE) {
            out.append(" font-size=\"").append(number(words.size())).append('"');
        }
        if (words.turn() != 0) {
            out.append(" transform=\"rotate(")
                    .append(number(words.turn()))
                    .append(' ')
                    .append(number(words.x()))
                    .append(' ')
                    .append(number(words.y()))
                    .append(")\"");
        }
        out.append(" fill=\"")
                .append(words.ink().hex())
                .append("\">")
                .append(runs(words))
                .append("</text>\n");
    }

    /** Lowered by a step down and one back up, which every viewer knows, unlike baseline-shift. */
    private static String runs(Mark.Words words) {
        StringBuilder out = new StringBuilder();
        double height = 0;
        for (Run run : Run.of(words.text())) {
            double step = (run.drop() - height) * words.size();
            if (step == 0) {
                out.append(escape(run.text()));
                continue;
            }
            out.append("<tspan dy=\"").append(number(step)).append('"');
            if (run.lowered()) {
                out.append(" font-size=\"").append(number(run.size() * words.size())).append('"');
            }
            out.append('>').append(escape(run.text())).append("</tspan>");
            height = run.drop();
        }
        return out.toString();
    }

    /** A prefix that two different pictures don't share, and one picture always gets. */
    private static String prefix(Picture picture, CharSequence body) {
        try {
            MessageDigest digest = MessageDigest.getInstance("SHA-256");
            for (CharSequence part : List.of(picture.title(), picture.description(), body)) {
                digest.update(part.toString().getBytes(StandardCharsets.UTF_8));
                digest.update((byte) 0);
            }
            return "fig-" + HexFormat.of().formatHex(digest.digest(), 0, 6);
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException("Every Java platform has SHA-256", e);
        }
    }

    static String escape(String text) {
        return text.replace("&", "&amp;")
                .replace("<", "&lt;")
                .replace(">", "&gt;")
                .replace("\"", "&quot;");
    }

    private static String number(double value) {
        return decimal(hundredths(value));
    }

    private static long hundredths(double value) {
        return Math.round(value * 100);
    }

    private static String decimal(long hundredths) {
        long size = Math.abs(hundredths);
        StringBuilder text = new StringBuilder();
        if (hundredths < 0) {
            text.append('-');
        }
        text.append(size / 100);
        if (size % 100 != 0) {
            text.append('.').append(size % 100 / 10);
            if (size % 10 != 0) {
                text.append(size % 10);
            }
        }
        return text.toString();
    }
}
