package org.skewback.desk.issue;

import java.util.regex.Pattern;

/** Text that was meant for a terminal. */
public final class TerminalText {

    /** Control sequences of ECMA-48, section 5.4, and the other control characters. */
    private static final Pattern CONTROLS =
            Pattern.compile("\\u001B\\[[0-?]*[ -/]*[@-~]|[\\p{Cntrl}&&[^\\n\\t]]");

    private TerminalText() {}

    /**
     * Gives the text without colours and without anything else that moves a terminal.
     *
     * @param text any text
     * @return its printable characters, line ends and tabs
     */
    public static String plain(String text) {
        return CONTROLS.matcher(text).replaceAll("");
    }
}
