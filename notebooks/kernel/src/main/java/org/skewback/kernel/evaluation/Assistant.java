package org.skewback.kernel.evaluation;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.concurrent.TimeUnit;
import jdk.jshell.DeclarationSnippet;
import jdk.jshell.MethodSnippet;
import jdk.jshell.Snippet;
import jdk.jshell.SourceCodeAnalysis;
import jdk.jshell.SourceCodeAnalysis.CompletionInfo;
import jdk.jshell.SourceCodeAnalysis.Documentation;
import jdk.jshell.SourceCodeAnalysis.Suggestion;
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
     * One text that could stand at the cursor.
     *
     * @param text the text
     * @param type what it is: {@code function}, {@code class}, {@code module}, {@code instance},
     *     {@code property} or {@code keyword}
     * @param signature its parameters and type, empty where that is not known
     */
    public record Match(String text, String type, String signature) {}

    /**
     * What could stand at the cursor.
     *
     * @param matches texts that could stand between start and end, those of the type that is wanted
     *     there first
     * @param start where they begin
     * @param end where they end
     */
    public record Completions(List<Match> matches, int start, int end) {}

    private static final long SIGNATURES_NANOS = TimeUnit.MILLISECONDS.toNanos(150);
    private static final Set<String> KEYWORDS =
            Set.of(
                    ("abstract assert boolean break byte case catch char class continue default do"
                                    + " double else enum extends final finally float for if"
                                    + " implements import instanceof int interface long new null"
                                    + " private protected public record return sealed short static"
                                    + " super switch synchronized this throw throws true false try"
                                    + " var void while yield")
                            .split(" "));
    private static final String INDENT = "    ";

    private final JavaSession java;
    private final Collection<Path> classPath;

    Assistant(JavaSession java, Collection<Path> classPath) {
        this.java = java;
        this.classPath = List.copyOf(classPath);
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
                    return new Completeness("incomplete", indent(code));
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

    /** Blanks for the line after an incomplete text; what stands in a text block is left alone. */
    private static String indent(String code) {
        CodeMask mask = CodeMask.of(code);
        return mask.endsInside() ? "" : INDENT.repeat(mask.depth());
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
        String piece = text.substring(begin, cursor);
        int[] anchor = {0};
        List<Suggestion> suggestions =
                java.analysis().completionSuggestions(piece, piece.length(), anchor);
        int start = begin + anchor[0];
        if (suggestions.isEmpty() && begin > 0) {
            // What the same cell declares further up is not known yet, unless it is read with it.
            String block = blockBefore(text, begin);
            String with = block + piece;
            suggestions = java.analysis().completionSuggestions(with, with.length(), anchor);
            start = begin + Math.max(0, anchor[0] - block.length());
        }
        start = Math.min(cursor, suggestions.isEmpty() ? wordStart(text, cursor) : start);
        Map<String, Boolean> texts = new TreeMap<>();
        suggestions.forEach(
                s -> texts.merge(s.continuation(), s.matchesType(), Boolean::logicalOr));
        String prefix = text.substring(start, cursor);
        boolean member = start > 0 && text.charAt(start - 1) == '.';
        if (!prefix.isEmpty() && !member) {
            KEYWORDS.stream()
                    .filter(word -> word.startsWith(prefix))
                    .forEach(word -> texts.putIfAbsent(word, false));
        }
        List<String> ordered = new ArrayList<>(texts.keySet());
        ordered.sort(Comparator.comparing(match -> !texts.getOrDefault(match, false)));
        return new Completions(typed(ordered, text.substring(begin, start), member), start, cursor);
    }

    private List<Match> typed(List<String> texts, String before, boolean member) {
        long deadline = System.nanoTime() + SIGNATURES_NANOS;
        List<Match> matches = new ArrayList<>();
        for (String text : texts) {
            String type = type(text, member);
            String signature = "";
            if (type.equals("function") && System.nanoTime() < deadline) {
                String name = text.replaceFirst("\\(\\)?$", "(");
                String call = before + name;
                signature =
                        java.analysis().documentation(call, call.length(), false).stream()
                                .map(Documentation::signature)
                                .findFirst()
                                .orElse("");
            } else if (type.equals("instance")) {
                signature = declared(text).orElse("");
            }
            matches.add(new Match(text, type, signature));
        }
        return matches;
    }

    private String type(String text, boolean member) {
        if (text.endsWith("(") || text.endsWith("()")) {
            return "function";
        }
        if (text.endsWith(".")) {
            return "module";
        }
        if (!member && KEYWORDS.contains(text)) {
            return "keyword";
        }
        if (!text.isEmpty() && Character.isUpperCase(text.charAt(0))) {
            return text.equals(text.toUpperCase(Locale.ROOT)) && text.length() > 1
                    ? "property"
                    : "class";
        }
        if (member) {
            return "property";
        }
        return declared(text).isPresent() ? "instance" : "module";
    }

    /** The variables and classes that stand before a position, opened as a block. */
    private String blockBefore(String text, int position) {
        StringBuilder block = new StringBuilder("{ ");
        for (Piece piece : Piece.of(text.substring(0, position), java.analysis())) {
            boolean local =
                    java.analysis().sourceToSnippets(piece.source()).stream()
                            .allMatch(
                                    s ->
                                            s.kind() == Snippet.Kind.VAR
                                                    || s.kind() == Snippet.Kind.TYPE_DECL);
            if (local) {
                block.append(piece.source()).append(" ");
            }
        }
        return block.toString();
    }

    private static int wordStart(String text, int position) {
        int start = Math.min(position, text.length());
        while (start > 0 && Character.isJavaIdentifierPart(text.charAt(start - 1))) {
            start--;
        }
        return start;
    }

    private static int wordEnd(String text, int position) {
        int end = position;
        while (end < text.length() && Character.isJavaIdentifierPart(text.charAt(end))) {
            end++;
        }
        return end;
    }

    /**
     * Describes what stands at the cursor or, where nothing does, the call it stands in or what
     * stands before it.
     *
     * @param code text of a cell
     * @param cursor position in UTF-16 units, 0 to the length of the text
     * @param full whether all of its documentation is wanted, not only its beginning
     * @return the description, empty where nothing is known
     */
    public Optional<String> inspection(String code, int cursor, boolean full) {
        String text = Magic.part(code).java();
        Optional<String> found = describeAt(text, cursor, full);
        if (found.isPresent()) {
            return found;
        }
        // A position behind a closed call, or between words, speaks of the word before it.
        CodeMask mask = CodeMask.of(text);
        for (int i = Math.min(cursor, text.length()) - 1; i >= 0; i--) {
            char c = text.charAt(i);
            if (c == '\n' || c == ';') {
                break;
            }
            if (mask.isCode(i) && Character.isJavaIdentifierStart(c)) {
                found = describeAt(text, i, full);
                if (found.isPresent()) {
                    return found;
                }
                i = wordStart(text, i);
            }
        }
        return Optional.empty();
    }

    private Optional<String> describeAt(String text, int cursor, boolean full) {
        int end = wordEnd(text, cursor);
        int start = wordStart(text, cursor);
        String word = text.substring(start, end);
        int begin = begin(text, start);
        String piece = text.substring(begin, end);
        boolean member = start > 0 && text.charAt(start - 1) == '.';
        Optional<String> own = member ? Optional.empty() : declared(word);
        if (own.isPresent()) {
            return own;
        }
        List<String> attempts = new ArrayList<>(List.of(piece, piece + "("));
        if (begin > 0) {
            String block = blockBefore(text, begin);
            attempts.add(block + piece);
            attempts.add(block + piece + "(");
        }
        // JShell describes a method only where its parameters are being written.
        for (String attempt : attempts) {
            List<Documentation> found =
                    java.analysis().documentation(attempt, attempt.length(), true);
            if (!found.isEmpty()) {
                return Optional.of(words(found, full));
            }
        }
        return Optional.empty();
    }

    private String words(List<Documentation> found, boolean full) {
        List<String> words = new ArrayList<>();
        for (Documentation documentation : found) {
            String signature = documentation.signature();
            String javadoc = documentation.javadoc();
            if (javadoc == null || javadoc.isBlank()) {
                javadoc = SourceDocs.find(signature, classPath).orElse("");
            }
            String text = full ? DocText.whole(javadoc) : DocText.beginning(javadoc);
            words.add(text.isBlank() ? signature : signature + "\n\n" + text);
        }
        return String.join(full ? "\n\n" : "\n", words);
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
