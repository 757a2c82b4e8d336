package org.skewback.kernel.repository;

import java.io.File;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.apache.maven.settings.Mirror;
import org.apache.maven.settings.Profile;
import org.apache.maven.settings.Proxy;
import org.apache.maven.settings.Repository;
import org.apache.maven.settings.Server;
import org.apache.maven.settings.Settings;
import org.apache.maven.settings.building.DefaultSettingsBuilderFactory;
import org.apache.maven.settings.building.DefaultSettingsBuildingRequest;
import org.apache.maven.settings.building.SettingsBuildingException;
import org.eclipse.aether.repository.AuthenticationSelector;
import org.eclipse.aether.repository.MirrorSelector;
import org.eclipse.aether.repository.ProxySelector;
import org.eclipse.aether.repository.RemoteRepository;
import org.eclipse.aether.repository.RepositoryPolicy;
import org.eclipse.aether.util.repository.AuthenticationBuilder;
import org.eclipse.aether.util.repository.ConservativeAuthenticationSelector;
import org.eclipse.aether.util.repository.DefaultAuthenticationSelector;
import org.eclipse.aether.util.repository.DefaultMirrorSelector;
import org.eclipse.aether.util.repository.DefaultProxySelector;
import org.jspecify.annotations.Nullable;

/**
 * Where the user's Maven keeps libraries and where it gets them.
 *
 * @see <a href="https://maven.apache.org/settings.html">Maven documentation, "Settings Reference"</a>
 */
final class MavenSettings {

    private static final String CENTRAL = "https://repo.maven.apache.org/maven2";
    private static final Pattern LOCAL =
            Pattern.compile("<localRepository>\\s*([^<]+?)\\s*</localRepository>");
    private static final Pattern PLACEHOLDER = Pattern.compile("\\$\\{([^}]+)}");

    /**
     * The servers and the way to them.
     *
     * @param offline whether none may be asked
     * @param repositories what to ask, in order, before mirrors take their place
     * @param mirrors which repository another stands for
     * @param proxies through what each is reached
     * @param authentication what each wants to know
     */
    record Servers(
            boolean offline,
            List<RemoteRepository> repositories,
            MirrorSelector mirrors,
            ProxySelector proxies,
            AuthenticationSelector authentication) {}

    private final Path folder;
    private final Path user;
    private final @Nullable Path installed;

    private MavenSettings(Path folder, Path user, @Nullable Path installed) {
        this.folder = folder.toAbsolutePath().normalize();
        this.user = user;
        this.installed = installed;
    }

    /**
     * Finds the settings: those of the user, and those of the Maven that is installed.
     *
     * @param environment environment variables
     * @param home the user's home folder
     */
    static MavenSettings of(Map<String, String> environment, Path home) {
        Path maven = home.resolve(".m2");
        Path user = maven.resolve("settings.xml");
        Path installed = installed(environment);
        String named = environment.getOrDefault(MavenLibraries.FOLDER, "");
        Path folder = named.isBlank() ? null : Path.of(named);
        if (folder == null) {
            folder = local(user, environment, home);
        }
        if (folder == null && installed != null) {
            folder = local(installed, environment, home);
        }
        return new MavenSettings(
                folder == null ? maven.resolve("repository") : folder, user, installed);
    }

    /** The settings in the folder of Maven, which its launcher or a variable names. */
    private static @Nullable Path installed(Map<String, String> environment) {
        for (String variable : List.of("MAVEN_HOME", "M2_HOME")) {
            String home = environment.getOrDefault(variable, "");
            if (!home.isBlank()) {
                return Path.of(home, "conf", "settings.xml");
            }
        }
        for (String entry : environment.getOrDefault("PATH", "").split(File.pathSeparator, -1)) {
            Path launcher = entry.isBlank() ? null : Path.of(entry, "mvn");
            if (launcher != null && Files.isRegularFile(launcher)) {
                try {
                    Path bin = launcher.toRealPath().getParent();
                    return bin == null ? null : bin.resolveSibling("conf").resolve("settings.xml");
                } catch (IOException e) {
                    return null;
                }
            }
        }
        return null;
    }

    // Read without Maven's own reader, whose classes a library that is all local does not need.
    private static @Nullable Path local(Path settings, Map<String, String> environment, Path home) {
        if (!Files.isReadable(settings)) {
            return null;
        }
        try {
            Matcher matcher =
                    LOCAL.matcher(Files.readString(settings).replaceAll("(?s)<!--.*?-->", ""));
            if (!matcher.find()) {
                return null;
            }
            String text =
                    PLACEHOLDER
                            .matcher(matcher.group(1))
                            .replaceAll(
                                    found ->
                                            Matcher.quoteReplacement(
                                                    value(found.group(1), environment, home)));
            return Path.of(text);
        } catch (IOException e) {
            System.err.println("skewback: " + settings + " could not be read: " + e);
            return null;
        }
    }

    private static String value(String name, Map<String, String> environment, Path home) {
        if (name.equals("user.home")) {
            return home.toString();
        }
        return name.startsWith("env.")
                ? environment.getOrDefault(name.substring("env.".length()), "")
                : System.getProperty(name, "");
    }

    /** The local repository. */
    Path folder() {
        return folder;
    }

    /**
     * Reads what the settings say of servers.
     *
     * @throws IOException if the settings cannot be read
     */
    Servers servers() throws IOException {
        DefaultSettingsBuildingRequest request = new DefaultSettingsBuildingRequest();
        request.setSystemProperties(System.getProperties());
        if (installed != null && Files.isReadable(installed)) {
            request.setGlobalSettingsFile(installed.toFile());
        }
        request.setUserSettingsFile(user.toFile());
        Settings settings;
        try {
            settings =
                    new DefaultSettingsBuilderFactory()
                            .newInstance()
                            .build(request)
                            .getEffectiveSettings();
        } catch (SettingsBuildingException e) {
            throw new IOException("Maven's settings cannot be read: " + e.getMessage(), e);
        }
        DefaultMirrorSelector mirrors = new DefaultMirrorSelector();
        for (Mirror mirror : settings.getMirrors()) {
            mirrors.add(
                    mirror.getId(),
                    mirror.getUrl(),
                    mirror.getLayout(),
                    false,
                    mirror.isBlocked(),
                    mirror.getMirrorOf(),
                    mirror.getMirrorOfLayouts());
        }
        return new Servers(
                settings.isOffline(),
                repositories(settings),
                mirrors,
                proxies(settings),
                authentication(settings));
    }

    private static DefaultProxySelector proxies(Settings settings) {
        DefaultProxySelector proxies = new DefaultProxySelector();
        for (Proxy proxy : settings.getProxies()) {
            if (proxy.isActive()) {
                AuthenticationBuilder authentication = new AuthenticationBuilder();
                authentication.addUsername(proxy.getUsername()).addPassword(proxy.getPassword());
                proxies.add(
                        new org.eclipse.aether.repository.Proxy(
                                proxy.getProtocol(),
                                proxy.getHost(),
                                proxy.getPort(),
                                authentication.build()),
                        proxy.getNonProxyHosts());
            }
        }
        return proxies;
    }

    private static AuthenticationSelector authentication(Settings settings) {
        DefaultAuthenticationSelector selector = new DefaultAuthenticationSelector();
        for (Server server : settings.getServers()) {
            AuthenticationBuilder authentication = new AuthenticationBuilder();
            authentication.addUsername(server.getUsername()).addPassword(server.getPassword());
            authentication.addPrivateKey(server.getPrivateKey(), server.getPassphrase());
            selector.add(server.getId(), authentication.build());
        }
        return new ConservativeAuthenticationSelector(selector);
    }

    private static List<RemoteRepository> repositories(Settings settings) {
        List<RemoteRepository> repositories = new ArrayList<>();
        boolean central = false;
        for (Profile profile : settings.getProfiles()) {
            boolean active =
                    settings.getActiveProfiles().contains(profile.getId())
                            || (profile.getActivation() != null
                                    && profile.getActivation().isActiveByDefault());
            if (active) {
                for (Repository repository : profile.getRepositories()) {
                    central |= repository.getId().equals("central");
                    repositories.add(repository(repository));
                }
            }
        }
        if (!central) {
            repositories.add(
                    new RemoteRepository.Builder("central", "default", CENTRAL)
                            .setSnapshotPolicy(new RepositoryPolicy(false, null, null))
                            .build());
        }
        return repositories;
    }

    private static RemoteRepository repository(Repository repository) {
        RemoteRepository.Builder builder =
                new RemoteRepository.Builder(
                        repository.getId(), repository.getLayout(), repository.getUrl());
        builder.setReleasePolicy(policy(repository.getReleases()));
        builder.setSnapshotPolicy(policy(repository.getSnapshots()));
        return builder.build();
    }

    private static RepositoryPolicy policy(
            org.apache.maven.settings.@Nullable RepositoryPolicy policy) {
        return policy == null
                ? new RepositoryPolicy()
                : new RepositoryPolicy(
                        policy.isEnabled(), policy.getUpdatePolicy(), policy.getChecksumPolicy());
    }
}
