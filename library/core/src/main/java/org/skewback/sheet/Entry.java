package org.skewback.sheet;

import java.util.List;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/**
 * A block with its place in a sheet.
 *
 * @param id identifier, unique in the sheet, such as {@code b7}
 * @param cell identifier of the notebook cell that said it, or null where nobody told
 * @param block what was said
 * @param stale whether it rests on something that has changed since and was not worked out again
 * @param changes what has changed, where it is stale; empty where nobody told
 */
public record Entry(
        String id, @Nullable String cell, Block block, boolean stale, List<Change> changes) {

    private static final int FEW = 4;

    /**
     * Keeps a copy of the list.
     *
     * @param id identifier, unique in the sheet, such as {@code b7}
     * @param cell identifier of the notebook cell that said it, or null where nobody told
     * @param block what was said
     * @param stale whether it rests on something that has changed since and was not worked out again
     * @param changes what has changed, where it is stale; empty where nobody told
     */
    public Entry {
        changes = List.copyOf(changes);
    }

    /** A block that rests on nothing that has changed. */
    static Entry fresh(String id, @Nullable String cell, Block block) {
        return new Entry(id, cell, block, false, List.of());
    }

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

    /**
     * Says why the block is stale.
     *
     * @return such as {@code g changed from 148 kN/m to 150 kN/m}, the first few of many; empty where
     *     it is not stale
     */
    public String because() {
        if (!stale) {
            return "";
        }
        // A number that was said again with the same value explains nothing beside one that moved.
        List<Change> moved = changes.stream().filter(Change::isOfValue).toList();
        List<Change> told = moved.isEmpty() ? changes : moved;
        if (told.isEmpty()) {
            return "it rests on something that has changed and was not worked out again";
        }
        String words =
                told.stream().limit(FEW).map(Change::inWords).collect(Collectors.joining(", "));
        int more = told.size() - FEW;
        return more <= 0 ? words : words + " and " + more + " more";
    }
}
