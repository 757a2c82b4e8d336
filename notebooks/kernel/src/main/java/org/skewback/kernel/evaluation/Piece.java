package org.skewback.kernel.evaluation;

import java.util.ArrayList;
import java.util.List;
import jdk.jshell.SourceCodeAnalysis;
import jdk.jshell.SourceCodeAnalysis.Completeness;
import jdk.jshell.SourceCodeAnalysis.CompletionInfo;

/**
 * One declaration, statement or expression of a cell.
 *
 * @param source its text, from its first character that is not blank
 * @param offset where it begins in the cell
 * @param broken whether the parser already knows that it is not Java
 */
record Piece(String source, int offset, boolean broken) {

    /** Parts the Java of a cell into pieces. */
    static List<Piece> of(String java, SourceCodeAnalysis analysis) {
        List<Piece> pieces = new ArrayList<>();
        String rest = java;
        while (!rest.isBlank()) {
            CompletionInfo info = analysis.analyzeCompletion(rest);
            Completeness completeness = info.completeness();
            if (completeness == Completeness.EMPTY) {
                break;
            }
            int begin = java.length() - rest.length();
            // Code that can't be parsed counts as complete for JShell, which asks only whether more
            // of it could help.
            if (!completeness.isComplete()
                    || completeness == Completeness.UNKNOWN
                    || info.source() == null) {
                pieces.add(stripped(rest, begin, true));
                break;
            }
            String source = info.source();
            if (!source.isBlank() && !source.strip().equals(";")) {
                pieces.add(stripped(source, begin, false));
            }
            String remaining = info.remaining() == null ? "" : info.remaining();
            if (remaining.length() >= rest.length()) {
                break;
            }
            rest = remaining;
        }
        return pieces;
    }

    private static Piece stripped(String source, int begin, boolean broken) {
        String stripped = source.stripLeading();
        return new Piece(
                stripped.stripTrailing(), begin + source.length() - stripped.length(), broken);
    }
}
