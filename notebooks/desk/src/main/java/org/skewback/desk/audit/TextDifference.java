package org.skewback.desk.audit;

import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Where two texts part.
 *
 * @param expected words of the first there
 * @param found words of the second there
 */
record TextDifference(String expected, String found) {

    private static final int AROUND = 24;
    private static final int LONGEST = 120;
    private static final Pattern NUMBERS = Pattern.compile("[0-9]+");

    /** Finds the first and the last place where texts that are not equal part. */
    static TextDifference of(String expected, String found) {
        int start = 0;
        int shorter = Math.min(expected.length(), found.length());
        while (start < shorter && expected.charAt(start) == found.charAt(start)) {
            start++;
        }
        int end = 0;
        while (end < shorter - start
                && expected.charAt(expected.length() - 1 - end)
                        == found.charAt(found.length() - 1 - end)) {
            end++;
        }
        return new TextDifference(cut(expected, start, end), cut(found, start, end));
    }

    private static String cut(String text, int start, int end) {
        int from = start;
        while (from > 0 && start - from < AROUND && text.charAt(from - 1) != ' ') {
            from--;
        }
        int to = text.length() - end;
        while (to < text.length()
                && to - (text.length() - end) < AROUND
                && text.charAt(to) != ' ') {
            to++;
        }
        String shown = text.substring(from, to).strip();
        return shown.length() <= LONGEST ? shown : shown.substring(0, LONGEST) + "…";
    }

    /** Tells whether two texts hold the same digits in the same order. */
    static boolean isOfWordsOnly(String expected, String found) {
        return digits(expected).equals(digits(found));
    }

    private static String digits(String text) {
        StringBuilder digits = new StringBuilder();
        Matcher matcher = NUMBERS.matcher(text);
        while (matcher.find()) {
            digits.append(matcher.group()).append(' ');
        }
        return digits.toString();
    }

    /** Says it in words. */
    String inWords() {
        return "shows " + said(found) + ", the record gives " + said(expected);
    }

    private static String said(String text) {
        return text.isEmpty() ? "nothing" : "\"" + text + "\"";
    }
}
