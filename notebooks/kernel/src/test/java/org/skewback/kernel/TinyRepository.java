package org.skewback.kernel;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.jar.JarOutputStream;
import java.util.zip.ZipEntry;
import javax.tools.JavaCompiler;
import javax.tools.ToolProvider;

/** Makes classes, jars and a local Maven repository for tests. */
public final class TinyRepository {

    private TinyRepository() {}

    /**
     * Compiles sources.
     *
     * @param folder where sources and classes go; the classes into its folder {@code classes}
     * @param sources text by file name, such as {@code a/B.java}
     * @return the folder of classes
     * @throws IOException if they do not compile
     */
    public static Path compile(Path folder, Map<String, String> sources) throws IOException {
        Path classes = Files.createDirectories(folder.resolve("classes"));
        JavaCompiler compiler = ToolProvider.getSystemJavaCompiler();
        for (Map.Entry<String, String> source : sources.entrySet()) {
            Path file = folder.resolve("sources").resolve(source.getKey());
            Files.createDirectories(file.getParent());
            Files.writeString(file, source.getValue());
            int status =
                    compiler.run(
                            null,
                            null,
                            null,
                            "-proc:none",
                            "-cp",
                            classes.toString(),
                            "-d",
                            classes.toString(),
                            file.toString());
            if (status != 0) {
                throw new IOException(source.getKey() + " does not compile");
            }
        }
        return classes;
    }

    /**
     * Puts an artifact into a repository, as if it had come from some server.
     *
     * @param repository root of the repository
     * @param artifact its name; group {@code test}, version {@code 1.0}
     * @param dependencies the inside of its {@code <dependencies>}
     * @param classes class files by path in the jar
     * @throws IOException if it cannot be written
     */
    public static void install(
            Path repository, String artifact, String dependencies, Map<String, Path> classes)
            throws IOException {
        Path folder =
                Files.createDirectories(
                        repository.resolve("test").resolve(artifact).resolve("1.0"));
        String name = artifact + "-1.0";
        Files.writeString(folder.resolve(name + ".pom"), pom(artifact, dependencies));
        try (OutputStream out = Files.newOutputStream(folder.resolve(name + ".jar"));
                JarOutputStream jar = new JarOutputStream(out)) {
            for (Map.Entry<String, Path> entry : classes.entrySet()) {
                jar.putNextEntry(new ZipEntry(entry.getKey()));
                Files.copy(entry.getValue(), jar);
                jar.closeEntry();
            }
        }
        Files.write(
                folder.resolve("_remote.repositories"),
                List.of(name + ".jar>elsewhere=", name + ".pom>elsewhere="));
    }

    /**
     * Writes a POM.
     *
     * @param artifact name of the artifact; group {@code test}, version {@code 1.0}
     * @param dependencies the inside of its {@code <dependencies>}
     * @return the XML
     */
    public static String pom(String artifact, String dependencies) {
        return "<project><modelVersion>4.0.0</modelVersion><groupId>test</groupId><artifactId>"
                + artifact
                + "</artifactId><version>1.0</version><dependencies>"
                + dependencies
                + "</dependencies></project>";
    }

    /**
     * Writes a dependency.
     *
     * @param artifact name of an artifact of this repository
     * @param scope its scope
     * @return the XML
     */
    public static String dependency(String artifact, String scope) {
        return "<dependency><groupId>test</groupId><artifactId>"
                + artifact
                + "</artifactId><version>1.0</version><scope>"
                + scope
                + "</scope></dependency>";
    }
}
