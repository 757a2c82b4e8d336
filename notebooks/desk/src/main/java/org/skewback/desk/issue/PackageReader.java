package org.skewback.desk.issue;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.dataformat.toml.TomlMapper;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashSet;
import java.util.Iterator;
import java.util.List;
import java.util.Set;
import java.util.regex.Pattern;
import org.skewback.desk.Problem;
import org.skewback.desk.checking.Status;

/**
 * Reads {@code package.toml}, in which a package says what it is and which notebooks it consists
 * of.
 *
 * <p>All faults of a file are told at once.
 *
 * @see <a href="https://toml.io/en/v1.0.0">TOML 1.0.0</a>
 */
public final class PackageReader {

    /** Name of the file in the package folder. */
    public static final String FILE = "package.toml";

    private static final byte[] MARK = "\uFEFF".getBytes(StandardCharsets.UTF_8);
    private static final Pattern NAME = Pattern.compile("[a-z0-9]+(-[a-z0-9]+)*");
    private static final Set<String> KEYS =
            Set.of(
                    "name",
                    "title",
                    "number",
                    "revision",
                    "status",
                    "date",
                    "prepared-by",
                    "checked-by",
                    "summary",
                    "cautions",
                    "order",
                    "basis");

    private final JsonNode root;
    private final List<String> faults = new ArrayList<>();

    private PackageReader(JsonNode root) {
        this.root = root;
    }

    /**
     * Reads what a package says of itself.
     *
     * @param folder the package folder
     * @return its content
     * @throws Problem when the folder or the file is missing, is not TOML, lacks a key, has an
     *     unknown key, or has a value that does not fit
     */
    public static PackageInfo read(Path folder) throws Problem {
        Path file = folder.resolve(FILE);
        if (!Files.isDirectory(folder)) {
            throw new Problem("there is no package folder " + folder);
        }
        if (!Files.exists(file)) {
            throw new Problem(
                    folder
                            + " is not a package: it has no "
                            + FILE
                            + ", which states name, title, date and the order of the notebooks");
        }
        JsonNode root;
        try {
            root = new TomlMapper().readTree(withoutMark(Files.readAllBytes(file)));
        } catch (JsonProcessingException e) {
            String where = e.getLocation() == null ? "" : ", line " + e.getLocation().getLineNr();
            throw new Problem(file + where + ": " + e.getOriginalMessage(), e);
        } catch (IOException e) {
            throw Problem.of("cannot read " + file, e);
        }
        PackageReader reader = new PackageReader(root);
        PackageInfo info = reader.info();
        if (!reader.faults.isEmpty()) {
            throw new Problem(
                    file
                            + " needs mending:"
                            + String.join(
                                    "", reader.faults.stream().map(f -> "\n  " + f).toList()));
        }
        return info;
    }

    /** Some editors begin a file with a byte order mark, which TOML 1.0 does not know. */
    private static byte[] withoutMark(byte[] text) {
        boolean marked =
                text.length >= MARK.length
                        && Arrays.equals(text, 0, MARK.length, MARK, 0, MARK.length);
        return marked ? Arrays.copyOfRange(text, MARK.length, text.length) : text;
    }

    private PackageInfo info() {
        Iterator<String> names = root.fieldNames();
        while (names.hasNext()) {
            String key = names.next();
            if (!KEYS.contains(key)) {
                faults.add(
                        "the key \""
                                + key
                                + "\" is not known; known are "
                                + String.join(", ", KEYS.stream().sorted().toList()));
            }
        }
        String name = text("name", false);
        if (!name.isEmpty() && !NAME.matcher(name).matches()) {
            faults.add(
                    "name is \""
                            + name
                            + "\"; it becomes a folder, so only small letters, digits and single"
                            + " hyphens are allowed, such as gorge-crossing");
        }
        return new PackageInfo(
                name,
                text("title", false),
                text("number", false),
                text("revision", false),
                status(),
                date(),
                text("prepared-by", false),
                text("checked-by", true),
                text("summary", false),
                texts("cautions", "what a reader must know before using any number"),
                order(),
                basis());
    }

    private Basis basis() {
        JsonNode value = root.path("basis");
        if (value.isMissingNode()) {
            return Basis.NONE;
        }
        if (!value.isObject()) {
            faults.add("basis is " + value + "; a table [basis] is needed");
            return Basis.NONE;
        }
        List<String> known = List.of("standards", "factors", "units", "signs", "values");
        value.fieldNames()
                .forEachRemaining(
                        key -> {
                            if (!known.contains(key)) {
                                faults.add(
                                        "the key \""
                                                + key
                                                + "\" of basis is not known; known are "
                                                + String.join(", ", known));
                            }
                        });
        List<List<String>> stated =
                known.stream().map(key -> elements("basis." + key, value.path(key))).toList();
        return new Basis(stated.get(0), stated.get(1), stated.get(2), stated.get(3), stated.get(4));
    }

    private String text(String key, boolean mayBeEmpty) {
        JsonNode value = root.path(key);
        if (value.isMissingNode()) {
            faults.add("the key \"" + key + "\" is missing");
        } else if (!value.isTextual()) {
            faults.add(key + " is " + value + "; a text in quotation marks is needed");
        } else if (value.textValue().isBlank() && !mayBeEmpty) {
            faults.add(key + " is empty");
        }
        return value.asText("").strip();
    }

    private String status() {
        String words = text("status", false);
        if (!words.isEmpty() && Status.of(words).isEmpty()) {
            faults.add(
                    "status is \""
                            + words
                            + "\"; known are "
                            + String.join(
                                    ", ",
                                    Arrays.stream(Status.values()).map(Status::inWords).toList()));
        }
        return words;
    }

    private LocalDate date() {
        JsonNode value = root.path("date");
        if (value.isMissingNode()) {
            faults.add("the key \"date\" is missing");
            return LocalDate.EPOCH;
        }
        try {
            return LocalDate.parse(value.asText(""));
        } catch (DateTimeParseException e) {
            faults.add("date is " + value + "; a day such as 2026-03-31 is needed");
            return LocalDate.EPOCH;
        }
    }

    private List<String> texts(String key, String what) {
        JsonNode value = root.path(key);
        List<String> texts = new ArrayList<>();
        if (value.isMissingNode()) {
            faults.add("the key \"" + key + "\" is missing");
            return texts;
        }
        texts.addAll(elements(key, value));
        if (value.isEmpty()) {
            faults.add(key + " is empty; it lists " + what);
        }
        return texts;
    }

    private List<String> elements(String key, JsonNode value) {
        List<String> texts = new ArrayList<>();
        if (!value.isContainerNode() && !value.isMissingNode()) {
            faults.add(key + " is " + value + "; a list of texts is needed");
        }
        for (JsonNode element : value) {
            if (element.isTextual() && !element.textValue().isBlank()) {
                texts.add(element.textValue());
            } else {
                faults.add(key + " holds " + element + "; each element must be a text");
            }
        }
        return texts;
    }

    private List<String> order() {
        List<String> order = texts("order", "the notebooks in reading order");
        Set<String> slugs = new HashSet<>();
        for (String entry : order) {
            Path path;
            try {
                path = Path.of(entry);
            } catch (InvalidPathException e) {
                faults.add("order holds \"" + entry + "\", which is no path");
                continue;
            }
            if (path.isAbsolute() || path.normalize().startsWith("..")) {
                faults.add("order holds \"" + entry + "\", which lies outside the package folder");
            } else if (!NAME.matcher(slug(entry)).matches()) {
                faults.add(
                        "order holds \""
                                + entry
                                + "\"; a notebook's name has only small letters, digits and single"
                                + " hyphens, and ends in .ipynb");
            } else if (!slugs.add(slug(entry))) {
                faults.add(
                        "order names two notebooks \""
                                + slug(entry)
                                + "\"; their issued files would have one name");
            }
        }
        return order;
    }

    /** Tells whether a text may be the name of an issued file or folder. */
    static boolean isName(String text) {
        return NAME.matcher(text).matches();
    }

    /**
     * Gives the name of a notebook's issued files.
     *
     * @param entry an element of {@link PackageInfo#order()}
     * @return the notebook's file name without its ending; empty where the ending is another
     */
    static String slug(String entry) {
        String ending = ".ipynb";
        String file = entry.substring(entry.lastIndexOf('/') + 1);
        return file.endsWith(ending) ? file.substring(0, file.length() - ending.length()) : "";
    }
}
