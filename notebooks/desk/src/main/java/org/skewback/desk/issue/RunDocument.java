package org.skewback.desk.issue;

import org.jspecify.annotations.Nullable;
import org.skewback.desk.notebook.Notebook;

/**
 * One notebook as run.
 *
 * @param slug name of its files in the issued package, such as {@code 06-form-of-the-rib}
 * @param title its first heading
 * @param notebook cells with their outputs
 * @param record JSON of the sheet's record, or null where the notebook kept no sheet
 */
public record RunDocument(String slug, String title, Notebook notebook, @Nullable String record) {}
