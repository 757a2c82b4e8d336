package org.skewback.kernel.evaluation;

import org.jspecify.annotations.Nullable;

/**
 * A cell to be run.
 *
 * @param run number of this run, above 0, never used twice
 * @param number execution count to name the cell by in errors
 * @param id identifier of the cell in its notebook, empty where the front end gave none, null where
 *     the code belongs to the cell that ran before it
 * @param code its text
 */
public record Cell(int run, int number, @Nullable String id, String code) {}
