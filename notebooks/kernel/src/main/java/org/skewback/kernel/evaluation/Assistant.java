package org.skewback.kernel.evaluation;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.TreeSet;
import jdk.jshell.DeclarationSnippet;
import jdk.jshell.MethodSnippet;
import jdk.jshell.Snippet;
import jdk.jshell.SourceCodeAnalysis;
import jdk.jshell.SourceCodeAnalysis.CompletionInfo;
import jdk.jshell.SourceCodeAnalysis.Documentation;
import jdk.jshell.TypeDeclSnippet;
import jdk.jshell.VarSnippet;

/** Answers what an editor asks about code that is being written. Runs nothing. */
public final class Assistant {

    /**
     * Whether code could be run.
     *
     * @param status {@code complete}, {@code incomplete} or {@code invalid}
     * @param indent blanks for the next line where it is incomplete
     */
    public record Completeness(String status, String indent) {}

    /**
     * What could stand at the cursor.
     *
     * @param matches texts that could stand between start and end
     * @param start where they begin
     * @param end where they end
     */
    public record Completions(List<String> matches, int start, int end) {}

    private static final String INDENT = "    ";

    private final JavaSession java;

    Assistant(JavaSession java) {
        this.java = java;
    }

    /**
     * Says whether code could be run as it stands.
     *
     * @param code text of a cell
     * @return whether it is complete
     */
    public Completeness completeness(String code) {
        String rest = Magic.part(code).java();
        SourceCodeAnalysis analysis = java.analysis();
        while (!rest.isBlank()) {
            CompletionInfo info = analysis.analyzeCompletion(rest);
            switch (info.completeness()) {
                case COMPLETE, COMPLETE_WITH_SEMI -> {
                    String remaining = info.remaining() == null ? "" : info.remaining();
                    if (remaining.length() >= rest.length()) {
                        return new Completeness("invalid", "");
                    }
                    rest = remaining;
                }
                case DEFINITELY_INCOMPLETE, CONSIDERED_INCOMPLETE -> {
                    return new Completeness("incomplete", INDENT.repeat(depth(code)));
                }
                case EMPTY -> {
                    return new Completeness("complete", "");
                }
                case UNKNOWN -> {
                    return new Completeness("invalid", "");
                }
            }
        }
        return new Completeness("complete", "");
    }

    /** Braces and brackets left open; those in texts and comments are not counted. */
    private static int depth(String code) {
        String bare =
                code.replaceAll("(?s)/\\*.*?\\*/", "")
                        .replaceAll("//[^\\n]*", "")
                        .replaceAll("\"(\\\\.|[^\"\\\\\\n])*\"|'(\\\\.|[^'\\\\\\n])+'", "");
        int depth = 0;
        for (int i = 0; i < bare.length(); i++) {
            char c = bare.charAt(i);
            if (c == '{' || c == '(' || c == '[') {
                depth++;
            } else if (c == '}' || c == ')' || c == ']') {
                depth--;
            }
        }
        return Math.max(0, depth);
    }

    /**
     * Finds what could stand at the cursor.
     *
     * @param code text of a cell
     * @param cursor position in UTF-16 units, 0 to the length of the text
     * @return the possibilities, perhaps none
     */
    public Completions completions(String code, int cursor) {
        String text = Magic.part(code).java();
        int begin = begin(text, cursor);
        int[] anchor = {0};
        String piece = text.substring(begin, cursor);
        List<String> matches = new ArrayList<>();
        java.analysis()
                .completionSuggestions(piece, piece.length(), anchor)
                .forEach(suggestion -> matches.add(suggestion.continuation()));
        List<String> distinct = List.copyOf(new TreeSet<>(matches));
        return new Completions(distinct, Math.min(cursor, begin + anchor[0]), cursor);
    }

    /**
     * Describes what stands at the cursor.
     *
     * @param code text of a cell
     * @param cursor position in UTF-16 units, 0 to the length of the text
     * @param full whether its documentation is wanted too
     * @return the description, empty where nothing is known
     */
    public Optional<String> inspection(String code, int cursor, boolean full) {
        String text = Magic.part(code).java();
        int end = cursor;
        while (end < text.length() && Character.isJavaIdentifierPart(text.charAt(end))) {
            end++;
        }
        int start = Math.min(cursor, text.length());
        while (start > 0 && Character.isJavaIdentifierPart(text.charAt(start - 1))) {
            start--;
        }
        String word = text.substring(start, end);
        String piece = text.substring(begin(text, start), end);
        Optional<String> own = declared(word);
        if (own.isPresent()) {
            return own;
        }
        // JShell describes a method only where its parameters are being written.
        for (String attempt : List.of(piece, piece + "(")) {
            List<Documentation> found =
                    java.analysis().documentation(attempt, attempt.length(), full);
            if (!found.isEmpty()) {
                return Optional.of(words(found));
            }
        }
        return Optional.empty();
    }

    private static String words(List<Documentation> found) {
        List<String> words = new ArrayList<>();
        for (Documentation documentation : found) {
            String javadoc = documentation.javadoc();
            words.add(
                    javadoc == null || javadoc.isBlank()
                            ? documentation.signature()
                            : documentation.signature() + "\n\n" + javadoc.strip());
        }
        return String.join("\n", words);
    }

    private Optional<String> declared(String word) {
        return java.shell()
                .snippets()
                .filter(snippet -> java.shell().status(snippet) == Snippet.Status.VALID)
                .filter(snippet -> snippet instanceof DeclarationSnippet d && d.name().equals(word))
                .map(Assistant::describe)
                .reduce((first, second) -> first + "\n" + second);
    }

    private static String describe(Snippet snippet) {
        if (snippet instanceof VarSnippet variable) {
            return variable.typeName() + " " + variable.name();
        }
        if (snippet instanceof MethodSnippet method) {
            String signature = method.signature();
            int result = signature.lastIndexOf(')') + 1;
            return signature.substring(result)
                    + " "
                    + method.name()
                    + signature.substring(0, result);
        }
        if (snippet instanceof TypeDeclSnippet type) {
            return type.source().lines().findFirst().orElse(type.name());
        }
        return snippet.source();
    }

    /** Where the piece of code that the cursor stands in begins. */
    private int begin(String text, int cursor) {
        int begin = 0;
        while (true) {
            String rest = text.substring(begin, cursor);
            CompletionInfo info = java.analysis().analyzeCompletion(rest);
            String remaining = info.remaining();
            if (!info.completeness().isComplete() || remaining == null || remaining.isBlank()) {
                return begin;
            }
            int next = cursor - remaining.length();
            if (next <= begin) {
                return begin;
            }
            begin = next;
        }
    }
}
