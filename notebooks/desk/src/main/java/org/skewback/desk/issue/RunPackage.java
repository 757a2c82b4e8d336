package org.skewback.desk.issue;

import java.util.List;
import java.util.Map;
import org.skewback.desk.checking.Checking;

/**
 * A package whose notebooks have all run from clean, ready to be rendered.
 *
 * @param info what the package says of itself
 * @param documents the notebooks as run, in reading order
 * @param environment versions of what they ran on, by name, in the order to print
 * @param checking what stands on the checker's side
 */
public record RunPackage(
        PackageInfo info,
        List<RunDocument> documents,
        Map<String, String> environment,
        Checking checking) {

    /** Keeps a copy of the list. */
    public RunPackage {
        documents = List.copyOf(documents);
    }

    /**
     * A package that has no checker's side.
     *
     * @param info what the package says of itself
     * @param documents the notebooks as run, in reading order
     * @param environment versions of what they ran on, by name, in the order to print
     */
    public RunPackage(
            PackageInfo info, List<RunDocument> documents, Map<String, String> environment) {
        this(info, documents, environment, Checking.NONE);
    }
}
