package org.skewback.desk.issue;

import java.io.IOException;
import java.nio.channels.FileChannel;
import java.nio.file.FileVisitResult;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.SimpleFileVisitor;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.nio.file.attribute.BasicFileAttributes;
import org.jspecify.annotations.Nullable;

/** The few steps on folders that an issue's move into place is made of. */
interface FileMoves {

    /** Moves a folder to a name that is free, on the same file system, in one step. */
    void move(Path from, Path to) throws IOException;

    /** Removes a folder and all in it; a link is removed, not followed. */
    void remove(Path folder) throws IOException;

    /** Returns when all in a folder has reached the disk. */
    void settle(Path folder) throws IOException;

    /** The steps as the file system does them. */
    FileMoves REAL =
            new FileMoves() {
                @Override
                public void move(Path from, Path to) throws IOException {
                    Files.move(from, to, StandardCopyOption.ATOMIC_MOVE);
                    @Nullable Path parent = to.getParent();
                    if (parent != null) {
                        settleFolder(parent);
                    }
                }

                @Override
                public void remove(Path folder) throws IOException {
                    Files.walkFileTree(
                            folder,
                            new SimpleFileVisitor<>() {
                                @Override
                                public FileVisitResult visitFile(
                                        Path file, BasicFileAttributes attributes)
                                        throws IOException {
                                    Files.delete(file);
                                    return FileVisitResult.CONTINUE;
                                }

                                @Override
                                public FileVisitResult postVisitDirectory(
                                        Path dir, @Nullable IOException fault) throws IOException {
                                    if (fault != null) {
                                        throw fault;
                                    }
                                    Files.delete(dir);
                                    return FileVisitResult.CONTINUE;
                                }
                            });
                }

                @Override
                public void settle(Path folder) throws IOException {
                    Files.walkFileTree(
                            folder,
                            new SimpleFileVisitor<>() {
                                @Override
                                public FileVisitResult visitFile(
                                        Path file, BasicFileAttributes attributes)
                                        throws IOException {
                                    try (FileChannel channel =
                                            FileChannel.open(file, StandardOpenOption.WRITE)) {
                                        channel.force(true);
                                    }
                                    return FileVisitResult.CONTINUE;
                                }

                                @Override
                                public FileVisitResult postVisitDirectory(
                                        Path dir, @Nullable IOException fault) {
                                    settleFolder(dir);
                                    return FileVisitResult.CONTINUE;
                                }
                            });
                }
            };

    /** Makes the names in a folder reach the disk, where the system lets a folder be opened. */
    private static void settleFolder(Path folder) {
        try (FileChannel channel = FileChannel.open(folder, StandardOpenOption.READ)) {
            channel.force(true);
        } catch (IOException e) {
            // Some systems do not open folders; there the order of renames is theirs to keep.
        }
    }
}
