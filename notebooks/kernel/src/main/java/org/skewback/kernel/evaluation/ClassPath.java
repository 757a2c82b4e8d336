package org.skewback.kernel.evaluation;

import java.io.IOException;
import java.nio.file.DirectoryStream;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.regex.PatternSyntaxException;
import java.util.zip.ZipFile;

/** What the cells have put on their class path, and the magics that put it there. */
final class ClassPath {

    private static final String FILES = "%jars, %classpath";

    /**
     * What a magic has done.
     *
     * @param added what is new on the class path
     * @param notes what the author should know
     * @param answers what the author asked for
     */
    record Outcome(List<Path> added, List<String> notes, List<String> answers) {}

    private final Libraries libraries;

    // The shell's thread writes; a start after a lost worker and a reply may read from another.
    private final Map<Path, String> origins = Collections.synchronizedMap(new LinkedHashMap<>());
    private final Map<String, String> versions = Collections.synchronizedMap(new TreeMap<>());

    ClassPath(Libraries libraries) {
        this.libraries = libraries;
    }

    /** All of it, in order. */
    List<Path> paths() {
        synchronized (origins) {
            return List.copyOf(origins.keySet());
        }
    }

    /** Versions of the libraries by name, sorted. */
    Map<String, String> versions() {
        synchronized (versions) {
            return new TreeMap<>(versions);
        }
    }

    Outcome obey(Magic magic) throws Libraries.MissingException {
        return switch (magic.name()) {
            case "maven" -> magic.argument().isBlank() ? list() : addLibraries(magic.argument());
            case "classpath" -> magic.argument().isBlank() ? list() : addFile(magic.argument());
            case "jars" -> addJars(magic.argument());
            default ->
                    throw new Libraries.MissingException(
                            "there is no %"
                                    + magic.name()
                                    + "; this kernel knows %maven group:artifact:version, %jars"
                                    + " pattern and %classpath path");
        };
    }

    private Outcome list() {
        synchronized (origins) {
            List<String> lines = new ArrayList<>();
            origins.forEach((path, origin) -> lines.add(path + "   (" + origin + ")"));
            return new Outcome(
                    List.of(),
                    List.of(),
                    lines.isEmpty() ? List.of("nothing is on the class path yet") : lines);
        }
    }

    private Outcome addLibraries(String coordinates) throws Libraries.MissingException {
        Libraries.Found found = libraries.find(coordinates);
        List<Path> added = new ArrayList<>();
        List<String> notes = new ArrayList<>(found.notes());
        List<Libraries.Library> all = found.libraries();
        for (Libraries.Library library : all) {
            String present = versions.get(library.name());
            if (present == null) {
                versions.put(library.name(), library.version());
                add(library.file(), library.name() + ":" + library.version(), added);
            } else if (!present.equals(library.version())) {
                String conflict =
                        library.name()
                                + " is already in use in version "
                                + present
                                + ", so version "
                                + library.version();
                if (library.equals(all.get(0))) {
                    throw new Libraries.MissingException(
                            conflict + " cannot be added; restart the kernel to change it");
                }
                notes.add(conflict + ", which " + coordinates + " asks for, was left out");
            }
        }
        return new Outcome(added, notes, List.of());
    }

    private Outcome addFile(String argument) throws Libraries.MissingException {
        Path path = path("%classpath", argument);
        if (!Files.exists(path)) {
            throw new Libraries.MissingException("%classpath: there is no " + path);
        }
        if (Files.isDirectory(path)) {
            requireClasses(path, argument.strip());
        } else {
            requireJar("%classpath", path);
        }
        List<Path> added = new ArrayList<>();
        add(path, FILES, added);
        return new Outcome(added, List.of(), List.of());
    }

    private Outcome addJars(String argument) throws Libraries.MissingException {
        String wanted = argument.strip();
        int slash = Math.max(wanted.lastIndexOf('/'), wanted.lastIndexOf('\\'));
        String name = wanted.substring(slash + 1);
        if (name.isEmpty()) {
            throw new Libraries.MissingException(
                    "%jars needs a jar or a pattern of jars, such as lib/*.jar");
        }
        Path folder =
                path("%jars", slash < 0 ? "." : slash == 0 ? "/" : wanted.substring(0, slash));
        List<Path> jars = new ArrayList<>();
        try (DirectoryStream<Path> files = Files.newDirectoryStream(folder, name)) {
            files.forEach(jars::add);
        } catch (IOException e) {
            throw new Libraries.MissingException("%jars: the folder " + folder + " cannot be read");
        } catch (PatternSyntaxException e) {
            throw new Libraries.MissingException("%jars: " + name + " is no pattern of file names");
        }
        if (jars.isEmpty()) {
            throw new Libraries.MissingException("%jars: nothing in " + folder + " fits " + name);
        }
        Collections.sort(jars);
        for (Path jar : jars) {
            requireJar("%jars", jar);
        }
        List<Path> added = new ArrayList<>();
        for (Path jar : jars) {
            add(jar, FILES, added);
        }
        return new Outcome(added, List.of(), List.of());
    }

    private void add(Path path, String origin, List<Path> added) {
        if (origins.putIfAbsent(path, origin) == null) {
            added.add(path);
        }
    }

    private static Path path(String magic, String argument) throws Libraries.MissingException {
        try {
            return Path.of(argument.strip()).toAbsolutePath().normalize();
        } catch (InvalidPathException e) {
            throw new Libraries.MissingException(
                    magic + ": `" + argument.strip() + "` is no path: " + e.getReason());
        }
    }

    private static void requireJar(String magic, Path path) throws Libraries.MissingException {
        try (ZipFile zip = new ZipFile(path.toFile())) {
            if (zip.size() > 0) {
                return;
            }
        } catch (IOException e) {
            throw new Libraries.MissingException(
                    magic + ": " + path + " is no jar (" + e.getMessage() + ")");
        }
        throw new Libraries.MissingException(magic + ": " + path + " is an empty jar");
    }

    private static void requireClasses(Path folder, String named)
            throws Libraries.MissingException {
        boolean any = false;
        boolean jars = false;
        boolean others = false;
        try (DirectoryStream<Path> files = Files.newDirectoryStream(folder)) {
            for (Path file : files) {
                any = true;
                boolean jar = file.toString().endsWith(".jar");
                jars |= jar;
                others |= !jar;
            }
        } catch (IOException e) {
            throw new Libraries.MissingException(
                    "%classpath: the folder " + folder + " cannot be read");
        }
        if (!any) {
            throw new Libraries.MissingException("%classpath: the folder " + folder + " is empty");
        }
        if (jars && !others) {
            throw new Libraries.MissingException(
                    "%classpath: the folder "
                            + folder
                            + " holds jars, not classes; write %jars "
                            + named
                            + "/*.jar");
        }
    }
}
