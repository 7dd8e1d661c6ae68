package kingpost.kernel.library;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.apache.maven.model.Repository;
import org.apache.maven.model.building.DefaultModelProcessor;
import org.apache.maven.model.io.DefaultModelReader;
import org.apache.maven.model.locator.DefaultModelLocator;
import org.apache.maven.model.superpom.DefaultSuperPomProvider;
import org.apache.maven.settings.Mirror;
import org.apache.maven.settings.Profile;
import org.apache.maven.settings.Proxy;
import org.apache.maven.settings.Server;
import org.apache.maven.settings.Settings;
import org.apache.maven.settings.building.DefaultSettingsBuilderFactory;
import org.apache.maven.settings.building.DefaultSettingsBuildingRequest;
import org.apache.maven.settings.building.SettingsBuildingException;
import org.eclipse.aether.DefaultRepositorySystemSession;
import org.eclipse.aether.repository.RemoteRepository;
import org.eclipse.aether.repository.RepositoryPolicy;
import org.eclipse.aether.util.repository.AuthenticationBuilder;
import org.eclipse.aether.util.repository.DefaultAuthenticationSelector;
import org.eclipse.aether.util.repository.DefaultMirrorSelector;
import org.eclipse.aether.util.repository.DefaultProxySelector;

/** The reader's Maven settings, and Maven's own defaults where they say nothing. */
final class MavenSettings {

    private static final RepositoryPolicy CHECKED = new RepositoryPolicy(true, RepositoryPolicy.UPDATE_POLICY_DAILY,
            RepositoryPolicy.CHECKSUM_POLICY_FAIL);
    private static final RepositoryPolicy NONE = new RepositoryPolicy(false, RepositoryPolicy.UPDATE_POLICY_NEVER,
            RepositoryPolicy.CHECKSUM_POLICY_FAIL);

    private final Settings settings;
    private final Path defaultStore;

    private MavenSettings(Settings settings, Path defaultStore) {
        this.settings = settings;
        this.defaultStore = defaultStore;
    }

    /**
     * The settings under a home folder.
     *
     * @throws LibraryProblem if the file of settings cannot be read
     */
    static MavenSettings under(Path home) {
        Path file = home.resolve(".m2").resolve("settings.xml");
        var request = new DefaultSettingsBuildingRequest().setUserSettingsFile(file.toFile())
                .setSystemProperties(System.getProperties());
        try {
            Settings read = new DefaultSettingsBuilderFactory().newInstance().build(request).getEffectiveSettings();
            return new MavenSettings(read, home.resolve(".m2").resolve("repository"));
        } catch (SettingsBuildingException unreadable) {
            throw new LibraryProblem(file + ": Maven's settings cannot be read: "
                    + unreadable.getProblems().get(0).getMessage() + "; correct the file.");
        }
    }

    /** Where fetched files are kept. */
    Path store() {
        String given = settings.getLocalRepository();
        return given == null || given.isBlank() ? defaultStore : Path.of(given);
    }

    /** Sets mirrors, proxies, passwords and whether the network may be used. */
    void applyTo(DefaultRepositorySystemSession session) {
        var mirrors = new DefaultMirrorSelector();
        for (Mirror mirror : settings.getMirrors()) {
            mirrors.add(mirror.getId(), mirror.getUrl(), mirror.getLayout(), false, mirror.isBlocked(),
                    mirror.getMirrorOf(), mirror.getMirrorOfLayouts());
        }
        var proxies = new DefaultProxySelector();
        for (Proxy proxy : settings.getProxies()) {
            if (proxy.isActive()) {
                proxies.add(new org.eclipse.aether.repository.Proxy(proxy.getProtocol(), proxy.getHost(),
                        proxy.getPort(), secret(proxy.getUsername(), proxy.getPassword()).build()),
                        proxy.getNonProxyHosts());
            }
        }
        var servers = new DefaultAuthenticationSelector();
        for (Server server : settings.getServers()) {
            servers.add(server.getId(), secret(server.getUsername(), server.getPassword()).build());
        }
        session.setMirrorSelector(mirrors).setProxySelector(proxies).setAuthenticationSelector(servers)
                .setOffline(settings.isOffline());
    }

    private static AuthenticationBuilder secret(String name, String password) {
        return new AuthenticationBuilder().addUsername(name).addPassword(password);
    }

    /** Maven's own repository, and those of the profiles that the settings make active. */
    List<RemoteRepository> repositories() {
        var processor = new DefaultModelProcessor().setModelLocator(new DefaultModelLocator())
                .setModelReader(new DefaultModelReader());
        var found = new ArrayList<>(new DefaultSuperPomProvider().setModelProcessor(processor).getSuperModel("4.0.0")
                .getRepositories().stream().map(MavenSettings::remote).toList());
        for (Profile profile : settings.getProfiles()) {
            if (settings.getActiveProfiles().contains(profile.getId())
                    || profile.getActivation() != null && profile.getActivation().isActiveByDefault()) {
                profile.getRepositories().forEach(each -> found.add(remote(each.getId(), each.getUrl())));
            }
        }
        return found;
    }

    private static RemoteRepository remote(Repository repository) {
        return remote(repository.getId(), repository.getUrl());
    }

    private static RemoteRepository remote(String id, String url) {
        return new RemoteRepository.Builder(id, "default", url).setReleasePolicy(CHECKED).setSnapshotPolicy(NONE).build();
    }
}
