package org.skewback.figure;

import java.util.List;

/** Kinds of line; no two have the same weight and dash, so that they stay apart without colour. */
public enum LineStyle {
    /** Outline of what is cut: heavy, full. */
    CUT,
    /** Outline of what is seen: medium, full. */
    MEMBER,
    /** Help line: thin, full, grey. */
    THIN,
    /** Axis or centre line: thin, dash and dot, grey. */
    CENTRE,
    /** Edge that is hidden: thin, short dashes. */
    HIDDEN,
    /** Result of a calculation: heaviest, dash and dot. */
    RESULT,
    /** First line compared: heavy, full. */
    FIRST,
    /** Second line compared: long dashes. */
    SECOND,
    /** Third line compared: dots. */
    THIRD,
    /** Fourth line compared: dash and two dots. */
    FOURTH,
    /** Limit or bound: thin, long dashes wide apart. */
    LIMIT;

    Pen pen() {
        return switch (this) {
            case CUT -> Pen.full(1.35, Ink.BLACK);
            case MEMBER -> Pen.full(0.75, Ink.BLACK);
            case THIN -> Pen.full(0.5, Ink.GREY);
            case CENTRE -> new Pen(0.5, Ink.GREY, List.of(9.0, 2.0, 1.2, 2.0));
            case HIDDEN -> new Pen(0.55, Ink.BLACK, List.of(2.6, 1.6));
            case RESULT -> new Pen(1.65, Ink.BLUE, List.of(9.0, 2.5, 1.5, 2.5));
            case FIRST -> Pen.full(1.5, Ink.BLUE);
            case SECOND -> new Pen(1.25, Ink.RUST, List.of(7.0, 2.6));
            case THIRD -> new Pen(1.3, Ink.GREEN, List.of(1.3, 1.9));
            case FOURTH -> new Pen(1.0, Ink.BLACK, List.of(6.5, 1.8, 1.2, 1.8, 1.2, 1.8));
            case LIMIT -> new Pen(0.7, Ink.BLACK, List.of(12.0, 4.0));
        };
    }

    /** Colour of the words that name the line: dark enough to read. */
    Ink words() {
        Ink ink = pen().ink();
        return ink == Ink.GREEN ? Ink.BLACK : ink;
    }
}
