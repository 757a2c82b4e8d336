package org.skewback.desk.issue;

import java.io.IOException;
import java.nio.channels.FileChannel;
import java.nio.channels.FileLock;
import java.nio.channels.OverlappingFileLockException;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.List;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.skewback.desk.Problem;

/**
 * The place where a package is issued, held by one process at a time.
 *
 * <p>The new issue is built in a folder beside the place. To publish it, the earlier issue is moved
 * aside, the new one is moved in, and only then is the earlier one removed. Each of these is one
 * step of the file system, so after a crash the next {@link #open} knows where it was:
 *
 * <table>
 * <caption>What is found and what is done</caption>
 * <tr><th>place</th><th>aside</th><th>meaning</th><th>done</th></tr>
 * <tr><td>there</td><td>-</td><td>not begun, or finished</td><td>nothing</td></tr>
 * <tr><td>-</td><td>there</td><td>crashed before the new one was in</td><td>earlier moved back</td></tr>
 * <tr><td>there</td><td>there</td><td>crashed before the earlier one was removed</td><td>earlier
 * removed</td></tr>
 * </table>
 *
 * <p>What is left of the folder beside the place is removed in each case.
 */
final class IssuePlace implements AutoCloseable {

    /** Files that file managers leave in any folder that is looked at. */
    private static final Set<String> NOBODYS = Set.of(".DS_Store", "Thumbs.db", "desktop.ini");

    private static final int NAMED_AT_MOST = 5;

    private final Path place;
    private final Path staging;
    private final Path aside;
    private final FileMoves moves;
    private final FileChannel channel;

    private IssuePlace(Path to, String name, FileMoves moves, FileChannel channel) {
        this.place = to.resolve(name);
        this.staging = to.resolve("." + name + ".new");
        this.aside = to.resolve("." + name + ".earlier");
        this.moves = moves;
        this.channel = channel;
    }

    /**
     * Takes the place, ends what an earlier process left half done, and makes an empty folder to
     * build in.
     *
     * @param to folder of issued packages; made where it is missing
     * @param name name of the package
     * @param moves steps on folders
     * @return the place, to be closed
     * @throws Problem when another process holds it, when it holds something that no issue wrote, or
     *     when the file system refuses
     */
    static IssuePlace open(Path to, String name, FileMoves moves) throws Problem {
        try {
            Files.createDirectories(to);
            Path lock = to.resolve("." + name + ".lock");
            FileChannel channel =
                    FileChannel.open(lock, StandardOpenOption.CREATE, StandardOpenOption.WRITE);
            try {
                if (!locked(channel)) {
                    throw new Problem(
                            name
                                    + " is being issued to "
                                    + to
                                    + " by another run of this program; wait until that has ended");
                }
                IssuePlace place = new IssuePlace(to, name, moves, channel);
                place.recover();
                place.requireOurs();
                Files.createDirectory(place.staging);
                return place;
            } catch (Problem | IOException | RuntimeException | Error e) {
                channel.close();
                throw e;
            }
        } catch (IOException e) {
            throw Problem.of("cannot issue to " + to, e);
        }
    }

    private static boolean locked(FileChannel channel) throws IOException {
        try {
            // Held until the channel closes.
            @Nullable FileLock lock = channel.tryLock();
            return lock != null;
        } catch (OverlappingFileLockException e) {
            return false;
        }
    }

    private void recover() throws IOException {
        if (exists(aside)) {
            if (exists(place)) {
                moves.remove(aside);
            } else {
                moves.move(aside, place);
            }
        }
        if (exists(staging)) {
            moves.remove(staging);
        }
    }

    /** Refuses to replace anything but an issue, and nobody's own files are removed with one. */
    private void requireOurs() throws Problem {
        if (!exists(place)) {
            return;
        }
        Set<String> named = Set.of();
        if (Files.isDirectory(place, LinkOption.NOFOLLOW_LINKS)) {
            try {
                named = Manifest.named(place);
            } catch (IOException e) {
                throw Problem.of("cannot read the manifest of the earlier issue in " + place, e);
            }
        }
        if (named.isEmpty()) {
            throw new Problem(
                    place
                            + " is there already and is not an issued package, so it is left alone;"
                            + " move it away or issue to another folder with --to");
        }
        List<String> strangers;
        try {
            Set<String> known = named;
            strangers =
                    Manifest.paths(place).stream()
                            .filter(path -> !known.contains(path))
                            .filter(
                                    path ->
                                            !NOBODYS.contains(
                                                    path.substring(path.lastIndexOf('/') + 1)))
                            .toList();
        } catch (IOException e) {
            throw Problem.of("cannot look through the earlier issue in " + place, e);
        }
        if (!strangers.isEmpty()) {
            throw new Problem(
                    "the earlier issue in "
                            + place
                            + " holds files that no issue wrote and that would be lost: "
                            + String.join(", ", strangers.stream().limit(NAMED_AT_MOST).toList())
                            + (strangers.size() > NAMED_AT_MOST ? ", …" : "")
                            + ". Move them away first");
        }
    }

    private static boolean exists(Path path) {
        return Files.exists(path, LinkOption.NOFOLLOW_LINKS);
    }

    /** Gives the folder to build the new issue in. */
    Path staging() {
        return staging;
    }

    /**
     * Puts the new issue where the earlier one was.
     *
     * @return the folder of the issue
     * @throws Problem when the file system refuses; the earlier issue is then where it was
     */
    Path publish() throws Problem {
        requireOurs();
        try {
            moves.settle(staging);
            boolean replaces = exists(place);
            if (replaces) {
                moves.move(place, aside);
            }
            try {
                moves.move(staging, place);
            } catch (IOException e) {
                if (replaces) {
                    putBack();
                }
                throw e;
            }
            if (replaces) {
                removeEarlier();
            }
            return place;
        } catch (IOException e) {
            throw Problem.of("cannot move the new issue to " + place, e);
        }
    }

    private void putBack() throws Problem {
        try {
            moves.move(aside, place);
        } catch (IOException e) {
            throw Problem.of(
                    "cannot move the new issue to "
                            + place
                            + "; the earlier issue is whole in "
                            + aside
                            + " and the next issue brings it back",
                    e);
        }
    }

    private void removeEarlier() {
        try {
            moves.remove(aside);
        } catch (IOException e) {
            // The new issue is whole and in place; the next issue removes the rest of the old one.
        }
    }

    /** Removes what was not published and lets others issue. */
    @Override
    public void close() throws Problem {
        try (channel) {
            if (exists(staging)) {
                moves.remove(staging);
            }
        } catch (IOException e) {
            throw Problem.of("cannot remove " + staging, e);
        }
    }

    /** Lets go of the place and leaves all as it is, as the end of a process does. */
    void abandon() throws IOException {
        channel.close();
    }
}
