package org.skewback.kernel.evaluation;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import jdk.jshell.DeclarationSnippet;
import jdk.jshell.Diag;
import jdk.jshell.EvalException;
import jdk.jshell.JShell;
import jdk.jshell.JShellException;
import jdk.jshell.UnresolvedReferenceException;
import jdk.jshell.spi.ExecutionControl.UserException;
import org.jspecify.annotations.Nullable;

/** Puts errors into the notebook's terms: cells and lines instead of JShell's wrappers. */
final class CellErrors {

    /** Where a piece of code stands. */
    record Place(int cell, int line) {
        static final Place NONE = new Place(0, 0);
    }

    private static final Pattern WRAPPER = Pattern.compile("(REPL\\.)?\\$JShell\\$\\w+[.$]");
    private static final Pattern WRAPPED =
            Pattern.compile("REPL\\.\\$JShell\\$(\\d+)[A-Z0-9_]*(g\\d+)?");
    private static final String WRAPPING_PACKAGE = "REPL.";
    private static final int MOST_FRAMES = 12;

    private final Map<String, Place> places = new ConcurrentHashMap<>();

    /** Remembers where the snippet of an identifier stands. */
    void place(String snippet, Place place) {
        places.put(snippet, place);
    }

    /** Where the snippet of an identifier stands. */
    Place place(String snippet) {
        return places.getOrDefault(snippet, Place.NONE);
    }

    /** The identifier of the snippet that a class of the worker was made for, or nothing. */
    static String identifier(String className) {
        Matcher wrapped = WRAPPED.matcher(className);
        if (!wrapped.lookingAt()) {
            return "";
        }
        String mark = wrapped.group(2);
        return wrapped.group(1) + (mark == null || mark.equals("g0") ? "" : mark);
    }

    /** Words for what the compiler rejects. */
    static CellResult.Failed compile(Cell cell, String java, int offset, List<Diag> diagnostics) {
        List<String> traceback = new ArrayList<>();
        String first = null;
        int firstLine = 0;
        for (Diag diagnostic : diagnostics) {
            if (!diagnostic.isError()) {
                continue;
            }
            int at = (int) Math.max(0, diagnostic.getPosition());
            at = Math.min(java.length(), offset + at);
            int line = line(java, at);
            String message = message(diagnostic);
            if (first == null) {
                first = message.lines().findFirst().orElse("");
                firstLine = line;
            } else {
                traceback.add("");
            }
            traceback.add("cell " + cell.number() + ", line " + line + ": " + message);
            int begin = java.lastIndexOf('\n', at - 1) + 1;
            int end = java.indexOf('\n', at);
            String text = java.substring(begin, end < 0 ? java.length() : end);
            traceback.add("    " + text);
            traceback.add("    " + blank(text, at - begin) + "^");
        }
        if (first == null) {
            first = "this is not Java that can be run";
            firstLine = line(java, offset);
            traceback.add("cell " + cell.number() + ", line " + firstLine + ": " + first);
        }
        return new CellResult.Failed(
                "CompilationError", "line " + firstLine + ": " + first, traceback);
    }

    /** What the compiler has against a declaration, in brackets; empty where it says nothing. */
    static String reason(Stream<Diag> diagnostics) {
        return diagnostics
                .filter(Diag::isError)
                .findFirst()
                .map(diagnostic -> " (" + message(diagnostic).replaceAll("\\s+", " ") + ")")
                .orElse("");
    }

    // Tabs stay tabs, so that the caret stands below its column whatever their width.
    private static String blank(String text, int columns) {
        StringBuilder blank = new StringBuilder();
        for (int i = 0; i < columns; i++) {
            blank.append(i < text.length() && text.charAt(i) == '\t' ? '\t' : ' ');
        }
        return blank.toString();
    }

    private static String message(Diag diagnostic) {
        List<String> lines = new ArrayList<>();
        for (String line : diagnostic.getMessage(Locale.ROOT).lines().toList()) {
            String plain = WRAPPER.matcher(line).replaceAll("");
            if (!plain.matches("\\s*location:\\s+class\\s*(\\$JShell\\$\\w+)?\\s*")) {
                lines.add(plain);
            }
        }
        return String.join("\n    ", lines);
    }

    /** Line, from 1, of a position in a text. */
    static int line(String text, int position) {
        int line = 1;
        for (int i = 0; i < position; i++) {
            if (text.charAt(i) == '\n') {
                line++;
            }
        }
        return line;
    }

    /** Words for what a cell throws. */
    CellResult.Failed thrown(JShellException exception, Cell cell, int line, JShell shell) {
        if (exception instanceof EvalException thrown) {
            List<String> traceback = new ArrayList<>();
            String name = name(thrown);
            String message = message(thrown);
            traceback.add(head(thrown));
            trace(thrown.getStackTrace(), traceback);
            Throwable cause = thrown.getCause();
            while (cause instanceof EvalException inner) {
                traceback.add("caused by " + head(inner));
                trace(inner.getStackTrace(), traceback);
                cause = inner.getCause();
            }
            return new CellResult.Failed(name, message, traceback);
        }
        String message = "the cell uses a declaration that is not complete";
        if (exception instanceof UnresolvedReferenceException unresolved) {
            DeclarationSnippet used = unresolved.getSnippet();
            List<String> missing = shell.unresolvedDependencies(used).toList();
            message =
                    "`"
                            + used.source().lines().findFirst().orElse("")
                            + (missing.isEmpty()
                                    ? "` no longer fits what it uses, which has been declared anew"
                                            + reason(shell.diagnostics(used))
                                    : "` uses what has not been declared yet: "
                                            + String.join(", ", missing));
        }
        return new CellResult.Failed(
                "UnresolvedReference",
                message,
                List.of("cell " + cell.number() + ", line " + line + ": " + message));
    }

    /** Words for something beside the cells, such as a thread of theirs, that has failed. */
    String failed(String what, UserException exception) {
        List<String> lines = new ArrayList<>();
        String before = what + " failed: ";
        Throwable failed = exception;
        while (failed instanceof UserException one) {
            String message = one.getMessage() == null ? "" : ": " + one.getMessage();
            lines.add(
                    WRAPPER.matcher(before + name(one.causeExceptionClass()) + message)
                            .replaceAll(""));
            trace(one.getStackTrace(), lines);
            before = "caused by ";
            failed = one.getCause();
        }
        return String.join("\n", lines) + "\n";
    }

    private static String name(EvalException exception) {
        return name(String.valueOf(exception.getExceptionClassName()));
    }

    private static String name(String className) {
        String name = className;
        name = WRAPPER.matcher(name).replaceAll("");
        // The kernel's own errors are told by their short names; the long ones say nothing.
        return name.startsWith("org.skewback.kernel.worker.")
                ? name.substring(name.lastIndexOf('.') + 1).replaceFirst(".*\\$", "")
                : name;
    }

    private static String head(EvalException exception) {
        String message = message(exception);
        return message.isEmpty() ? name(exception) : name(exception) + ": " + message;
    }

    private static String message(EvalException exception) {
        String message = exception.getMessage();
        return message == null ? "" : WRAPPER.matcher(message).replaceAll("");
    }

    private void trace(StackTraceElement[] stack, List<String> traceback) {
        List<String> frames = new ArrayList<>();
        String last = "";
        int repeated = 0;
        for (StackTraceElement frame : stack) {
            String text = frame(frame);
            if (text == null) {
                continue;
            }
            if (text.equals(last)) {
                repeated++;
                continue;
            }
            addRepeated(frames, repeated);
            repeated = 0;
            frames.add(text);
            last = text;
        }
        addRepeated(frames, repeated);
        if (frames.size() <= MOST_FRAMES) {
            traceback.addAll(frames);
            return;
        }
        int tail = MOST_FRAMES / 3;
        traceback.addAll(frames.subList(0, MOST_FRAMES - tail));
        traceback.add("    … " + (frames.size() - MOST_FRAMES) + " more");
        traceback.addAll(frames.subList(frames.size() - tail, frames.size()));
    }

    private static void addRepeated(List<String> frames, int times) {
        if (times > 0) {
            frames.add("    … the same again, " + times + " times or more");
        }
    }

    private @Nullable String frame(StackTraceElement frame) {
        String file = frame.getFileName() == null ? "" : frame.getFileName();
        Place place = file.startsWith("#") ? places.get(file.substring(1)) : null;
        if (place != null) {
            int line = place.line + Math.max(1, frame.getLineNumber()) - 1;
            String where = "cell " + place.cell + ", line " + line;
            String type = WRAPPER.matcher(frame.getClassName()).replaceAll("");
            String method = frame.getMethodName();
            boolean top = method.isEmpty() || method.startsWith("do_it$");
            if (top) {
                return "    at " + where;
            }
            String name = method.equals("<init>") ? "new " + type : type + "." + method;
            return "    at " + (type.isEmpty() ? method : name) + " (" + where + ")";
        }
        String type = frame.getClassName();
        String wrapped = identifier(type);
        if (!wrapped.isEmpty()) {
            // Only JShell knows the line, and it tells it for what the cell itself throws.
            Place cell = places.get(wrapped);
            return cell == null ? null : "    at cell " + cell.cell;
        }
        if (type.startsWith(WRAPPING_PACKAGE)
                || type.startsWith("org.skewback.kernel.")
                || type.startsWith("jdk.internal.")
                || type.startsWith("java.lang.reflect.")
                || type.startsWith("java.lang.invoke.")) {
            return null;
        }
        String where =
                file.isEmpty() || file.equals("null")
                        ? ""
                        : frame.getLineNumber() > 0
                                ? " (" + file + ":" + frame.getLineNumber() + ")"
                                : " (" + file + ")";
        return "    at " + type + "." + frame.getMethodName() + where;
    }
}
