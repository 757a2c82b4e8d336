package org.skewback.kernel.repository;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Properties;
import java.util.TreeSet;
import java.util.regex.Pattern;
import org.eclipse.aether.RepositoryException;
import org.eclipse.aether.RepositorySystem;
import org.eclipse.aether.RepositorySystemSession;
import org.eclipse.aether.artifact.Artifact;
import org.eclipse.aether.artifact.DefaultArtifact;
import org.eclipse.aether.collection.CollectRequest;
import org.eclipse.aether.collection.CollectResult;
import org.eclipse.aether.collection.DependencyCollectionException;
import org.eclipse.aether.graph.Dependency;
import org.eclipse.aether.repository.LocalRepository;
import org.eclipse.aether.repository.RemoteRepository;
import org.eclipse.aether.resolution.ArtifactRequest;
import org.eclipse.aether.resolution.ArtifactResolutionException;
import org.eclipse.aether.resolution.ArtifactResult;
import org.eclipse.aether.resolution.VersionRangeResolutionException;
import org.eclipse.aether.supplier.RepositorySystemSupplier;
import org.eclipse.aether.supplier.SessionBuilderSupplier;
import org.eclipse.aether.transfer.ArtifactNotFoundException;
import org.eclipse.aether.util.graph.transformer.ConflictResolver;
import org.skewback.kernel.evaluation.Libraries;

/**
 * Finds libraries, with all they need to run, as Maven does and with the user's own settings: first in
 * the local repository alone, and only where something is missing there on the servers that the
 * settings name.
 */
public final class MavenLibraries implements Libraries {

    /** Environment variable that names the folder of the local repository. */
    public static final String FOLDER = "SKEWBACK_LOCAL_REPOSITORY";

    private static final Pattern COORDINATES = Pattern.compile("[\\w.-]+:[\\w.-]+:[\\w.+-]+");
    private static final int CONNECT_MILLIS = 10_000;
    private static final int REQUEST_MILLIS = 60_000;

    private final MavenSettings settings;

    MavenLibraries(MavenSettings settings) {
        this.settings = settings;
    }

    /**
     * Uses the settings of the user that runs this program.
     *
     * @return the libraries
     */
    public static MavenLibraries ofThisUser() {
        return new MavenLibraries(
                MavenSettings.of(System.getenv(), Path.of(System.getProperty("user.home"))));
    }

    @Override
    public Found find(String coordinates) throws MissingException {
        String wanted = coordinates.strip();
        if (!COORDINATES.matcher(wanted).matches()) {
            throw new MissingException(
                    "%maven needs group:artifact:version, such as"
                            + " org.apache.commons:commons-math3:3.6.1; it was given `"
                            + wanted
                            + "`");
        }
        ResolvedMemory memory = new ResolvedMemory(settings.folder());
        Found known = memory.recall(wanted);
        return known != null ? known : resolve(wanted, memory);
    }

    private Found resolve(String wanted, ResolvedMemory memory) throws MissingException {
        try (RepositorySystem system = new RepositorySystemSupplier().get()) {
            ReadFiles read = new ReadFiles();
            try (RepositorySystemSession.CloseableSession session =
                    session(system)
                            .setOffline(true)
                            // The simple manager does not ask from which server a file once came.
                            .withLocalRepositories(new LocalRepository(settings.folder(), "simple"))
                            .withRepositoryListener(read)
                            .setConfigProperty("aether.remoteRepositoryFilter.prefixes", false)
                            .build()) {
                Found found = told(resolve(system, session, List.of(), wanted), read);
                if (read.decidesAll()) {
                    memory.remember(wanted, found, read.files());
                }
                return found;
            } catch (RepositoryException locally) {
                return resolveRemotely(system, wanted, locally);
            }
        }
    }

    private static Found told(Found found, ReadFiles read) {
        List<String> notes = new ArrayList<>(read.unread());
        notes.addAll(found.notes());
        return new Found(found.libraries(), notes);
    }

    private Found resolveRemotely(
            RepositorySystem system, String wanted, RepositoryException locally)
            throws MissingException {
        MavenSettings.Servers servers;
        try {
            servers = settings.servers();
        } catch (IOException e) {
            throw new MissingException(
                    missing(wanted, locally)
                            + "\nIt was not asked for on servers, because "
                            + e.getMessage());
        }
        if (servers.offline()) {
            throw new MissingException(
                    missing(wanted, locally)
                            + "\nIt was not asked for on servers, because Maven's settings say"
                            + " offline.\n"
                            + advice(wanted));
        }
        ReadFiles read = new ReadFiles();
        try (RepositorySystemSession.CloseableSession session =
                session(system)
                        .withLocalRepositories(new LocalRepository(settings.folder()))
                        .withRepositoryListener(read)
                        .setMirrorSelector(servers.mirrors())
                        .setProxySelector(servers.proxies())
                        .setAuthenticationSelector(servers.authentication())
                        .setConfigProperty("aether.transport.http.connectTimeout", CONNECT_MILLIS)
                        .setConfigProperty("aether.transport.http.requestTimeout", REQUEST_MILLIS)
                        .build()) {
            List<RemoteRepository> repositories =
                    system.newResolutionRepositories(session, servers.repositories());
            try {
                return told(resolve(system, session, repositories, wanted), read);
            } catch (RepositoryException remotely) {
                throw new MissingException(
                        missing(wanted, remotely)
                                + "\nIt was asked for on "
                                + String.join(", ", addresses(repositories))
                                + trouble(remotely)
                                + ".\n"
                                + advice(wanted));
            }
        }
    }

    private RepositorySystemSession.SessionBuilder session(RepositorySystem system) {
        Properties properties = new Properties();
        properties.putAll(System.getProperties());
        return new SessionBuilderSupplier(system)
                .get()
                .setSystemProperties(properties)
                .setConfigProperty(
                        ConflictResolver.CONFIG_PROP_VERBOSE, ConflictResolver.Verbosity.STANDARD);
    }

    private static Found resolve(
            RepositorySystem system,
            RepositorySystemSession session,
            List<RemoteRepository> repositories,
            String wanted)
            throws RepositoryException {
        CollectResult collected =
                system.collectDependencies(
                        session,
                        new CollectRequest()
                                .setRoot(new Dependency(new DefaultArtifact(wanted), "runtime"))
                                .setRepositories(repositories));
        if (!collected.getExceptions().isEmpty()) {
            throw new DependencyCollectionException(collected);
        }
        DependencyTree tree = new DependencyTree(collected.getRoot());
        List<ArtifactRequest> requests = new ArrayList<>();
        for (Artifact artifact : tree.chosen()) {
            requests.add(new ArtifactRequest(artifact, repositories, "runtime"));
        }
        List<Library> libraries = new ArrayList<>();
        for (ArtifactResult result : system.resolveArtifacts(session, requests)) {
            Artifact artifact = result.getArtifact();
            libraries.add(
                    new Library(
                            artifact.getGroupId() + ":" + artifact.getArtifactId(),
                            artifact.getVersion(),
                            artifact.getPath()));
        }
        return new Found(libraries, tree.notes());
    }

    /** Says why a library cannot be used: what is missing, or what cannot be made sense of. */
    private String missing(String wanted, RepositoryException failure) {
        List<? extends Throwable> failures =
                failure instanceof DependencyCollectionException collection
                        ? collection.getResult().getExceptions()
                        : List.of(failure);
        TreeSet<String> absent = new TreeSet<>();
        TreeSet<String> reasons = new TreeSet<>();
        for (Throwable one : failures) {
            List<Artifact> artifacts = absent(one);
            artifacts.forEach(artifact -> absent.add(words(artifact, wanted)));
            if (artifacts.isEmpty()) {
                reasons.add(reason(one));
            }
        }
        String where = "not in the local Maven repository " + settings.folder();
        if (absent.contains(wanted)) {
            reasons.add("it is " + where);
        } else if (!absent.isEmpty()) {
            reasons.add("it needs " + String.join(", ", absent) + ", " + where);
        }
        return "the library " + wanted + " cannot be used: " + String.join("; ", reasons) + ".";
    }

    /** The files for want of which something failed; those of a parent, where it is the parent's. */
    private static List<Artifact> absent(Throwable failure) {
        List<Artifact> absent = List.of();
        for (Throwable t = failure; t != null; t = t.getCause()) {
            if (t instanceof ArtifactResolutionException unresolved) {
                absent =
                        unresolved.getResults().stream()
                                .filter(result -> !result.isResolved())
                                .map(result -> result.getRequest().getArtifact())
                                .toList();
            } else if (t instanceof ArtifactNotFoundException lacking) {
                absent = List.of(lacking.getArtifact());
            }
        }
        return absent;
    }

    /** Names a file that is absent; of a whole library that is absent, the POM is missed first. */
    private String words(Artifact artifact, String wanted) {
        String name = name(artifact);
        Path jar =
                settings.folder()
                        .resolve(artifact.getGroupId().replace('.', '/'))
                        .resolve(artifact.getArtifactId())
                        .resolve(artifact.getVersion())
                        .resolve(artifact.getArtifactId() + "-" + artifact.getVersion() + ".jar");
        boolean pomAlone = artifact.getExtension().equals("pom") && Files.exists(jar);
        if (!pomAlone) {
            return name;
        }
        return name.equals(wanted) ? "its own POM" : "the POM of " + name;
    }

    private static String reason(Throwable failure) {
        String asked = "";
        Throwable last = failure;
        for (Throwable t = failure; t != null; t = t.getCause()) {
            if (t instanceof VersionRangeResolutionException range) {
                Artifact artifact = range.getResult().getRequest().getArtifact();
                asked =
                        "it needs "
                                + artifact.getGroupId()
                                + ":"
                                + artifact.getArtifactId()
                                + " in version `"
                                + artifact.getVersion()
                                + "`, which cannot be had: ";
            }
            last = t;
        }
        return asked + last.getMessage();
    }

    private static String advice(String wanted) {
        if (wanted.startsWith("org.skewback:")) {
            return "To put it there, run `mvn -q -DskipTests install` in the folder of the Skewback"
                    + " sources; check that the version is the one of those sources. Another"
                    + " folder can be named by the environment variable "
                    + FOLDER
                    + ".";
        }
        return "Check the group, the name and the version. Another folder can be named by the"
                + " environment variable "
                + FOLDER
                + ".";
    }

    private static List<String> addresses(List<RemoteRepository> repositories) {
        return repositories.stream().map(r -> r.getId() + " (" + r.getUrl() + ")").toList();
    }

    /** What a server or the way to it has refused; nothing where it just lacks the file. */
    private static String trouble(RepositoryException failure) {
        Throwable last = failure;
        boolean absent = false;
        for (Throwable t = failure; t != null; t = t.getCause()) {
            absent |= t instanceof ArtifactNotFoundException;
            last = t;
        }
        return absent ? ", where it is not" : ", which failed: " + last.getMessage();
    }

    private static String name(Artifact artifact) {
        return artifact.getGroupId() + ":" + artifact.getArtifactId() + ":" + artifact.getVersion();
    }
}
