package org.skewback.kernel.evaluation;

/**
 * Tells code from what only stands in it: comments, strings, characters and text blocks. The text
 * need not be complete or right.
 *
 * @see <a href="https://docs.oracle.com/javase/specs/jls/se17/html/jls-3.html">The Java Language
 *     Specification, Java SE 17, sections 3.7 and 3.10</a>
 */
final class CodeMask {

    private enum State {
        CODE,
        LINE_COMMENT,
        COMMENT,
        STRING,
        CHARACTER,
        TEXT_BLOCK
    }

    private final String text;
    private final boolean[] code;
    private State state = State.CODE;

    private CodeMask(String text) {
        this.text = text;
        this.code = new boolean[text.length()];
        for (int i = 0; i < text.length(); ) {
            State before = state;
            int step = step(i);
            code[i] = before == State.CODE && state == State.CODE;
            i += step;
        }
    }

    static CodeMask of(String text) {
        return new CodeMask(text);
    }

    /** Goes on at a position and gives how many characters were read. */
    private int step(int i) {
        char c = text.charAt(i);
        switch (state) {
            case CODE -> {
                if (text.startsWith("//", i)) {
                    state = State.LINE_COMMENT;
                } else if (text.startsWith("/*", i)) {
                    state = State.COMMENT;
                    return 2;
                } else if (text.startsWith("\"\"\"", i)) {
                    state = State.TEXT_BLOCK;
                    return 3;
                } else if (c == '"') {
                    state = State.STRING;
                } else if (c == '\'') {
                    state = State.CHARACTER;
                }
            }
            case LINE_COMMENT -> {
                if (c == '\n') {
                    state = State.CODE;
                }
            }
            case COMMENT -> {
                if (text.startsWith("*/", i)) {
                    state = State.CODE;
                    return 2;
                }
            }
            case TEXT_BLOCK -> {
                if (c == '\\') {
                    return 2;
                }
                if (text.startsWith("\"\"\"", i)) {
                    state = State.CODE;
                    return 3;
                }
            }
            case STRING, CHARACTER -> {
                if (c == '\\') {
                    return 2;
                }
                // A line end closes what the author forgot to close.
                if (c == '\n' || c == (state == State.STRING ? '"' : '\'')) {
                    state = State.CODE;
                }
            }
        }
        return 1;
    }

    /** Whether the character at a position is code; quotes and comment signs are not. */
    boolean isCode(int position) {
        return code[position];
    }

    /** Whether the text ends within a text block or a comment. */
    boolean endsInside() {
        return state == State.TEXT_BLOCK || state == State.COMMENT;
    }

    /** Braces, parentheses and brackets that are open at the end. */
    int depth() {
        int depth = 0;
        for (int i = 0; i < code.length; i++) {
            if (code[i]) {
                switch (text.charAt(i)) {
                    case '{', '(', '[' -> depth++;
                    case '}', ')', ']' -> depth--;
                    default -> {
                        // Nothing is opened or closed.
                    }
                }
            }
        }
        return Math.max(0, depth);
    }

    /** The last character of code before a position that is not blank, or 0 where there is none. */
    char before(int position) {
        for (int i = position - 1; i >= 0; i--) {
            if (code[i] && !Character.isWhitespace(text.charAt(i))) {
                return text.charAt(i);
            }
        }
        return 0;
    }
}
