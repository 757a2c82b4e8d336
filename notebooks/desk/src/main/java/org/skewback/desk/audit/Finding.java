package org.skewback.desk.audit;

import org.jspecify.annotations.Nullable;

/**
 * Something that an audit has to say.
 *
 * @param verdict what it means for the whole; {@link Verdict#REPRODUCED} for a remark
 * @param subject the part that found it
 * @param place file or sheet that is meant
 * @param words what was found
 * @param change the quantity in question, or null where it is none
 */
public record Finding(
        Verdict verdict, Subject subject, String place, String words, @Nullable Change change) {

    /** Makes a finding that is about no single quantity. */
    static Finding of(Verdict verdict, Subject subject, String place, String words) {
        return new Finding(verdict, subject, place, words, null);
    }
}
