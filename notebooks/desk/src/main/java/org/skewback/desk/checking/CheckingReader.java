package org.skewback.desk.checking;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.dataformat.toml.TomlMapper;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.skewback.data.CsvTable;
import org.skewback.desk.Problem;
import org.skewback.quantity.Numerals;
import org.skewback.quantity.Quantity;

/** Reads the checker's side, from a package folder or from an issue; all faults are told at once. */
public final class CheckingReader {

    private static final int LONGEST = 8 << 20;

    private final Map<String, byte[]> files;
    private final List<String> faults = new ArrayList<>();

    private CheckingReader(Map<String, byte[]> files) {
        this.files = files;
    }

    /**
     * Reads the checker's side of a package folder.
     *
     * @param folder the package folder
     * @return what is there; nothing where there is no folder {@code checking}
     * @throws Problem when a file is not known, is a link, is too long, or says something that
     *     cannot be
     */
    public static Checking read(Path folder) throws Problem {
        Path place = folder.resolve(Checking.FOLDER);
        if (!Files.isDirectory(place)) {
            return Checking.NONE;
        }
        Map<String, byte[]> files = new TreeMap<>();
        try (Stream<Path> walk = Files.walk(place)) {
            for (Path file : walk.sorted().toList()) {
                if (Files.isDirectory(file, LinkOption.NOFOLLOW_LINKS)) {
                    continue;
                }
                String path =
                        Checking.FOLDER + place.relativize(file).toString().replace('\\', '/');
                if (!Checking.isKnown(path)
                        || !Files.isRegularFile(file, LinkOption.NOFOLLOW_LINKS)) {
                    throw new Problem(
                            folder.resolve(path)
                                    + " is not known among the checker's files; known are"
                                    + " numbers.csv, comments.toml, concessions.toml,"
                                    + " signatories.toml and signatures/");
                }
                try (InputStream in = Files.newInputStream(file)) {
                    files.put(path, in.readNBytes(LONGEST + 1));
                }
            }
        } catch (IOException e) {
            throw Problem.of("cannot read " + place, e);
        }
        return of(files);
    }

    /**
     * Reads the checker's side from its files.
     *
     * @param files bytes by path in the issue
     * @return what they say
     * @throws Problem when one says something that cannot be
     */
    public static Checking of(Map<String, byte[]> files) throws Problem {
        CheckingReader reader = new CheckingReader(files);
        for (Map.Entry<String, byte[]> file : files.entrySet()) {
            if (file.getValue().length > LONGEST) {
                throw new Problem(file.getKey() + " is longer than " + LONGEST + " bytes");
            }
        }
        Checking checking =
                new Checking(
                        reader.numbers(),
                        reader.remarks(),
                        reader.concessions(),
                        reader.signatories(),
                        reader.signatures(),
                        files);
        if (!reader.faults.isEmpty()) {
            throw new Problem(
                    "the checker's side needs mending:"
                            + String.join(
                                    "", reader.faults.stream().map(f -> "\n  " + f).toList()));
        }
        return checking;
    }

    private @Nullable String text(String path) {
        byte @Nullable [] bytes = files.get(path);
        return bytes == null ? null : new String(bytes, StandardCharsets.UTF_8);
    }

    private List<CheckerNumber> numbers() {
        List<CheckerNumber> numbers = new ArrayList<>();
        @Nullable String text = text(Checking.NUMBERS);
        if (text == null) {
            return numbers;
        }
        try {
            CsvTable table = CsvTable.parse(Checking.NUMBERS, text);
            for (int row = 0; row < table.size(); row++) {
                number(table, row, numbers);
            }
        } catch (IllegalArgumentException e) {
            faults.add(String.valueOf(e.getMessage()));
        }
        return numbers;
    }

    private void number(CsvTable table, int row, List<CheckerNumber> numbers) {
        try {
            numbers.add(
                    new CheckerNumber(
                            table.texts("sheet").get(row),
                            table.texts("quantity").get(row),
                            Quantity.of(
                                    Numerals.parse(table.texts("value").get(row)),
                                    table.texts("unit").get(row)),
                            tolerance(table.texts("tolerance").get(row)),
                            table.texts("method").get(row)));
        } catch (IllegalArgumentException e) {
            faults.add(Checking.NUMBERS + ", line " + table.line(row) + ": " + e.getMessage());
        }
    }

    /** Reads such as {@code 0.5 %} or {@code 0.005}. */
    private static double tolerance(String text) {
        String bare = text.strip();
        double value =
                bare.endsWith("%")
                        ? Numerals.parse(bare.substring(0, bare.length() - 1).strip()) / 100
                        : Numerals.parse(bare);
        if (value < 0 || value > 1) {
            throw new IllegalArgumentException(
                    "the tolerance is " + text + "; allowed is 0 to 100 % of the checker's value");
        }
        return value;
    }

    private List<Remark> remarks() {
        List<Remark> remarks = new ArrayList<>();
        Set<String> ids = new HashSet<>();
        for (JsonNode node : items(Checking.REMARKS, "comment")) {
            String id = text(node, "id", Checking.REMARKS);
            String where = Checking.REMARKS + ", comment " + id;
            if (!ids.add(id)) {
                faults.add(where + " stands there twice");
            }
            known(node, where, "id", "sheet", "on", "by", "date", "text", "answer", "closed");
            remarks.add(
                    new Remark(
                            id,
                            text(node, "sheet", where),
                            node.path("on").asText(""),
                            said(node, where, true),
                            node.has("answer")
                                    ? said(node.path("answer"), where + ", answer", true)
                                    : null,
                            node.has("closed")
                                    ? said(node.path("closed"), where + ", closed", false)
                                    : null));
        }
        return remarks;
    }

    private Remark.Said said(JsonNode node, String where, boolean withText) {
        return new Remark.Said(
                text(node, "by", where),
                date(node, "date", where),
                withText ? text(node, "text", where) : node.path("text").asText(""));
    }

    private List<Concession> concessions() {
        List<Concession> concessions = new ArrayList<>();
        for (JsonNode node : items(Checking.CONCESSIONS, "concession")) {
            String where = Checking.CONCESSIONS;
            known(node, where, "sheet", "check", "reason", "by", "until");
            concessions.add(
                    new Concession(
                            text(node, "sheet", where),
                            text(node, "check", where),
                            text(node, "reason", where),
                            text(node, "by", where),
                            date(node, "until", where)));
        }
        return concessions;
    }

    private Map<String, Signatory> signatories() {
        Map<String, Signatory> signatories = new LinkedHashMap<>();
        JsonNode root = toml(Checking.SIGNATORIES);
        for (Map.Entry<String, JsonNode> entry : root.properties()) {
            String role = entry.getKey();
            String where = Checking.SIGNATORIES + ", " + role;
            if (!Checking.ROLES.contains(role)) {
                faults.add(where + ": known roles are " + String.join(", ", Checking.ROLES));
                continue;
            }
            known(entry.getValue(), where, "name", "key");
            String key = text(entry.getValue(), "key", where);
            try {
                Keys.publicKey(key);
            } catch (Problem e) {
                faults.add(where + ": " + e.getMessage());
            }
            signatories.put(
                    role, new Signatory(role, text(entry.getValue(), "name", where), key.strip()));
        }
        return signatories;
    }

    private Map<String, Signature> signatures() {
        Map<String, Signature> signatures = new LinkedHashMap<>();
        for (String role : Checking.ROLES) {
            String path = Checking.signaturePath(role);
            if (files.containsKey(path)) {
                JsonNode node = toml(path);
                known(node, path, "name", "date", "key", "signature");
                signatures.put(
                        role,
                        new Signature(
                                role,
                                text(node, "name", path),
                                date(node, "date", path),
                                text(node, "key", path),
                                text(node, "signature", path)));
            }
        }
        return signatures;
    }

    private JsonNode toml(String path) {
        @Nullable String text = text(path);
        TomlMapper mapper = new TomlMapper();
        if (text == null) {
            return mapper.createObjectNode();
        }
        try {
            return mapper.readTree(text);
        } catch (JsonProcessingException e) {
            String where = e.getLocation() == null ? "" : ", line " + e.getLocation().getLineNr();
            faults.add(path + where + ": " + e.getOriginalMessage());
            return mapper.createObjectNode();
        }
    }

    private List<JsonNode> items(String path, String name) {
        List<JsonNode> items = new ArrayList<>();
        JsonNode root = toml(path);
        known(root, path, name);
        for (JsonNode item : root.path(name)) {
            if (item.isObject()) {
                items.add(item);
            } else {
                faults.add(path + ": each item is headed [[" + name + "]]");
            }
        }
        return items;
    }

    private void known(JsonNode node, String where, String... keys) {
        Set<String> unknown = new TreeSet<>();
        node.fieldNames().forEachRemaining(unknown::add);
        unknown.removeAll(List.of(keys));
        unknown.forEach(
                key ->
                        faults.add(
                                where
                                        + ": the key \""
                                        + key
                                        + "\" is not known; known are "
                                        + String.join(", ", keys)));
    }

    private String text(JsonNode node, String key, String where) {
        JsonNode value = node.path(key);
        if (!value.isTextual() || value.textValue().isBlank()) {
            faults.add(where + ": " + key + " must be a text");
            return "";
        }
        return value.textValue().strip();
    }

    private LocalDate date(JsonNode node, String key, String where) {
        try {
            return LocalDate.parse(node.path(key).asText(""));
        } catch (DateTimeParseException e) {
            faults.add(where + ": " + key + " must be a day such as 2026-03-31");
            return LocalDate.EPOCH;
        }
    }
}
