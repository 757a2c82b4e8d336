package org.skewback.desk.issue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.File;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.security.DigestInputStream;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.ArrayList;
import java.util.HexFormat;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.skewback.desk.Json;

/**
 * The list of what was issued: the package, the software it ran on, and each file with its size and
 * its SHA-256 (FIPS 180-4), sorted by path. It tells whether an issue is still as it was issued; it
 * does not tell by whom.
 */
public final class Manifest {

    /** Name of the file in the issued folder. */
    public static final String FILE = "manifest.json";

    static final String FORMAT = "skewback-manifest";
    static final int EDITION = 3;

    /** What a manifest is written in that has no basis, so that older readers read it too. */
    static final int WITHOUT_BASIS = 2;

    /** Folders with what the pages are made from; the PDF holds them too. */
    private static final List<String> CONTENT = List.of("records/", "notebooks/", "checking/");

    private Manifest() {}

    /**
     * Writes down what a folder holds.
     *
     * @param folder the folder to be issued, without a manifest yet
     * @param info what the package says of itself
     * @param environment versions of what it ran on
     * @return the manifest's text
     * @throws IOException when a file cannot be read
     */
    static String of(Path folder, PackageInfo info, Map<String, String> environment)
            throws IOException {
        return of(folder, paths(folder), info, environment);
    }

    /**
     * Lists the files of a folder from which pages are made: records, notebooks, and what the
     * checker added.
     *
     * @param folder a folder to be issued
     * @return their paths, sorted
     * @throws IOException when the folder cannot be looked through
     */
    public static List<String> content(Path folder) throws IOException {
        return paths(folder).stream().filter(Manifest::isContent).toList();
    }

    /**
     * Tells whether a file is one from which pages are made.
     *
     * @param path its path in the issue
     * @return whether it is a record, a notebook, or something that the checker added
     */
    public static boolean isContent(String path) {
        return CONTENT.stream().anyMatch(path::startsWith);
    }

    /**
     * Writes down some files of a folder.
     *
     * @param folder the folder
     * @param paths paths of the files in it, sorted
     * @param info what the package says of itself
     * @param environment versions of what it ran on
     * @return the manifest's text
     * @throws IOException when a file cannot be read
     */
    public static String of(
            Path folder, List<String> paths, PackageInfo info, Map<String, String> environment)
            throws IOException {
        List<IssuedManifest.File> files = new ArrayList<>();
        for (String path : paths) {
            Path file = folder.resolve(path);
            files.add(new IssuedManifest.File(path, Files.size(file), sha256(file)));
        }
        return text(files, info, environment);
    }

    /**
     * Writes down files.
     *
     * @param files the files, sorted by path
     * @param info what the package says of itself
     * @param environment versions of what it ran on
     * @return the manifest's text
     */
    public static String text(
            List<IssuedManifest.File> files, PackageInfo info, Map<String, String> environment) {
        ObjectNode root = JsonNodeFactory.instance.objectNode();
        root.put("format", FORMAT);
        root.put("edition", info.basis().isEmpty() ? WITHOUT_BASIS : EDITION);
        ObjectNode of = root.putObject("package");
        of.put("name", info.name());
        of.put("title", info.title());
        of.put("number", info.number());
        of.put("revision", info.revision());
        of.put("status", info.status());
        of.put("date", info.date().toString());
        of.put("preparedBy", info.preparedBy());
        of.put("checkedBy", info.checkedBy());
        of.put("summary", info.summary());
        info.cautions().forEach(of.putArray("cautions")::add);
        info.order().forEach(of.putArray("order")::add);
        if (!info.basis().isEmpty()) {
            ObjectNode basis = of.putObject("basis");
            info.basis().standards().forEach(basis.putArray("standards")::add);
            info.basis().factors().forEach(basis.putArray("factors")::add);
            info.basis().units().forEach(basis.putArray("units")::add);
            info.basis().signs().forEach(basis.putArray("signs")::add);
            info.basis().values().forEach(basis.putArray("values")::add);
        }
        ObjectNode software = root.putObject("software");
        environment.forEach(software::put);
        ArrayNode listed = root.putArray("files");
        for (IssuedManifest.File file : files) {
            ObjectNode entry = listed.addObject();
            entry.put("path", file.path());
            entry.put("size", file.size());
            entry.put("sha256", file.sha256());
        }
        return Json.page(root);
    }

    /**
     * Lists the files that a manifest names.
     *
     * @param folder an issued folder
     * @return their paths and the manifest's own; empty where the folder has no manifest of ours
     * @throws IOException when the manifest cannot be read
     */
    static Set<String> named(Path folder) throws IOException {
        Path file = folder.resolve(FILE);
        Set<String> named = new TreeSet<>();
        if (!Files.isRegularFile(file, LinkOption.NOFOLLOW_LINKS)) {
            return named;
        }
        JsonNode root = Json.read(Files.readAllBytes(file));
        if (root.path("format").asText("").equals(FORMAT)) {
            named.add(FILE);
            for (JsonNode entry : root.path("files")) {
                named.add(entry.path("path").asText(""));
            }
        }
        return named;
    }

    /** Lists all files of a folder by path, with / between names on every system, sorted. */
    static List<String> paths(Path folder) throws IOException {
        try (Stream<Path> walk = Files.walk(folder)) {
            return walk.filter(path -> !Files.isDirectory(path, LinkOption.NOFOLLOW_LINKS))
                    .map(
                            path ->
                                    folder.relativize(path)
                                            .toString()
                                            .replace(File.separatorChar, '/'))
                    .sorted()
                    .collect(Collectors.toList());
        }
    }

    private static String sha256(Path file) throws IOException {
        try (InputStream in = Files.newInputStream(file)) {
            return sha256(in);
        }
    }

    /**
     * Gives the digest of a stream.
     *
     * @param stream read to its end
     * @return SHA-256 in hexadecimal
     * @throws IOException when it cannot be read
     */
    public static String sha256(InputStream stream) throws IOException {
        try {
            MessageDigest digest = MessageDigest.getInstance("SHA-256");
            try (InputStream in = new DigestInputStream(stream, digest)) {
                in.transferTo(OutputStream.nullOutputStream());
            }
            return HexFormat.of().formatHex(digest.digest());
        } catch (NoSuchAlgorithmException e) {
            // Every Java platform must have SHA-256 (java.security.MessageDigest, class
            // description).
            throw new IllegalStateException(e);
        }
    }
}
