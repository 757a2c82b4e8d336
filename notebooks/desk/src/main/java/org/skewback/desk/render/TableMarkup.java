package org.skewback.desk.render;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.function.ToDoubleFunction;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A table of our own making, taken apart into its cells; one row of heads stands first.
 *
 * @param markup the whole table
 * @param rows the cells of each row, the row of heads first
 */
record TableMarkup(String markup, List<List<Cell>> rows) {

    /** Width of a space between words, in em. */
    static final double SPACE = 0.2;

    /** What an author wrote is escaped, so that these tags are the table's. */
    private static final Pattern TAG = Pattern.compile("<(/?)(tr|th|td)\\b([^>]*)>");

    private static final Pattern ANY_TAG = Pattern.compile("<[^>]*>");
    private static final Pattern ENTITY = Pattern.compile("&[#\\w]+;");
    private static final Pattern PICTURE = Pattern.compile("<img\\b[^>]*>");

    /** Stands for a picture among the words; no text may hold it, XML least of all. */
    private static final char PLACE = '\uFFFF';

    /** A cell; its array is never changed. */
    static final class Cell {
        private final int at;
        private final boolean head;
        private final String attributes;
        private final String text;
        private final double[] words;

        Cell(int at, boolean head, String attributes, String text, double[] words) {
            this.at = at;
            this.head = head;
            this.attributes = attributes;
            this.text = text;
            this.words = words;
        }

        /** Where its first tag ends in the markup: the place of the angle bracket. */
        int at() {
            return at;
        }

        /** Whether it has a class already. */
        boolean hasClass() {
            return attributes.contains("class=");
        }

        /** Its words, escaped as in the markup, without tags. */
        String text() {
            return text;
        }

        /** How many words it has. */
        int count() {
            return words.length;
        }

        /** Width of a word, in em. */
        double width(int word) {
            return words[word];
        }

        /** Width of all words in one line, in em. */
        double whole() {
            return Arrays.stream(words).sum() + (words.length - 1) * SPACE;
        }

        /** Width of the widest part that stays together; a number is not broken, its head is. */
        double widest() {
            return !head && attributes.contains("class=\"number\"")
                    ? whole()
                    : Arrays.stream(words).max().orElse(0);
        }
    }

    /**
     * Takes a table apart.
     *
     * @param markup a table without another in it
     * @param picture tells the width of a picture by its tag, in em
     */
    static TableMarkup of(String markup, ToDoubleFunction<String> picture) {
        List<List<Cell>> rows = new ArrayList<>();
        Matcher tags = TAG.matcher(markup);
        int start = -1;
        String attributes = "";
        while (tags.find()) {
            boolean opens = tags.group(1).isEmpty();
            if (tags.group(2).equals("tr")) {
                if (opens) {
                    rows.add(new ArrayList<>());
                }
            } else if (opens) {
                start = tags.end();
                attributes = tags.group(3);
            } else if (start >= 0 && !rows.isEmpty()) {
                String inner = markup.substring(start, tags.start());
                rows.get(rows.size() - 1)
                        .add(
                                cell(
                                        start - 1,
                                        tags.group(2).equals("th"),
                                        attributes,
                                        inner,
                                        picture));
                start = -1;
            }
        }
        return new TableMarkup(markup, rows);
    }

    private static Cell cell(
            int at,
            boolean head,
            String attributes,
            String inner,
            ToDoubleFunction<String> picture) {
        List<Double> pictures = new ArrayList<>();
        String marked =
                PICTURE.matcher(inner)
                        .replaceAll(
                                found -> {
                                    pictures.add(picture.applyAsDouble(found.group()));
                                    return String.valueOf(PLACE);
                                });
        String text = ENTITY.matcher(ANY_TAG.matcher(marked).replaceAll("")).replaceAll("x");
        String[] parts = text.strip().split("[ \\n\\t]+", -1);
        double[] words = new double[parts.length];
        int next = 0;
        for (int i = 0; i < parts.length; i++) {
            String bare = parts[i].replace(String.valueOf(PLACE), "");
            words[i] = Lettering.text().width(bare);
            for (int j = bare.length(); j < parts[i].length(); j++) {
                words[i] += pictures.get(next);
                next++;
            }
        }
        String said = ANY_TAG.matcher(inner).replaceAll("").strip();
        return new Cell(at, head, attributes, said, words);
    }

    /** Tells whether it has a row of heads and every row as many cells. */
    boolean isRegular() {
        return rows.size() > 1
                && columns() > 0
                && rows.stream().allMatch(row -> row.size() == columns());
    }

    int columns() {
        return rows.isEmpty() ? 0 : rows.get(0).size();
    }
}
