package org.skewback.kernel.install;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.File;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.FileTime;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.jar.JarFile;
import java.util.jar.JarOutputStream;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import java.util.zip.ZipEntry;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.api.condition.EnabledOnOs;
import org.junit.jupiter.api.condition.OS;
import org.junit.jupiter.api.io.TempDir;
import org.skewback.kernel.install.Finding.Weight;

/** A real kernel is installed once; each test spoils a copy of what matters to it. */
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
@EnabledOnOs({OS.LINUX, OS.MAC})
class KernelCheckTest {

    private final Path home;
    private final Path program;
    private final KernelInstaller installer;
    private KernelInstaller.Installed installed;

    KernelCheckTest(@TempDir Path folder) {
        home = folder;
        program = folder.resolve("program.jar");
        installer = new KernelInstaller(folder.resolve("data"));
    }

    @BeforeAll
    void install() throws IOException {
        pack(program);
        installed = installer.install(program, WorkerOptions.NONE);
    }

    /** One jar of all that this test runs with, as the packaged program is. */
    private static void pack(Path jar) throws IOException {
        Set<String> names = new HashSet<>();
        try (OutputStream file = Files.newOutputStream(jar);
                JarOutputStream out = new JarOutputStream(file)) {
            out.setLevel(0);
            for (String entry : System.getProperty("java.class.path").split(File.pathSeparator)) {
                Path path = Path.of(entry);
                if (Files.isDirectory(path)) {
                    try (Stream<Path> files = Files.walk(path)) {
                        for (Path one : files.filter(Files::isRegularFile).toList()) {
                            String name = path.relativize(one).toString().replace('\\', '/');
                            if (names.add(name)) {
                                out.putNextEntry(new ZipEntry(name));
                                Files.copy(one, out);
                            }
                        }
                    }
                } else {
                    packJar(path, names, out);
                }
            }
        }
    }

    private static void packJar(Path path, Set<String> names, JarOutputStream out)
            throws IOException {
        try (JarFile jar = new JarFile(path.toFile())) {
            for (ZipEntry one : jar.stream().map(e -> (ZipEntry) e).toList()) {
                if (one.isDirectory()
                        || one.getName().startsWith("META-INF/")
                        || one.getName().equals("module-info.class")
                        || !names.add(one.getName())) {
                    continue;
                }
                out.putNextEntry(new ZipEntry(one.getName()));
                try (InputStream in = jar.getInputStream(one)) {
                    in.transferTo(out);
                }
            }
        }
    }

    private List<Finding> check(KernelInstaller where, Path jupyter) {
        return new KernelCheck(where, program, List.of(jupyter.toString())).run();
    }

    private static Finding only(List<Finding> findings, String text) {
        List<Finding> found = findings.stream().filter(f -> f.text().contains(text)).toList();
        assertEquals(1, found.size(), () -> text + " in " + findings);
        if (found.get(0).weight() != Weight.GOOD) {
            assertNotNull(found.get(0).remedy());
        }
        return found.get(0);
    }

    /** A program that prints something, in place of one that must be met. */
    private Path script(String name, String... lines) throws IOException {
        Path script = home.resolve(name);
        Files.writeString(
                script,
                Stream.of(lines)
                        .map(line -> "echo '" + line + "'")
                        .collect(Collectors.joining("\n", "#!/bin/sh\n", "\n")));
        Files.setPosixFilePermissions(script, PosixFilePermissions.fromString("rwxr-xr-x"));
        return script;
    }

    private Path jupyter(Path folder) throws IOException {
        return script(
                "jupyter",
                "{\"kernelspecs\": {\"skewback\": {\"resource_dir\": \"" + folder + "\"}}}");
    }

    /** A second installation, made by hand from the first, with another kernel.json. */
    private KernelInstaller copy(String name, String from, String to) throws IOException {
        KernelInstaller copy = new KernelInstaller(home.resolve(name));
        Files.createDirectories(copy.folder());
        try (Stream<Path> files = Files.list(installed.folder())) {
            for (Path file : files.toList()) {
                Files.copy(file, copy.folder().resolve(file.getFileName()));
            }
        }
        Path json = copy.folder().resolve("kernel.json");
        String text = Files.readString(json);
        assertTrue(text.contains(from), text);
        Files.writeString(json, text.replace(from, to));
        return copy;
    }

    private static String quoted(Path path) {
        return "\"" + path + "\"";
    }

    @Test
    void findsNothingWrongWithAFreshOne() throws IOException {
        assertEquals(null, installed.slowStart());
        List<Finding> findings = check(installer, jupyter(installed.folder()));
        assertEquals(List.of(), findings.stream().filter(f -> f.weight() != Weight.GOOD).toList());
        only(findings, "first result after");
        only(findings, "archives fit");
    }

    @Test
    void aChangedJarMakesTheArchiveStaleAndStillRuns() throws IOException {
        KernelInstaller copy = copy("touched", "data", "touched");
        Files.setLastModifiedTime(
                copy.folder().resolve("skewback.jar"), FileTime.fromMillis(1_000_000_000));
        List<Finding> findings = check(copy, jupyter(copy.folder()));
        assertEquals(Weight.TO_MEND, only(findings, "stale").weight());
        assertEquals(Weight.TO_MEND, only(findings, "changed by hand").weight());
        assertEquals(Weight.GOOD, only(findings, "first result after").weight());
    }

    @Test
    void tellsWhenThereIsNone() throws IOException {
        KernelInstaller none = new KernelInstaller(home.resolve("none"));
        List<Finding> findings = check(none, script("silent", "{\"kernelspecs\": {}}"));
        assertEquals(Weight.BROKEN, only(findings, "no kernel is installed").weight());
        assertEquals(Weight.TO_MEND, only(findings, "does not see").weight());
    }

    @Test
    void tellsWhenJavaIsTooOld() throws IOException {
        Path old =
                script(
                        "old-java",
                        "    java.specification.version = 11",
                        "    java.vm.version = 11.0.2+9");
        KernelInstaller copy = copy("old", quoted(Java.ofThisProgram().program()), quoted(old));
        assertEquals(
                Weight.BROKEN,
                only(check(copy, jupyter(copy.folder())), "is Java 11, and the kernel needs 17")
                        .weight());
    }

    @Test
    void tellsWhenJavaHasNoCompiler() throws IOException {
        Path bare =
                script(
                        "bare-java",
                        "    java.specification.version = 21",
                        "    java.vm.version = 21.0.2+13",
                        "java.base@21.0.2");
        KernelInstaller copy = copy("bare", quoted(Java.ofThisProgram().program()), quoted(bare));
        Finding found = only(check(copy, jupyter(copy.folder())), "lacks jdk.jshell");
        assertEquals(Weight.BROKEN, found.weight());
    }

    @Test
    void tellsWhenJavaIsGone() throws IOException {
        Path gone = home.resolve("gone").resolve("java");
        KernelInstaller copy = copy("gone", quoted(Java.ofThisProgram().program()), quoted(gone));
        assertEquals(Weight.BROKEN, only(check(copy, jupyter(copy.folder())), "is gone").weight());
    }

    @Test
    void tellsWhenTheFolderWasMoved() throws IOException {
        KernelInstaller copy = copy("moved", "\"language\"", "\"language\"");
        Files.delete(copy.folder().resolve("skewback.jar"));
        String text = Files.readString(copy.folder().resolve("kernel.json"));
        Files.writeString(
                copy.folder().resolve("kernel.json"),
                text.replace(
                        quoted(installed.folder().resolve("skewback.jar")),
                        quoted(home.resolve("elsewhere").resolve("skewback.jar"))));
        assertEquals(
                Weight.BROKEN,
                only(check(copy, jupyter(copy.folder())), "is not where kernel.json says")
                        .weight());
    }

    @Test
    void tellsWhenTheSpecificationIsNotJson() throws IOException {
        KernelInstaller copy = copy("torn", "\"argv\"", "\"argv");
        assertEquals(
                Weight.BROKEN, only(check(copy, jupyter(copy.folder())), "is not JSON").weight());
    }

    @Test
    void tellsWhatTheKernelPrintedWhenItDoesNotStart() throws IOException {
        KernelInstaller copy = copy("option", "-Xmx512m", "-Xmx512x");
        Finding found = only(check(copy, jupyter(copy.folder())), "does not run");
        assertEquals(Weight.BROKEN, found.weight());
        assertTrue(found.text().contains("-Xmx512x"), found.text());
    }

    @Test
    void tellsWhenThereIsNoJupyterOrAnotherKernel() throws IOException {
        assertEquals(
                Weight.TO_MEND,
                only(check(installer, home.resolve("no-jupyter")), "Jupyter is not found")
                        .weight());
        assertEquals(
                Weight.TO_MEND,
                only(check(installer, jupyter(home)), "takes another kernel").weight());
    }
}
