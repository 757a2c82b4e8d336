package org.skewback.desk.render;

import java.io.IOException;
import java.nio.file.Path;
import org.skewback.desk.issue.RunPackage;

/** Makes a readable form of a package that has run. */
public interface PackageRenderer {

    /**
     * Writes this form into a folder that nobody reads yet, and into which other forms may be written at the
     * same time.
     *
     * @param run the package as run
     * @param folder an existing folder to write into
     * @throws IOException when a file cannot be written
     */
    void render(RunPackage run, Path folder) throws IOException;
}
