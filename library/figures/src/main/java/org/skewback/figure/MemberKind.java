package org.skewback.figure;

import java.util.List;
import org.skewback.frame.Bar;
import org.skewback.frame.BeamColumn;
import org.skewback.frame.Member;
import org.skewback.frame.SpringLink;

/** Kinds of member and how each is drawn; no two have the same weight and dash. */
enum MemberKind {
    BEAM("beam-column"),
    BAR("bar"),
    TENSION("bar for tension only"),
    COMPRESSION("bar for compression only"),
    LINK("spring link"),
    OTHER("cable");

    private final String words;

    MemberKind(String words) {
        this.words = words;
    }

    static MemberKind of(Member member) {
        if (member instanceof BeamColumn) {
            return BEAM;
        } else if (member instanceof Bar bar) {
            return switch (bar.carries()) {
                case BOTH -> BAR;
                case TENSION -> TENSION;
                case COMPRESSION -> COMPRESSION;
            };
        }
        return member instanceof SpringLink ? LINK : OTHER;
    }

    String words() {
        return words;
    }

    Pen pen() {
        return switch (this) {
            case BEAM -> Pen.full(1.2, Ink.BLACK);
            case BAR -> Pen.full(0.6, Ink.BLACK);
            case TENSION -> new Pen(0.85, Ink.BLACK, List.of(7.0, 2.2));
            case COMPRESSION -> new Pen(1.1, Ink.BLACK, List.of(1.3, 1.9));
            case LINK -> Pen.full(0.7, Ink.BLACK);
            case OTHER -> new Pen(0.9, Ink.BLACK, List.of(9.0, 1.6, 1.2, 1.6));
        };
    }
}
