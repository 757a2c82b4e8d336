package org.skewback.desk.holding;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.skewback.desk.Problem;

/** The files of an issue, wherever they are kept; opens nothing that lies outside it. */
public interface Holding extends AutoCloseable {

    /** Most bytes that a record, a notebook or a page may have. */
    int LONGEST = 256 << 20;

    /**
     * Gives the paths of the files.
     *
     * @return names joined by /, sorted
     */
    Set<String> paths();

    /**
     * Says what is there and is no plain file, such as a link; nothing of it is opened.
     *
     * @return names as they are found
     */
    Set<String> refused();

    /**
     * Opens a file for reading.
     *
     * @param path one of the paths
     * @return its bytes
     * @throws IOException when it is none of them or cannot be read
     */
    InputStream open(String path) throws IOException;

    /**
     * Tells whether this is the PDF, which holds neither itself nor the pages for the screen.
     *
     * @return whether it is the PDF alone
     */
    boolean isPrinted();

    /**
     * Gives the PDF.
     *
     * @return its file, or null where there is none
     */
    @Nullable Path pdf();

    @Override
    void close() throws IOException;

    /**
     * Reads a file.
     *
     * @param path one of the paths
     * @param most most bytes that it may have
     * @return its bytes
     * @throws Problem when it has more
     * @throws IOException when it cannot be read
     */
    default byte[] read(String path, int most) throws IOException, Problem {
        try (InputStream in = open(path)) {
            byte[] bytes = in.readNBytes(most);
            if (bytes.length == most && in.read() >= 0) {
                throw new Problem(path + " is longer than " + most + " bytes");
            }
            return bytes;
        }
    }

    /**
     * Opens an issue.
     *
     * @param issue an issued folder, or the PDF of one
     * @return its files
     * @throws Problem when there is no such thing
     * @throws IOException when it cannot be read
     */
    static Holding of(Path issue) throws IOException, Problem {
        if (Files.isDirectory(issue)) {
            return new FolderHolding(issue);
        } else if (Files.isRegularFile(issue)) {
            return new PdfHolding(issue);
        }
        throw new Problem("there is no issued folder or PDF " + issue);
    }
}
