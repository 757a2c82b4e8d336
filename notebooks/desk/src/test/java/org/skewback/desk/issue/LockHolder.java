package org.skewback.desk.issue;

import java.nio.file.Path;

/** Another process that holds the place of a package until its standard input ends. */
public final class LockHolder {

    private LockHolder() {}

    /**
     * Holds the place.
     *
     * @param words folder of issued packages and name of the package
     * @throws Exception when anything goes wrong
     */
    public static void main(String[] words) throws Exception {
        try (IssuePlace place = IssuePlace.open(Path.of(words[0]), words[1], FileMoves.REAL)) {
            System.out.println(place.staging());
            System.out.flush();
            while (System.in.read() >= 0) {}
        }
    }
}
