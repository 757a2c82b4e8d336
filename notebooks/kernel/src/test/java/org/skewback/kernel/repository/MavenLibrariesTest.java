package org.skewback.kernel.repository;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.skewback.kernel.TinyRepository;
import org.skewback.kernel.evaluation.Libraries;
import org.skewback.kernel.evaluation.Libraries.MissingException;

class MavenLibrariesTest {

    private static final String OFFLINE = "<offline>true</offline>";

    @TempDir Path home;
    private Path folder;

    @BeforeEach
    void repository() throws IOException {
        folder = Files.createDirectories(home.resolve("local"));
        settings(OFFLINE);
    }

    private Path settings(String content) throws IOException {
        Files.createDirectories(home.resolve(".m2"));
        return Files.writeString(
                home.resolve(".m2").resolve("settings.xml"),
                "<settings>" + content + "</settings>");
    }

    private Libraries.Found find(String coordinates) throws MissingException {
        Map<String, String> environment = Map.of(MavenLibraries.FOLDER, folder.toString());
        return new MavenLibraries(MavenSettings.of(environment, home)).find(coordinates);
    }

    private List<String> names(String coordinates) throws MissingException {
        return find(coordinates).libraries().stream().map(Libraries.Library::name).toList();
    }

    private String complaint(String coordinates) {
        MissingException e = assertThrows(MissingException.class, () -> names(coordinates));
        return String.valueOf(e.getMessage());
    }

    @Test
    void bringsWhatALibraryNeedsToRunAndNothingElse() throws Exception {
        TinyRepository.install(
                folder,
                "arch",
                TinyRepository.dependency("rib", "compile")
                        + TinyRepository.dependency("deck", "runtime")
                        + TinyRepository.dependency("absent-in-tests", "test")
                        + TinyRepository.dependency("absent-provided", "provided"),
                Map.of());
        TinyRepository.install(
                folder, "rib", TinyRepository.dependency("chord", "compile"), Map.of());
        TinyRepository.install(folder, "deck", "", Map.of());
        TinyRepository.install(folder, "chord", "", Map.of());
        List<String> names = names("test:arch:1.0");
        assertEquals("test:arch", names.get(0));
        assertEquals(
                List.of("test:arch", "test:chord", "test:deck", "test:rib"),
                names.stream().sorted().toList());
    }

    @Test
    void saysWhereItLookedForOurOwnLibraryAndHowToInstallIt() {
        String message = complaint("org.skewback:skewback-library:9.9");
        assertTrue(message.contains("org.skewback:skewback-library:9.9"), message);
        assertTrue(message.contains(folder.toString()), message);
        assertTrue(message.contains("mvn -q -DskipTests install"), message);
    }

    @Test
    void namesTheDependencyThatIsMissing() throws IOException {
        TinyRepository.install(
                folder, "arch", TinyRepository.dependency("rib", "compile"), Map.of());
        String message = complaint("test:arch:1.0");
        assertTrue(message.contains("it needs test:rib:1.0"), message);
    }

    private Path pom(String artifact, String content) throws IOException {
        TinyRepository.install(folder, artifact, "", Map.of());
        return Files.writeString(
                folder.resolve("test/" + artifact + "/1.0/" + artifact + "-1.0.pom"), content);
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "",
                "<project><modelVersion>4.0.0</modelVersion><groupId>test</groupId>",
                "no XML at all",
                "<project><modelVersion>4.0.0</modelVersion><unknown/></project>",
                "<project><modelVersion>4.0.0</modelVersion></project>",
                "\u0000\u0001",
                "<!DOCTYPE a [<!ENTITY b 'c'>]><project>&d;</project>"
            })
    void aPomThatCannotBeReadIsToldAndTheLibraryIsUsedWithoutWhatItNeeds(String content)
            throws Exception {
        pom("rib", content);
        for (int i = 0; i < 2; i++) {
            Libraries.Found found = find("test:rib:1.0");
            assertEquals(1, found.libraries().size());
            assertEquals(1, found.notes().size(), found.notes()::toString);
            String note = found.notes().get(0);
            assertTrue(note.startsWith("test:rib:1.0: its POM cannot be read"), note);
            assertFalse(note.contains("\n"), note);
            assertFalse(note.contains("Exception"), note);
        }
        pom("rib", TinyRepository.pom("rib", ""));
        assertEquals(List.of(), find("test:rib:1.0").notes());
    }

    @Test
    void aPomThatCannotBeReadIsToldOfWhatIsNeededToo() throws Exception {
        TinyRepository.install(
                folder, "arch", TinyRepository.dependency("rib", "compile"), Map.of());
        pom("rib", "<project>");
        Libraries.Found found = find("test:arch:1.0");
        assertEquals(2, found.libraries().size());
        assertTrue(
                found.notes().get(0).startsWith("test:rib:1.0: its POM"), found.notes()::toString);
    }

    @Test
    void aJarWithoutAPomIsTold() throws Exception {
        Files.delete(pom("rib", ""));
        String message = complaint("test:rib:1.0");
        assertTrue(message.contains("it needs its own POM, not in"), message);
    }

    @Test
    void aParentThatIsMissingIsNamed() throws Exception {
        String parent =
                "<project><modelVersion>4.0.0</modelVersion><parent><groupId>test</groupId>"
                        + "<artifactId>all</artifactId><version>1.0</version></parent>"
                        + "<artifactId>rib</artifactId></project>";
        pom("rib", parent);
        String message = complaint("test:rib:1.0");
        assertTrue(message.contains("it needs test:all:1.0, not in"), message);
        assertTrue(message.contains("settings say offline"), message);
    }

    @Test
    void aParentThatCannotBeReadIsTold() throws Exception {
        pom("all", "<project");
        pom(
                "rib",
                "<project><modelVersion>4.0.0</modelVersion><parent><groupId>test</groupId>"
                        + "<artifactId>all</artifactId><version>1.0</version></parent>"
                        + "<artifactId>rib</artifactId></project>");
        String note = find("test:rib:1.0").notes().get(0);
        assertTrue(note.startsWith("test:rib:1.0: its POM cannot be read"), note);
        assertTrue(note.contains("all-1.0.pom"), note);
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "<version>${unknown}</version>",
                "<version>[1.0</version>",
                "<version>[,]</version>"
            })
    void aVersionThatIsNoneIsTold(String version) throws Exception {
        TinyRepository.install(
                folder,
                "arch",
                TinyRepository.dependency("rib", "compile")
                        .replace("<version>1.0</version>", version),
                Map.of());
        String message = complaint("test:arch:1.0");
        assertTrue(message.contains("test:arch:1.0 cannot be used: it needs test:rib"), message);
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "<version></version>"})
    void aVersionThatIsMissingIsTold(String version) throws Exception {
        TinyRepository.install(
                folder,
                "arch",
                TinyRepository.dependency("rib", "compile")
                        .replace("<version>1.0</version>", version),
                Map.of());
        List<String> notes = find("test:arch:1.0").notes();
        assertTrue(
                notes.toString().contains("version' for test:rib:jar is missing"), notes::toString);
    }

    @Test
    void saysWhichFormCoordinatesHave() {
        assertTrue(complaint("commons-math3").contains("group:artifact:version"));
    }

    @Test
    void theFolderComesFromTheVariableThenTheSettingsThenTheDefault() throws IOException {
        assertEquals(home.resolve(".m2/repository"), MavenSettings.of(Map.of(), home).folder());
        settings(
                "<!-- <localRepository>/old</localRepository> -->"
                        + "<localRepository> ${user.home}/own/${env.PLACE} </localRepository>");
        assertEquals(
                home.resolve("own/here"), MavenSettings.of(Map.of("PLACE", "here"), home).folder());
        assertEquals(
                Path.of("/named"),
                MavenSettings.of(Map.of(MavenLibraries.FOLDER, "/named"), home).folder());
        settings("");
        Path installed = Files.createDirectories(home.resolve("maven/conf"));
        Files.writeString(
                installed.resolve("settings.xml"),
                "<settings><localRepository>/of-all</localRepository></settings>");
        assertEquals(
                Path.of("/of-all"),
                MavenSettings.of(Map.of("MAVEN_HOME", home.resolve("maven").toString()), home)
                        .folder());
    }

    @Test
    void whatIsMissingComesFromTheServersOfTheSettings() throws Exception {
        Path remote = home.resolve("remote");
        TinyRepository.install(
                remote, "arch", TinyRepository.dependency("rib", "compile"), Map.of());
        TinyRepository.install(folder, "rib", "", Map.of());
        assertTrue(complaint("test:arch:1.0").contains("settings say offline"));
        settings(
                "<mirrors><mirror><id>ours</id><url>"
                        + remote.toUri()
                        + "</url><mirrorOf>*</mirrorOf></mirror></mirrors>");
        TinyRepository.install(remote, "rib", "", Map.of());
        Libraries.Found remotely = find("test:arch:1.0");
        assertEquals(
                List.of("test:arch", "test:rib"),
                remotely.libraries().stream().map(Libraries.Library::name).toList());
        String message = complaint("test:pier:1.0");
        assertTrue(message.contains("ours (" + remote.toUri()), message);
        assertTrue(message.contains("where it is not"), message);
        settings(OFFLINE);
        assertEquals(remotely, find("test:arch:1.0"));
        assertEquals(remotely, find("test:arch:1.0"));
    }

    @Test
    void aProfileOfTheSettingsNamesFurtherServers() throws Exception {
        Path remote = home.resolve("remote");
        TinyRepository.install(remote, "arch", "", Map.of());
        settings(
                "<profiles><profile><id>p</id><repositories><repository><id>central</id><url>"
                        + remote.toUri()
                        + "</url></repository></repositories></profile></profiles>"
                        + "<activeProfiles><activeProfile>p</activeProfile></activeProfiles>");
        assertEquals(List.of("test:arch"), names("test:arch:1.0"));
    }

    @Test
    void settingsThatCannotBeReadAreNamed() throws Exception {
        settings("<mirrors>");
        assertTrue(complaint("test:arch:1.0").contains("settings cannot be read"));
    }

    @Test
    void whatIsRememberedIsWhatTheResolverFinds() throws Exception {
        TinyRepository.install(
                folder, "arch", TinyRepository.dependency("rib", "compile"), Map.of());
        TinyRepository.install(folder, "rib", "", Map.of());
        Libraries.Found resolved = find("test:arch:1.0");
        assertEquals(resolved, new ResolvedMemory(folder.toAbsolutePath()).recall("test:arch:1.0"));
        assertEquals(resolved, find("test:arch:1.0"));

        // A library that is built again may need something else.
        TinyRepository.install(
                folder, "rib", TinyRepository.dependency("chord", "compile"), Map.of());
        assertEquals(null, new ResolvedMemory(folder.toAbsolutePath()).recall("test:arch:1.0"));
        TinyRepository.install(folder, "chord", "", Map.of());
        assertEquals(List.of("test:arch", "test:rib", "test:chord"), names("test:arch:1.0"));

        Files.delete(folder.resolve("test/chord/1.0/chord-1.0.jar"));
        assertTrue(complaint("test:arch:1.0").contains("it needs test:chord:1.0"));
    }

    @Test
    void aRangeIsNotRemembered() throws Exception {
        String range =
                TinyRepository.dependency("rib", "compile")
                        .replace("<version>1.0</version>", "<version>[1.0,2.0)</version>");
        TinyRepository.install(folder, "arch", range, Map.of());
        TinyRepository.install(folder, "rib", "", Map.of());
        Files.writeString(
                folder.resolve("test/rib/maven-metadata-local.xml"),
                "<metadata><groupId>test</groupId><artifactId>rib</artifactId><versioning>"
                        + "<versions><version>1.0</version></versions></versioning></metadata>");
        assertEquals(List.of("test:arch", "test:rib"), names("test:arch:1.0"));
        assertEquals(null, new ResolvedMemory(folder.toAbsolutePath()).recall("test:arch:1.0"));
    }

    @Test
    void saysWhoGetsAnOlderVersionThanItAsksFor() throws Exception {
        String newer =
                TinyRepository.dependency("chord", "compile")
                        .replace("<version>1.0</version>", "<version>2.0</version>");
        TinyRepository.install(
                folder,
                "arch",
                TinyRepository.dependency("chord", "compile")
                        + TinyRepository.dependency("rib", "compile"),
                Map.of());
        TinyRepository.install(folder, "rib", newer, Map.of());
        TinyRepository.install(folder, "chord", "", Map.of());
        Path second = Files.createDirectories(folder.resolve("test/chord/2.0"));
        for (String kind : List.of(".pom", ".jar")) {
            Files.copy(
                    folder.resolve("test/chord/1.0/chord-1.0" + kind),
                    second.resolve("chord-2.0" + kind));
        }
        Path pom = second.resolve("chord-2.0.pom");
        Files.writeString(pom, Files.readString(pom).replace("<version>1.0<", "<version>2.0<"));
        Libraries.Found found = find("test:arch:1.0");
        assertEquals(
                List.of("test:arch 1.0", "test:chord 1.0", "test:rib 1.0"),
                found.libraries().stream().map(l -> l.name() + " " + l.version()).toList());
        assertEquals(1, found.notes().size(), found.notes()::toString);
        assertTrue(
                found.notes()
                        .get(0)
                        .startsWith(
                                "test:chord: version 1.0 is used, though test:rib:1.0 asks for"
                                        + " 2.0"),
                found.notes()::toString);
    }
}
