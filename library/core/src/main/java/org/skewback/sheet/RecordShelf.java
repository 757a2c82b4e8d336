package org.skewback.sheet;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;
import java.util.List;
import java.util.stream.Stream;
import org.skewback.quantity.Quantity;

/**
 * The folder where the records of a package's sheets are found.
 *
 * @param folder the folder; its {@code .json} files are records
 */
record RecordShelf(Path folder) {

    private static final String VARIABLE = "SKEWBACK_RECORDS";

    static RecordShelf ofEnvironment() {
        String named = System.getenv(VARIABLE);
        if (named == null || named.isBlank()) {
            throw new IllegalArgumentException(
                    "no records of other sheets are at hand: the environment variable "
                            + VARIABLE
                            + " names no folder. Issue the package, then set it to the issued"
                            + " folder's records");
        }
        return new RecordShelf(Path.of(named));
    }

    /** Finds the record of a sheet by its number. */
    Kept find(String number) {
        for (Path file : files()) {
            String json = text(file);
            SheetRecord record = RecordReader.read(json);
            if (record.number().equals(number)) {
                return new Kept(record, digest(json));
            }
        }
        throw new IllegalArgumentException(
                "sheet " + number + " has no record in " + folder + "; run that sheet first");
    }

    private List<Path> files() {
        if (!Files.isDirectory(folder)) {
            throw new IllegalArgumentException("the folder of records " + folder + " is missing");
        }
        try (Stream<Path> listed = Files.list(folder)) {
            return listed.filter(file -> file.toString().endsWith(".json")).sorted().toList();
        } catch (IOException e) {
            throw new UncheckedIOException("the folder of records cannot be listed", e);
        }
    }

    private static String text(Path file) {
        try {
            return Files.readString(file);
        } catch (IOException e) {
            throw new UncheckedIOException("the record " + file + " cannot be read", e);
        }
    }

    private static String digest(String json) {
        try {
            MessageDigest sha256 = MessageDigest.getInstance("SHA-256");
            return HexFormat.of().formatHex(sha256.digest(json.getBytes(StandardCharsets.UTF_8)));
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException("every Java platform has SHA-256", e);
        }
    }

    /**
     * A record as found.
     *
     * @param record the record
     * @param digest SHA-256 of its text, in hexadecimal
     */
    record Kept(SheetRecord record, String digest) {

        Quantity quantity(String symbol) {
            for (Entry entry : record.entries()) {
                Quantity found =
                        entry.block() instanceof Block.Given given
                                ? given.quantity()
                                : entry.block() instanceof Block.Step step ? step.quantity() : null;
                if (found != null && symbol.equals(found.symbol())) {
                    if (entry.stale()) {
                        throw new IllegalArgumentException(
                                symbol + " is stale in sheet " + record.number());
                    }
                    return found;
                }
            }
            throw new IllegalArgumentException(
                    "sheet " + record.number() + " has no quantity " + symbol);
        }
    }
}
