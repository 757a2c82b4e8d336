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
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.skewback.kernel.TinyRepository;
import org.skewback.kernel.evaluation.Libraries;
import org.skewback.kernel.evaluation.Libraries.MissingException;

class LocalRepositoryTest {

    @TempDir Path folder;

    private List<String> names(String coordinates) throws MissingException {
        return new LocalRepository(folder)
                .find(coordinates).stream().map(Libraries.Library::name).toList();
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

    @Test
    void saysWhichFormCoordinatesHave() {
        assertTrue(complaint("commons-math3").contains("group:artifact:version"));
    }

    @Test
    void theFolderComesFromTheVariableThenTheSettingsThenTheDefault() throws IOException {
        Path settings = folder.resolve("settings.xml");
        Path maven = folder.resolve("maven");
        assertEquals(maven.resolve("repository"), LocalRepository.folder(null, settings, maven));
        Files.writeString(
                settings,
                "<settings><!-- <localRepository>/old</localRepository> -->"
                        + "<localRepository> /own </localRepository></settings>");
        assertEquals(Path.of("/own"), LocalRepository.folder(null, settings, maven));
        assertEquals(Path.of("/named"), LocalRepository.folder("/named", settings, maven));
        assertFalse(Files.exists(maven));
    }
}
