package org.skewback.sheet;

import org.jspecify.annotations.Nullable;

/**
 * A block with its place in a sheet.
 *
 * @param id identifier, unique in the sheet, such as {@code b7}
 * @param cell identifier of the notebook cell that said it, or null where nobody told
 * @param block what was said
 * @param stale whether it rests on something that has changed since and was not worked out again
 */
public record Entry(String id, @Nullable String cell, Block block, boolean stale) {

    /**
     * Gives the verdict of a check.
     *
     * @return stale, passed or failed
     * @throws IllegalStateException when the block is no check
     */
    public Verdict verdict() {
        if (!(block instanceof Block.Checked checked)) {
            throw new IllegalStateException("block " + id + " is no check");
        }
        if (stale) {
            return Verdict.STALE;
        }
        return checked.check().isMet() ? Verdict.PASSED : Verdict.FAILED;
    }
}
