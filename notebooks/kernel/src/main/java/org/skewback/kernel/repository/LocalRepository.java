package org.skewback.kernel.repository;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.eclipse.aether.RepositorySystem;
import org.eclipse.aether.RepositorySystemSession;
import org.eclipse.aether.artifact.Artifact;
import org.eclipse.aether.artifact.DefaultArtifact;
import org.eclipse.aether.collection.CollectRequest;
import org.eclipse.aether.collection.DependencyCollectionException;
import org.eclipse.aether.graph.Dependency;
import org.eclipse.aether.resolution.ArtifactDescriptorException;
import org.eclipse.aether.resolution.ArtifactResult;
import org.eclipse.aether.resolution.DependencyRequest;
import org.eclipse.aether.resolution.DependencyResolutionException;
import org.eclipse.aether.resolution.DependencyResult;
import org.eclipse.aether.supplier.RepositorySystemSupplier;
import org.eclipse.aether.supplier.SessionBuilderSupplier;
import org.eclipse.aether.transfer.ArtifactNotFoundException;
import org.jspecify.annotations.Nullable;
import org.skewback.kernel.evaluation.Libraries;

/**
 * Finds libraries, with all they need to run, in a local Maven repository. It never asks the network:
 * what a notebook names must be there already.
 */
public final class LocalRepository implements Libraries {

    /** Environment variable that names the folder. */
    public static final String FOLDER = "SKEWBACK_LOCAL_REPOSITORY";

    private static final Pattern COORDINATES = Pattern.compile("[\\w.-]+:[\\w.-]+:[\\w.+-]+");
    private static final Pattern SETTING =
            Pattern.compile("<localRepository>\\s*([^<]+?)\\s*</localRepository>");

    private final Path folder;

    /**
     * Uses a folder.
     *
     * @param folder root of the repository; need not exist yet
     */
    public LocalRepository(Path folder) {
        this.folder = folder.toAbsolutePath().normalize();
    }

    /**
     * Uses the repository of the user that runs this program: the folder that the environment
     * variable {@value #FOLDER} names, else the one that Maven's own settings name, else Maven's
     * default.
     *
     * @return the repository
     */
    public static LocalRepository ofThisUser() {
        Path maven = Path.of(System.getProperty("user.home"), ".m2");
        return new LocalRepository(
                folder(System.getenv(FOLDER), maven.resolve("settings.xml"), maven));
    }

    /** Chooses the folder. */
    static Path folder(@Nullable String named, Path settings, Path maven) {
        if (named != null && !named.isBlank()) {
            return Path.of(named);
        }
        if (Files.isReadable(settings)) {
            try {
                Matcher matcher =
                        SETTING.matcher(
                                Files.readString(settings).replaceAll("(?s)<!--.*?-->", ""));
                if (matcher.find()) {
                    return Path.of(
                            matcher.group(1)
                                    .replace("${user.home}", System.getProperty("user.home")));
                }
            } catch (IOException e) {
                System.err.println("skewback: " + settings + " could not be read: " + e);
            }
        }
        return maven.resolve("repository");
    }

    @Override
    public List<Library> find(String coordinates) throws MissingException {
        String wanted = coordinates.strip();
        if (!COORDINATES.matcher(wanted).matches()) {
            throw new MissingException(
                    "%maven needs group:artifact:version, such as"
                            + " org.apache.commons:commons-math3:3.6.1; it was given `"
                            + wanted
                            + "`");
        }
        try (RepositorySystem system = new RepositorySystemSupplier().get();
                RepositorySystemSession.CloseableSession session = session(system)) {
            CollectRequest collect =
                    new CollectRequest()
                            .setRoot(new Dependency(new DefaultArtifact(wanted), "runtime"));
            DependencyResult result =
                    system.resolveDependencies(session, new DependencyRequest(collect, null));
            List<Library> found = new ArrayList<>();
            for (ArtifactResult artifact : result.getArtifactResults()) {
                Artifact a = artifact.getArtifact();
                found.add(
                        new Library(
                                a.getGroupId() + ":" + a.getArtifactId(),
                                a.getVersion(),
                                a.getPath()));
            }
            return found;
        } catch (DependencyResolutionException e) {
            throw missing(wanted, e);
        }
    }

    private RepositorySystemSession.CloseableSession session(RepositorySystem system) {
        return new SessionBuilderSupplier(system)
                .get()
                .setOffline(true)
                // The simple manager does not ask from which server a file once came.
                .withLocalRepositories(
                        new org.eclipse.aether.repository.LocalRepository(folder, "simple"))
                .setSystemProperties(systemProperties())
                .build();
    }

    private static Map<String, String> systemProperties() {
        return Map.of(
                "java.version", System.getProperty("java.version"),
                "java.home", System.getProperty("java.home"),
                "os.name", System.getProperty("os.name"),
                "os.arch", System.getProperty("os.arch"));
    }

    private MissingException missing(String wanted, DependencyResolutionException e) {
        TreeSet<String> names = new TreeSet<>();
        if (e.getCause() instanceof DependencyCollectionException collection) {
            collection.getResult().getExceptions().forEach(x -> names.add(name(x, wanted)));
        }
        DependencyResult result = e.getResult();
        if (result != null) {
            for (ArtifactResult artifact : result.getArtifactResults()) {
                if (!artifact.isResolved()) {
                    names.add(name(artifact.getRequest().getArtifact()));
                }
            }
        }
        StringBuilder message = new StringBuilder();
        message.append("the library ").append(wanted).append(" cannot be used: ");
        if (names.isEmpty() || names.contains(wanted)) {
            message.append("it is not in the local Maven repository ");
        } else {
            message.append("it needs ")
                    .append(String.join(", ", names))
                    .append(", not in the local Maven repository ");
        }
        message.append(folder).append(".\n");
        if (wanted.startsWith("org.skewback:")) {
            message.append(
                    "To put it there, run `mvn -q -DskipTests install` in the folder of the"
                        + " Skewback sources; check that the version is the one of those sources.");
        } else {
            message.append("To put it there, run `mvn dependency:get -Dartifact=")
                    .append(wanted)
                    .append("`; check the group, the name and the version.");
        }
        message.append(" Another folder can be named by the environment variable ")
                .append(FOLDER)
                .append('.');
        return new MissingException(message.toString());
    }

    /** Names the file at the bottom of a failure; it may be the parent of what was asked for. */
    private static String name(Throwable failure, String wanted) {
        String name = wanted;
        for (Throwable t = failure; t != null; t = t.getCause()) {
            if (t instanceof ArtifactNotFoundException absent) {
                name = name(absent.getArtifact());
            } else if (t instanceof ArtifactDescriptorException unread) {
                name = name(unread.getResult().getArtifact());
            }
        }
        return name;
    }

    private static String name(Artifact artifact) {
        return artifact.getGroupId() + ":" + artifact.getArtifactId() + ":" + artifact.getVersion();
    }
}
