package org.skewback.data;

import java.util.ArrayList;
import java.util.List;

/**
 * Splits text into records after RFC 4180 (Y. Shafranovich, Common Format and MIME Type for CSV
 * Files, 2005, section 2), with two additions: a line that begins with {@code #} is a comment, and
 * blank lines are passed over.
 */
final class CsvParser {

    private final String name;
    private final String text;
    private int at;
    private int line = 1;

    private CsvParser(String name, String text) {
        this.name = name;
        this.text = text.startsWith("\uFEFF") ? text.substring(1) : text;
    }

    /**
     * One record.
     *
     * @param line line on which it begins, from 1
     * @param fields its fields, without quotes
     */
    record Row(int line, List<String> fields) {}

    static List<Row> parse(String name, String text) {
        CsvParser parser = new CsvParser(name, text);
        List<Row> rows = new ArrayList<>();
        while (parser.at < parser.text.length()) {
            if (parser.text.charAt(parser.at) == '#') {
                parser.skipLine();
            } else {
                int line = parser.line;
                List<String> fields = parser.fields();
                if (fields.size() > 1 || !fields.get(0).isBlank()) {
                    rows.add(new Row(line, fields));
                }
            }
        }
        return rows;
    }

    private void skipLine() {
        while (at < text.length() && !endsLine()) {
            at++;
        }
        passLineEnd();
    }

    private List<String> fields() {
        List<String> fields = new ArrayList<>();
        fields.add(field());
        while (at < text.length() && text.charAt(at) == ',') {
            at++;
            fields.add(field());
        }
        passLineEnd();
        return fields;
    }

    private String field() {
        if (at < text.length() && text.charAt(at) == '"') {
            return quoted();
        }
        int start = at;
        while (at < text.length() && text.charAt(at) != ',' && !endsLine()) {
            if (text.charAt(at) == '"') {
                throw new TableException(
                        name
                                + ", line "
                                + line
                                + ": a quotation mark within a field without"
                                + " quotation marks.");
            }
            at++;
        }
        return text.substring(start, at).strip();
    }

    private String quoted() {
        int begin = line;
        StringBuilder field = new StringBuilder();
        at++;
        while (at < text.length()) {
            char c = text.charAt(at++);
            if (c != '"') {
                field.append(c);
                line += c == '\n' ? 1 : 0;
            } else if (at < text.length() && text.charAt(at) == '"') {
                field.append('"');
                at++;
            } else if (at == text.length() || text.charAt(at) == ',' || endsLine()) {
                return field.toString();
            } else {
                throw new TableException(
                        name + ", line " + line + ": text after a closing quotation mark.");
            }
        }
        throw new TableException(
                name + ", line " + begin + ": the quotation mark opened here is never closed.");
    }

    private boolean endsLine() {
        return text.charAt(at) == '\n' || text.charAt(at) == '\r';
    }

    private void passLineEnd() {
        if (at < text.length() && text.charAt(at) == '\r') {
            at++;
        }
        if (at < text.length() && text.charAt(at) == '\n') {
            at++;
        }
        line++;
    }
}
