package org.skewback.desk.audit;

/**
 * What an issue says of itself.
 *
 * @param title title of the package
 * @param number document number
 * @param revision revision
 * @param status status in words
 * @param date date of the revision
 * @param program version of the program that issued it
 */
public record Identity(
        String title, String number, String revision, String status, String date, String program) {}
