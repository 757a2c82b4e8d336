package org.skewback.desk.audit;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.File;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.skewback.desk.TestIssue;
import org.skewback.desk.apart.ClassArchive;
import org.skewback.desk.jupyter.KernelCommand;

/** An audit uses the class-data archive beside the program, and does without where none fits. */
class ClassArchiveTest {

    @TempDir private Path folder;

    @Test
    void onlyAnArchiveBesideThePackagedProgramIsUsed() throws Exception {
        String program = folder.resolve("skewback.jar").toString();
        assertEquals(List.of(), ClassArchive.AUDIT.options(program));
        Path archive = Files.writeString(folder.resolve("skewback.jsa"), "");
        assertTrue(
                ClassArchive.AUDIT.options(program).contains("-XX:SharedArchiveFile=" + archive));
        assertEquals(List.of(), ClassArchive.FRONT.options(program));
        assertEquals(
                List.of(), ClassArchive.AUDIT.options(program + File.pathSeparator + "other.jar"));
        assertEquals(List.of(), ClassArchive.AUDIT.options(folder.toString()));
    }

    @Test
    void anArchiveThatDoesNotFitIsPassedOverWithoutAWord() throws Exception {
        Files.writeString(folder.resolve("skewback.jsa"), "no archive");
        KernelCommand self = KernelCommand.ofThisProgram();
        List<String> words = new ArrayList<>(List.of(self.java().toString()));
        words.addAll(ClassArchive.AUDIT.options(folder.resolve("skewback.jar").toString()));
        words.addAll(List.of("-cp", self.classPath(), AuditTask.class.getName()));
        Path issue = TestIssue.FIRST.issue(folder.resolve("home"), List.of()).folder();
        words.addAll(List.of("numbers", issue.toString(), TestIssue.PROGRAM));
        Process process = new ProcessBuilder(words).redirectErrorStream(true).start();
        List<String> lines =
                new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8)
                        .lines()
                        .toList();
        assertEquals(0, process.waitFor());
        assertTrue(lines.stream().allMatch(line -> line.startsWith("{")), lines.toString());
        assertEquals("{\"end\":true}", lines.get(lines.size() - 1));
    }
}
