package org.skewback.desk.issue;

import java.time.LocalDate;
import java.util.List;

/**
 * What a package says of itself in its {@code package.toml}.
 *
 * @param name short name, also the name of the issued folder, such as {@code gorge-crossing}
 * @param title title on the cover
 * @param number document number
 * @param revision revision letter or number
 * @param status status in words, such as {@code preliminary}
 * @param date date of the revision, given by the author, never taken from the clock
 * @param preparedBy who prepared it
 * @param checkedBy who checked it; empty where nobody has
 * @param summary one paragraph for the cover
 * @param cautions what a reader must know before using any number
 * @param order notebooks in reading order, each a path relative to the package folder
 * @param basis what it states as the basis of the calculations
 */
public record PackageInfo(
        String name,
        String title,
        String number,
        String revision,
        String status,
        LocalDate date,
        String preparedBy,
        String checkedBy,
        String summary,
        List<String> cautions,
        List<String> order,
        Basis basis) {

    /** Keeps copies of the lists. */
    public PackageInfo {
        cautions = List.copyOf(cautions);
        order = List.copyOf(order);
    }
}
