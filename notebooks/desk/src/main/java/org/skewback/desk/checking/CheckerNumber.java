package org.skewback.desk.checking;

import org.skewback.quantity.Quantity;

/**
 * A number that the checker found independently.
 *
 * @param sheet number of the sheet
 * @param quantity symbol of the author's quantity there
 * @param value the checker's value
 * @param tolerance largest difference that counts as agreement, over the checker's value
 * @param method how the checker found it
 */
public record CheckerNumber(
        String sheet, String quantity, Quantity value, double tolerance, String method) {

    /**
     * Tells whether the author's value agrees.
     *
     * @param author the author's value
     * @return whether it has the same dimension and lies within the tolerance
     */
    public boolean agrees(Quantity author) {
        return author.dimension().equals(value.dimension())
                && Math.abs(author.si() - value.si()) <= tolerance * Math.abs(value.si());
    }
}
