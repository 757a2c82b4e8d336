package org.skewback.desk.issue;

import com.fasterxml.jackson.databind.JsonNode;
import java.io.IOException;
import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.regex.Pattern;
import org.skewback.desk.Json;
import org.skewback.desk.Problem;

/**
 * A manifest as read from an issue, which may come from a stranger.
 *
 * @param info what the package says of itself
 * @param software versions of what it ran on, by name, in order
 * @param files what was issued, without the manifest itself
 */
public record IssuedManifest(PackageInfo info, Map<String, String> software, List<File> files) {

    /** Most bytes that a manifest may have. */
    public static final int LONGEST = 16 << 20;

    private static final int MOST_FILES = 100_000;
    private static final int LONGEST_PATH = 400;
    private static final Pattern SHA256 = Pattern.compile("[0-9a-f]{64}");
    private static final Pattern NAME = Pattern.compile("[^\\\\/:*?\"<>|\\p{Cntrl}]+");

    /**
     * A file of an issue.
     *
     * @param path its path in the issue, with / between names
     * @param size its bytes
     * @param sha256 SHA-256 of its bytes, in hexadecimal
     */
    public record File(String path, long size, String sha256) {}

    /** Keeps copies. */
    public IssuedManifest {
        software = new LinkedHashMap<>(software);
        files = List.copyOf(files);
    }

    /**
     * Reads a manifest.
     *
     * @param bytes its text, in UTF-8
     * @return its content
     * @throws Problem when it is no manifest of an edition known here, or names a path that leads
     *     out of the issue
     */
    public static IssuedManifest read(byte[] bytes) throws Problem {
        JsonNode root;
        try {
            root = Json.read(bytes);
        } catch (IOException e) {
            throw new Problem("the manifest is not JSON: " + Json.fault(e), e);
        }
        if (!root.path("format").asText("").equals(Manifest.FORMAT)) {
            throw new Problem("the manifest does not state the format " + Manifest.FORMAT);
        }
        int edition = root.path("edition").asInt(0);
        if (edition < Manifest.WITHOUT_BASIS || edition > Manifest.EDITION) {
            throw new Problem(
                    "the manifest is of edition "
                            + root.path("edition")
                            + "; this program reads editions "
                            + Manifest.WITHOUT_BASIS
                            + " and "
                            + Manifest.EDITION);
        }
        Map<String, String> software = new LinkedHashMap<>();
        for (Map.Entry<String, JsonNode> entry : object(root, "software").properties()) {
            software.put(entry.getKey(), text(object(root, "software"), entry.getKey()));
        }
        return new IssuedManifest(info(object(root, "package")), software, files(root));
    }

    private static PackageInfo info(JsonNode of) throws Problem {
        LocalDate date;
        try {
            date = LocalDate.parse(text(of, "date"));
        } catch (DateTimeParseException e) {
            throw new Problem("the manifest has the date \"" + text(of, "date") + "\"", e);
        }
        PackageInfo info =
                new PackageInfo(
                        text(of, "name"),
                        text(of, "title"),
                        text(of, "number"),
                        text(of, "revision"),
                        text(of, "status"),
                        date,
                        text(of, "preparedBy"),
                        text(of, "checkedBy"),
                        text(of, "summary"),
                        texts(of, "cautions"),
                        texts(of, "order"),
                        basis(of));
        Set<String> slugs = new LinkedHashSet<>();
        for (String entry : info.order()) {
            String slug = PackageReader.slug(entry);
            if (!PackageReader.isName(slug) || !slugs.add(slug)) {
                throw new Problem("the manifest orders a notebook \"" + entry + "\"");
            }
        }
        return info;
    }

    private static Basis basis(JsonNode of) throws Problem {
        if (!of.has("basis")) {
            return Basis.NONE;
        }
        JsonNode basis = object(of, "basis");
        return new Basis(
                texts(basis, "standards"),
                texts(basis, "factors"),
                texts(basis, "units"),
                texts(basis, "signs"),
                texts(basis, "values"));
    }

    private static List<File> files(JsonNode root) throws Problem {
        JsonNode listed = root.path("files");
        if (!listed.isArray() || listed.size() > MOST_FILES) {
            throw new Problem(
                    "the manifest lists no files, or more than " + MOST_FILES + ", at \"files\"");
        }
        List<File> files = new ArrayList<>();
        Set<String> seen = new LinkedHashSet<>();
        for (JsonNode entry : listed) {
            String path = text(entry, "path");
            if (!isInside(path)) {
                throw new Problem(
                        "the manifest names \"" + path + "\", which is no path inside an issue");
            }
            if (!seen.add(path)) {
                throw new Problem("the manifest names " + path + " twice");
            }
            JsonNode size = entry.path("size");
            String sha256 = text(entry, "sha256");
            if (!size.canConvertToLong()
                    || !size.isIntegralNumber()
                    || size.longValue() < 0
                    || !SHA256.matcher(sha256).matches()) {
                throw new Problem("the manifest states no size and SHA-256 of " + path);
            }
            files.add(new File(path, size.longValue(), sha256));
        }
        return files;
    }

    /**
     * Tells whether a path stays inside the folder it is resolved in, on every system.
     *
     * @param path any text
     * @return whether it is names joined by /, none of them {@code .} or {@code ..}
     */
    public static boolean isInside(String path) {
        if (path.isEmpty() || path.length() > LONGEST_PATH) {
            return false;
        }
        for (String name : path.split("/", -1)) {
            if (!NAME.matcher(name).matches() || name.equals(".") || name.equals("..")) {
                return false;
            }
        }
        return true;
    }

    /**
     * Gives the names of the documents' files, in reading order.
     *
     * @return names without folder and ending
     */
    public List<String> slugs() {
        return info.order().stream().map(PackageReader::slug).toList();
    }

    private static JsonNode object(JsonNode of, String key) throws Problem {
        JsonNode value = of.path(key);
        if (!value.isObject()) {
            throw new Problem("the manifest has no object \"" + key + "\"");
        }
        return value;
    }

    private static String text(JsonNode of, String key) throws Problem {
        JsonNode value = of.path(key);
        if (!value.isTextual()) {
            throw new Problem("the manifest has no text \"" + key + "\"");
        }
        return value.textValue();
    }

    private static List<String> texts(JsonNode of, String key) throws Problem {
        List<String> texts = new ArrayList<>();
        if (!of.path(key).isArray()) {
            throw new Problem("the manifest has no list \"" + key + "\"");
        }
        for (JsonNode element : of.path(key)) {
            if (!element.isTextual()) {
                throw new Problem("the manifest's list \"" + key + "\" holds " + element);
            }
            texts.add(element.textValue());
        }
        return texts;
    }
}
