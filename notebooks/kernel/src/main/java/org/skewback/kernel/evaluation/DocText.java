package org.skewback.kernel.evaluation;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Turns a documentation comment into plain text that can be read. */
final class DocText {

    private static final Pattern INLINE = Pattern.compile("\\{@(\\w+)\\s*([^{}]*)}");
    private static final Pattern BLOCK_TAG = Pattern.compile("(?m)^\\s*@(\\w+)\\s*");
    private static final Pattern PARAGRAPH =
            Pattern.compile("(?i)\\s*</?(p|pre|ul|ol|h\\d|dl|table|tr)\\b[^>]*>\\s*");
    private static final Pattern ITEM = Pattern.compile("(?i)\\s*<(li|dt|dd)\\b[^>]*>\\s*");
    private static final Pattern TAG = Pattern.compile("</?[A-Za-z][^>]*>");

    private static final Pattern TYPE_PARAMETER = Pattern.compile("\\A<(\\w+)>");

    private static final String TARGET = "^[^\\s(]+(\\([^)]*\\))?\\s+(?=\\S)";

    private DocText() {}

    /** All of a comment, with its tags as words. */
    static String whole(String comment) {
        Matcher tag = BLOCK_TAG.matcher(comment);
        int end = tag.find() ? tag.start() : comment.length();
        List<String> parts = new ArrayList<>();
        parts.add(plain(comment.substring(0, end)));
        int from = end;
        while (from < comment.length()) {
            Matcher next = BLOCK_TAG.matcher(comment);
            next.find(from);
            String name = next.group(1);
            int begin = next.end();
            int until = next.find() ? next.start() : comment.length();
            String raw = comment.substring(begin, until);
            Matcher typed = TYPE_PARAMETER.matcher(raw);
            boolean ofType = typed.find();
            // In brackets it would be taken for a tag of HTML.
            String text = plain(ofType ? typed.replaceFirst("$1") : raw).replaceAll("\\s+", " ");
            parts.add(
                    switch (name) {
                        case "param" ->
                                (ofType ? "type parameter " : "parameter ")
                                        + text.replaceFirst(" ", ": ");
                        case "return" -> "returns " + text;
                        case "throws", "exception" -> "throws " + text.replaceFirst(" ", ": ");
                        case "apiNote" -> "note: " + text;
                        case "implSpec", "implNote" -> "how it is done: " + text;
                        default -> name + " " + text;
                    });
            from = until;
        }
        return String.join("\n", parts).strip();
    }

    /** The first paragraph of a comment. */
    static String beginning(String comment) {
        Matcher tag = BLOCK_TAG.matcher(comment);
        String text = plain(tag.find() ? comment.substring(0, tag.start()) : comment);
        int end = text.indexOf("\n\n");
        return end < 0 ? text : text.substring(0, end);
    }

    private static String plain(String html) {
        String text = html.replaceAll("(?m)^[ \\t]+", "");
        text = replace(INLINE, text);
        // Once more, for a tag within a tag.
        text = replace(INLINE, text);
        text = PARAGRAPH.matcher(text).replaceAll("\n\n");
        text = ITEM.matcher(text).replaceAll("\n- ");
        text = TAG.matcher(text).replaceAll("");
        text =
                text.replace("&lt;", "<")
                        .replace("&gt;", ">")
                        .replace("&nbsp;", " ")
                        .replace("&amp;", "&");
        return text.replaceAll("\n{3,}", "\n\n").strip();
    }

    private static String replace(Pattern inline, String text) {
        return inline.matcher(text)
                .replaceAll(
                        found -> {
                            String words = found.group(2).strip();
                            boolean link = found.group(1).startsWith("link");
                            // A link names its target first and then, perhaps, what to show.
                            String shown =
                                    link
                                            ? words.replaceFirst(TARGET, "")
                                                    .replaceFirst("^#", "")
                                                    .replace('#', '.')
                                            : words;
                            return Matcher.quoteReplacement(shown);
                        });
    }
}
