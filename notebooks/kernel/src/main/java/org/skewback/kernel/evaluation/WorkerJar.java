package org.skewback.kernel.evaluation;

import java.io.IOException;
import java.io.OutputStream;
import java.net.URI;
import java.net.URISyntaxException;
import java.net.URL;
import java.nio.file.FileSystem;
import java.nio.file.FileSystems;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.CodeSource;
import java.util.List;
import java.util.Map;
import java.util.jar.Attributes;
import java.util.jar.JarOutputStream;
import java.util.jar.Manifest;
import java.util.stream.Stream;
import java.util.zip.ZipEntry;
import org.skewback.kernel.worker.WorkerMain;

/**
 * Packs the worker's classes alone into a jar, whether the kernel itself runs from a folder of
 * classes, from its own jar or from a jar that holds all its libraries.
 */
public final class WorkerJar {

    private WorkerJar() {}

    /**
     * Writes the jar.
     *
     * @param jar the file to write
     * @throws IOException if the worker's classes cannot be found or the jar cannot be written
     */
    public static void write(Path jar) throws IOException {
        Path home = codeSource();
        if (Files.isDirectory(home)) {
            pack(home, jar);
        } else {
            URI uri = URI.create("jar:" + home.toUri());
            try (FileSystem zip = FileSystems.newFileSystem(uri, Map.of())) {
                pack(zip.getPath("/"), jar);
            }
        }
    }

    private static void pack(Path root, Path jar) throws IOException {
        String folder = WorkerMain.class.getPackageName().replace('.', '/');
        Manifest manifest = new Manifest();
        Attributes attributes = manifest.getMainAttributes();
        attributes.put(Attributes.Name.MANIFEST_VERSION, "1.0");
        attributes.put(Attributes.Name.MAIN_CLASS, WorkerMain.class.getName());
        // An agent named by an option would forbid a class-data archive; one that the launcher
        // takes from here does not.
        attributes.putValue("Launcher-Agent-Class", WorkerMain.class.getName());
        attributes.putValue("Can-Redefine-Classes", "true");
        List<Path> classes;
        try (Stream<Path> files = Files.list(root.resolve(folder))) {
            classes = files.filter(f -> f.toString().endsWith(".class")).sorted().toList();
        }
        try (OutputStream out = Files.newOutputStream(jar);
                JarOutputStream zip = new JarOutputStream(out, manifest)) {
            zip.setLevel(0);
            for (Path file : classes) {
                zip.putNextEntry(new ZipEntry(folder + "/" + file.getFileName()));
                Files.copy(file, zip);
                zip.closeEntry();
            }
        }
    }

    private static Path codeSource() throws IOException {
        CodeSource source = WorkerMain.class.getProtectionDomain().getCodeSource();
        URL location = source == null ? null : source.getLocation();
        if (location == null) {
            throw new IOException("the kernel does not know the jar or folder it was loaded from");
        }
        try {
            return Path.of(location.toURI());
        } catch (URISyntaxException e) {
            throw new IOException("the kernel was loaded from " + location, e);
        }
    }
}
