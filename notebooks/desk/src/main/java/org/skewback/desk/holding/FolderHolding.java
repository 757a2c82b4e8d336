package org.skewback.desk.holding;

import java.io.File;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.FileVisitOption;
import java.nio.file.FileVisitResult;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.nio.file.SimpleFileVisitor;
import java.nio.file.StandardOpenOption;
import java.nio.file.attribute.BasicFileAttributes;
import java.util.EnumSet;
import java.util.Set;
import java.util.TreeSet;
import org.jspecify.annotations.Nullable;
import org.skewback.desk.Problem;

/** An issued folder. Links in it are named and not followed. */
final class FolderHolding implements Holding {

    private static final int DEEPEST = 16;
    private static final int MOST = 100_000;

    private final Path folder;
    private final Set<String> paths = new TreeSet<>();
    private final Set<String> refused = new TreeSet<>();

    FolderHolding(Path folder) throws IOException, Problem {
        this.folder = folder;
        Files.walkFileTree(folder, EnumSet.noneOf(FileVisitOption.class), DEEPEST, new Lister());
        if (paths.size() + refused.size() > MOST) {
            throw new Problem(folder + " holds more than " + MOST + " files");
        }
    }

    private final class Lister extends SimpleFileVisitor<Path> {
        @Override
        public FileVisitResult visitFile(Path file, BasicFileAttributes attributes) {
            String path = folder.relativize(file).toString().replace(File.separatorChar, '/');
            // A folder arrives here where it lies too deep.
            (attributes.isRegularFile() ? paths : refused).add(path);
            return paths.size() + refused.size() > MOST
                    ? FileVisitResult.TERMINATE
                    : FileVisitResult.CONTINUE;
        }

        @Override
        public FileVisitResult visitFileFailed(Path file, IOException fault) {
            refused.add(folder.relativize(file).toString().replace(File.separatorChar, '/'));
            return FileVisitResult.CONTINUE;
        }
    }

    @Override
    public Set<String> paths() {
        return paths;
    }

    @Override
    public Set<String> refused() {
        return refused;
    }

    @Override
    public InputStream open(String path) throws IOException {
        if (!paths.contains(path)) {
            throw new IOException(path + " is none of the files of the issue");
        }
        return Files.newInputStream(
                folder.resolve(path), StandardOpenOption.READ, LinkOption.NOFOLLOW_LINKS);
    }

    @Override
    public boolean isPrinted() {
        return false;
    }

    @Override
    public @Nullable Path pdf() {
        return paths.contains("package.pdf") ? folder.resolve("package.pdf") : null;
    }

    @Override
    public void close() {
        // Nothing is held open between reads.
    }
}
