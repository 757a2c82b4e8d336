package org.skewback.desk.audit;

import java.util.ArrayList;
import java.util.List;

/** Follows an expected text through a found one and says where they part. */
final class TextMatch {

    /** So many characters are told apart from others by themselves. */
    private static final int TELLING = 12;

    /** A text that was changed goes on within so many characters. */
    private static final int FARTHEST = 20_000;

    private static final int FARTHEST_PIECES = 400;

    private final List<ExpectedText.Piece> pieces;
    private final String found;
    private final List<Mismatch> mismatches = new ArrayList<>();

    private TextMatch(List<ExpectedText.Piece> pieces, String found) {
        this.pieces = pieces;
        this.found = found;
    }

    /**
     * A place where the texts part.
     *
     * @param owner the block that it begins in
     * @param expected what was expected
     * @param found what is there
     */
    record Mismatch(String owner, String expected, String found) {}

    /**
     * Compares two texts.
     *
     * @param pieces what is expected
     * @param found what is there; its white space does not count
     * @return the places where they part, in order; none where they are the same
     */
    static List<Mismatch> of(List<ExpectedText.Piece> pieces, String found) {
        TextMatch match = new TextMatch(pieces, ExpectedText.bare(found));
        match.follow();
        return match.mismatches;
    }

    private void follow() {
        int at = 0;
        int piece = 0;
        while (piece < pieces.size()) {
            int after = after(piece, at);
            if (after >= 0) {
                at = after;
                piece++;
                continue;
            }
            int next = piece + 1;
            int there = -1;
            int last = Math.min(pieces.size(), piece + FARTHEST_PIECES);
            for (; next < last; next++) {
                there = find(next, at);
                if (there >= 0) {
                    break;
                }
            }
            if (there < 0) {
                next = pieces.size();
                there = found.length();
            }
            mismatches.add(
                    new Mismatch(
                            pieces.get(piece).owner(),
                            text(piece, next),
                            found.substring(at, there)));
            at = there;
            piece = next;
        }
        if (at < found.length()) {
            mismatches.add(new Mismatch("", "", found.substring(at)));
        }
    }

    private String text(int from, int to) {
        StringBuilder text = new StringBuilder();
        pieces.subList(from, to).forEach(piece -> text.append(piece.text()));
        return text.toString();
    }

    /** Finds where the pieces from one on go on, or −1. */
    private int find(int piece, int from) {
        StringBuilder telling = new StringBuilder();
        for (int i = piece; i < pieces.size() && telling.length() < TELLING; i++) {
            if (pieces.get(i).text().indexOf(ExpectedText.PAGE_NUMBER) >= 0) {
                break;
            }
            telling.append(pieces.get(i).text());
        }
        boolean atEnd = piece + telling.length() >= pieces.size();
        if (telling.length() < TELLING && !atEnd) {
            return -1;
        }
        int limit = Math.min(found.length(), from + FARTHEST);
        int there = found.substring(from, limit).indexOf(telling.toString());
        return there < 0 ? -1 : from + there;
    }

    /** Where the found text goes on after a piece, or −1 where the piece is not there. */
    private int after(int piece, int at) {
        String text = pieces.get(piece).text();
        if (text.indexOf(ExpectedText.PAGE_NUMBER) < 0) {
            return found.startsWith(text, at) ? at + text.length() : -1;
        }
        // What comes next may begin with a digit too.
        String next = piece + 1 < pieces.size() ? pieces.get(piece + 1).text() : "";
        for (int end = at; end < found.length() && Character.isDigit(found.charAt(end)); end++) {
            if (found.startsWith(next, end + 1)) {
                return end + 1;
            }
        }
        return -1;
    }
}
