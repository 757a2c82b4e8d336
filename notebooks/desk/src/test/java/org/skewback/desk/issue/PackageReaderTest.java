package org.skewback.desk.issue;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.skewback.desk.Problem;

/** What a package says of itself, and how its slips are told. */
class PackageReaderTest {

    static final String GOOD =
            """
            name = "small-crossing"
            title = "The small crossing"
            number = "SC-100"
            revision = "B"
            status = "preliminary"
            date = 2026-03-31
            prepared-by = "A. Preparer"
            checked-by = ""
            summary = \"""
            Two lines \\
            in one.
            \"""
            cautions = ["Not for construction."]
            order = ["01-first.ipynb", "more/02-second.ipynb"]
            """;

    @TempDir private Path folder;

    private PackageInfo read(String toml) throws IOException, Problem {
        Files.writeString(folder.resolve(PackageReader.FILE), toml);
        return PackageReader.read(folder);
    }

    private String fault(String toml) {
        return String.valueOf(assertThrows(Problem.class, () -> read(toml)).getMessage());
    }

    @Test
    void aWholeFileIsRead() throws Exception {
        assertEquals(
                new PackageInfo(
                        "small-crossing",
                        "The small crossing",
                        "SC-100",
                        "B",
                        "preliminary",
                        LocalDate.of(2026, 3, 31),
                        "A. Preparer",
                        "",
                        "Two lines in one.",
                        List.of("Not for construction."),
                        List.of("01-first.ipynb", "more/02-second.ipynb"),
                        Basis.NONE),
                read(GOOD));
    }

    @Test
    void aBasisIsReadWhereItIsStated() throws Exception {
        assertEquals(
                new Basis(
                        List.of("EN 1990:2002", "EN 1991-2:2003"),
                        List.of(),
                        List.of(),
                        List.of("Sagging moments are positive."),
                        List.of()),
                read(GOOD
                                + """
                                [basis]
                                standards = ["EN 1990:2002", "EN 1991-2:2003"]
                                signs = ["Sagging moments are positive."]
                                """)
                        .basis());
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            quoteCharacter = '`',
            value = {
                "basis = 7|basis is 7; a table [basis] is needed",
                "basis.codes = []|the key \"codes\" of basis is not known; known are standards,",
                "basis.signs = \"x\"|basis.signs is \"x\"; a list of texts is needed",
                "basis.signs = [7]|basis.signs holds 7; each element must be a text"
            })
    void aSlipInTheBasisIsTold(String line, String message) {
        String said = fault(GOOD + line + "\n");
        assertTrue(said.contains(message), said);
    }

    @Test
    void aByteOrderMarkBeforeTheFirstKeyDoesNoHarm() throws Exception {
        assertEquals(read(GOOD), read("\uFEFF" + GOOD));
    }

    @Test
    void aDateInQuotationMarksIsADate() throws Exception {
        assertEquals(
                LocalDate.of(2026, 3, 31),
                read(GOOD.replace("2026-03-31", "\"2026-03-31\"")).date());
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "name",
                "title",
                "number",
                "revision",
                "status",
                "date",
                "prepared-by",
                "checked-by",
                "cautions",
                "order"
            })
    void aMissingKeyIsNamed(String key) {
        String without = GOOD.replaceAll("(?m)^" + key + " = .*\\R", "");
        assertTrue(fault(without).contains("the key \"" + key + "\" is missing"), fault(without));
    }

    @Test
    void allSlipsAreToldAtOnce() {
        assertEquals(
                folder.resolve("package.toml")
                        + " needs mending:\n"
                        + "  the key \"autor\" is not known; known are basis, cautions, checked-by,"
                        + " date, name, number, order, prepared-by, revision, status, summary,"
                        + " title\n"
                        + "  title is empty\n"
                        + "  the key \"number\" is missing\n"
                        + "  revision is 2; a text in quotation marks is needed",
                fault(
                        GOOD.replace("\"The small crossing\"", "\" \"")
                                .replace("number = \"SC-100\"", "autor = \"x\"")
                                .replace("revision = \"B\"", "revision = 2")));
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            quoteCharacter = '`',
            value = {
                "\"small-crossing\"|\"../small\"|name is \"../small\"; it becomes a folder",
                "\"small-crossing\"|\"Small Crossing\"|only small letters",
                "2026-03-31|\"31 March\"|date is \"31 March\"; a day such as 2026-03-31 is needed",
                "\"01-first.ipynb\"|\"../01-first.ipynb\"|lies outside the package folder",
                "\"01-first.ipynb\"|\"/01-first.ipynb\"|lies outside the package folder",
                "\"01-first.ipynb\"|\"01 First.ipynb\"|small letters, digits and single hyphens",
                "\"01-first.ipynb\"|\"01-first.txt\"|ends in .ipynb",
                "\"01-first.ipynb\"|\"02-second.ipynb\"|two notebooks \"02-second\"",
                "[\"Not for construction.\"]|[]|cautions is empty; it lists what a reader must"
                        + " know",
                "[\"Not for construction.\"]|[7]|cautions holds 7; each element must be a text"
            })
    void aValueThatDoesNotFitIsToldWithWhatIsAllowed(String good, String bad, String message) {
        String said = fault(GOOD.replace(good, bad));
        assertTrue(said.contains(message), said);
    }

    @Test
    void whatIsNotTomlIsToldWithItsLine() {
        String said = fault(GOOD.replace("revision = \"B\"", "revision: B"));
        assertTrue(said.startsWith(folder.resolve("package.toml") + ", line 4: "), said);
    }

    @Test
    void aFolderWithoutTheFileIsNoPackage() {
        assertTrue(
                String.valueOf(
                                assertThrows(Problem.class, () -> PackageReader.read(folder))
                                        .getMessage())
                        .contains("is not a package: it has no package.toml"));
        Path gone = folder.resolve("gone");
        assertEquals(
                "there is no package folder " + gone,
                assertThrows(Problem.class, () -> PackageReader.read(gone)).getMessage());
    }
}
