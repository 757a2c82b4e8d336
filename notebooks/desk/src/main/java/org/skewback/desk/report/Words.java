package org.skewback.desk.report;

import java.util.Locale;
import org.skewback.desk.issue.TerminalText;

/** How reports say things. */
public final class Words {

    private Words() {}

    /**
     * Writes a relative change.
     *
     * @param relative change over the earlier value
     * @return such as {@code +0.32 %} or {@code −1.2e-7}; empty where it means nothing
     */
    public static String relative(double relative) {
        if (!Double.isFinite(relative)) {
            return "";
        }
        double size = Math.abs(relative);
        String sign = relative < 0 ? "\u2212" : "+";
        return size >= 1e-5
                ? sign + String.format(Locale.ROOT, "%.3g", size * 100) + "\u00A0%"
                : sign + String.format(Locale.ROOT, "%.1e", size);
    }

    /**
     * Makes text of a stranger's fit to stand in a line on a terminal.
     *
     * @param text any text
     * @return one line without anything that moves a terminal
     */
    public static String line(String text) {
        return TerminalText.plain(text).replace('\n', ' ').replace('\t', ' ');
    }

    /**
     * Counts things in words.
     *
     * @param number how many
     * @param thing what, in the singular
     * @return such as {@code 1 sheet} or {@code 3 sheets}
     */
    public static String counted(long number, String thing) {
        return number + " " + thing + (number == 1 ? "" : "s");
    }
}
