package org.skewback.desk.audit;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;

/**
 * Takes a content stream apart into its tokens (ISO 32000-1, 7.2 and 7.3). Numbers are passed over
 * unless asked for: a page is mostly numbers, and what it writes does not depend on them.
 */
final class ContentTokens {

    /** What a token is. */
    enum Kind {
        /** An operator, {@code true}, {@code false} or {@code null}. */
        WORD,
        /** A name, without its solidus. */
        NAME,
        /** A number. */
        NUMBER,
        /** A string, written in either way. */
        STRING,
        /** The start or end of an array or a dictionary. */
        BRACKET,
        /** There is no more. */
        END
    }

    private final byte[] bytes;
    private int at;
    private int start;
    private byte[] string = {};

    ContentTokens(byte[] bytes) {
        this.bytes = bytes;
    }

    /** The token as it is written, of a name with what is escaped in it. */
    String text() {
        String text = new String(bytes, start, at - start, StandardCharsets.ISO_8859_1);
        return text.startsWith("/") ? unescaped(text.substring(1)) : text;
    }

    /** The bytes of a string. */
    byte[] string() {
        return string;
    }

    /**
     * Goes on to the next token.
     *
     * @throws IOException when a string has no end
     */
    Kind next() throws IOException {
        skip();
        start = at;
        if (at >= bytes.length) {
            return Kind.END;
        }
        byte first = bytes[at++];
        switch (first) {
            case '/' -> {
                regular();
                return Kind.NAME;
            }
            case '(' -> {
                literal();
                return Kind.STRING;
            }
            case '<', '>' -> {
                if (at < bytes.length && bytes[at] == first) {
                    at++;
                    return Kind.BRACKET;
                }
                if (first == '>') {
                    throw new IOException("a hexadecimal string ends that did not begin");
                }
                hexadecimal();
                return Kind.STRING;
            }
            case '[', ']', '{', '}', ')' -> {
                return Kind.BRACKET;
            }
            default -> {
                regular();
                return isNumeric(first) ? Kind.NUMBER : Kind.WORD;
            }
        }
    }

    private static boolean isNumeric(byte c) {
        return (c >= '0' && c <= '9') || c == '-' || c == '.' || c == '+';
    }

    private void skip() {
        for (; at < bytes.length; at++) {
            if (bytes[at] == '%') {
                while (at < bytes.length && bytes[at] != '\n' && bytes[at] != '\r') {
                    at++;
                }
            } else if (!isSpace(bytes[at])) {
                return;
            }
        }
    }

    private static boolean isSpace(byte c) {
        return c == ' ' || c == '\n' || c == '\r' || c == '\t' || c == '\f' || c == 0;
    }

    private void regular() {
        while (at < bytes.length && !isSpace(bytes[at])) {
            switch (bytes[at]) {
                case '(', ')', '<', '>', '[', ']', '{', '}', '/', '%' -> {
                    return;
                }
                default -> at++;
            }
        }
    }

    private void hexadecimal() throws IOException {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        int high = -1;
        while (bytes(at) != '>') {
            byte c = bytes[at++];
            if (isSpace(c)) {
                continue;
            }
            int digit = Character.digit(c, 16);
            if (digit < 0) {
                throw new IOException("a hexadecimal string holds what is no digit");
            }
            if (high < 0) {
                high = digit;
            } else {
                out.write(high << 4 | digit);
                high = -1;
            }
        }
        at++;
        if (high >= 0) {
            out.write(high << 4);
        }
        string = out.toByteArray();
    }

    private void literal() throws IOException {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        int depth = 1;
        while (true) {
            byte c = bytes(at++);
            if (c == ')' && --depth == 0) {
                break;
            }
            if (c == '(') {
                depth++;
            }
            if (c == '\\') {
                escaped(out);
            } else if (c == '\r') {
                out.write('\n');
                at += bytes(at) == '\n' ? 1 : 0;
            } else {
                out.write(c);
            }
        }
        string = out.toByteArray();
    }

    /** ISO 32000-1, table 3; a reverse solidus before any other character stands for nothing. */
    private void escaped(ByteArrayOutputStream out) throws IOException {
        byte c = bytes(at++);
        switch (c) {
            case 'n' -> out.write('\n');
            case 'r' -> out.write('\r');
            case 't' -> out.write('\t');
            case 'b' -> out.write('\b');
            case 'f' -> out.write('\f');
            case '\n' -> {
                // The string goes on in the next line.
            }
            case '\r' -> at += bytes(at) == '\n' ? 1 : 0;
            case '0', '1', '2', '3', '4', '5', '6', '7' -> {
                int code = c - '0';
                for (int i = 0; i < 2 && bytes(at) >= '0' && bytes(at) <= '7'; i++) {
                    code = code * 8 + bytes[at++] - '0';
                }
                out.write(code);
            }
            default -> out.write(c);
        }
    }

    private byte bytes(int position) throws IOException {
        if (position >= bytes.length) {
            throw new IOException("a string has no end");
        }
        return bytes[position];
    }

    private static String unescaped(String name) {
        if (name.indexOf('#') < 0) {
            return name;
        }
        StringBuilder text = new StringBuilder();
        for (int i = 0; i < name.length(); i++) {
            String code = name.substring(i, Math.min(name.length(), i + 3));
            if (code.matches("#[0-9A-Fa-f]{2}")) {
                text.append((char) Integer.parseInt(code.substring(1), 16));
                i += 2;
            } else {
                text.append(name.charAt(i));
            }
        }
        return text.toString();
    }
}
