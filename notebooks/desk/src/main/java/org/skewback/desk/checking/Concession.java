package org.skewback.desk.checking;

import java.time.LocalDate;

/**
 * The permission to let a check stand that is failed or stale.
 *
 * @param sheet number of the sheet
 * @param check title of the check
 * @param reason why it may stand
 * @param by who conceded it
 * @param until last day on which it holds
 */
public record Concession(String sheet, String check, String reason, String by, LocalDate until) {

    /**
     * Tells whether it holds on a day.
     *
     * @param day a day
     * @return whether the day is not after the last one
     */
    public boolean holdsOn(LocalDate day) {
        return !day.isAfter(until);
    }
}
