package org.skewback.desk.checking;

import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/**
 * What stands on the checker's side of a package.
 *
 * @param numbers the checker's own numbers
 * @param remarks comments, in order
 * @param concessions permissions to let a check stand
 * @param signatories who may sign, by role
 * @param signatures signatures there are, by role
 * @param files the files that all this was read from, by path in the issue
 */
public record Checking(
        List<CheckerNumber> numbers,
        List<Remark> remarks,
        List<Concession> concessions,
        Map<String, Signatory> signatories,
        Map<String, Signature> signatures,
        Map<String, byte[]> files) {

    /** Folder in the package folder and in the issue. */
    public static final String FOLDER = "checking/";

    /** The checker's own numbers. */
    public static final String NUMBERS = FOLDER + "numbers.csv";

    /** Comments with answers. */
    public static final String REMARKS = FOLDER + "comments.toml";

    /** Concessions. */
    public static final String CONCESSIONS = FOLDER + "concessions.toml";

    /** Who may sign. */
    public static final String SIGNATORIES = FOLDER + "signatories.toml";

    /** Where signatures lie. */
    public static final String SIGNATURES = FOLDER + "signatures/";

    /** The manifest over which the signatures are. */
    public static final String SIGNED = SIGNATURES + "manifest.json";

    /** The roles that sign, in order. */
    public static final List<String> ROLES = List.of("prepared", "checked", "approved");

    /** Nothing at all. */
    public static final Checking NONE =
            new Checking(List.of(), List.of(), List.of(), Map.of(), Map.of(), Map.of());

    /** Keeps copies. */
    public Checking {
        numbers = List.copyOf(numbers);
        remarks = List.copyOf(remarks);
        concessions = List.copyOf(concessions);
        signatories = Map.copyOf(signatories);
        signatures = Map.copyOf(signatures);
        files = new TreeMap<>(files);
    }

    /**
     * Tells whether nothing is there.
     *
     * @return whether no file is
     */
    public boolean isNone() {
        return files.isEmpty();
    }

    /**
     * Gives the path of a signature.
     *
     * @param role prepared, checked or approved
     * @return its path in the issue
     */
    public static String signaturePath(String role) {
        return SIGNATURES + role + ".toml";
    }

    /**
     * Tells whether a file is part of the checker's side.
     *
     * @param path its path in the issue
     * @return whether it is one of the few that are known
     */
    public static boolean isKnown(String path) {
        return path.equals(NUMBERS)
                || path.equals(REMARKS)
                || path.equals(CONCESSIONS)
                || path.equals(SIGNATORIES)
                || path.equals(SIGNED)
                || ROLES.stream().anyMatch(role -> path.equals(signaturePath(role)));
    }
}
