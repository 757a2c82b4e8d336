package org.skewback.kernel.evaluation;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A line of a cell that is an order to the kernel.
 *
 * @param name its name, without the percent sign
 * @param argument the rest of the line
 * @param line its line in the cell, from 1
 */
record Magic(String name, String argument, int line) {

    private static final Pattern LINE =
            Pattern.compile("^%{1,2}([A-Za-z]+)(?:[ \\t]+(.*?))?[ \\t\\r]*$");

    // An expression before them may lack its semicolon; of other words the kernel cannot know
    // whether they are variables behind a remainder operator.
    private static final Set<String> KNOWN = Set.of("maven", "jars", "classpath");

    /**
     * A cell without its magics.
     *
     * @param magics the magics in order
     * @param java the cell with blanks in place of each magic, so that lines and positions stay
     */
    record Parted(List<Magic> magics, String java) {}

    /** Parts a cell. */
    static Parted part(String code) {
        CodeMask mask = CodeMask.of(code);
        StringBuilder java = new StringBuilder(code);
        List<Magic> magics = new ArrayList<>();
        int number = 1;
        for (int begin = 0; begin < code.length(); number++) {
            int end = code.indexOf('\n', begin);
            end = end < 0 ? code.length() : end;
            Matcher matcher = LINE.matcher(code.substring(begin, end));
            // What stands in a text block or a comment is no order.
            if (mask.isCode(begin) && matcher.matches()) {
                String name = matcher.group(1);
                if (KNOWN.contains(name) || beginsAnew(mask, begin)) {
                    String argument = matcher.group(2) == null ? "" : matcher.group(2);
                    magics.add(new Magic(name, argument, number));
                    java.replace(begin, end, " ".repeat(end - begin));
                    // An argument may hold quotes or comment signs that are none of Java's.
                    mask = CodeMask.of(java.toString());
                }
            }
            begin = end + 1;
        }
        return new Parted(List.copyOf(magics), java.toString());
    }

    private static boolean beginsAnew(CodeMask mask, int position) {
        char before = mask.before(position);
        return before == 0 || before == ';' || before == '}';
    }
}
