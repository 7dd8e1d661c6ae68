package kingpost.kernel.library;

import java.nio.file.Path;
import java.util.List;
import java.util.function.Consumer;
import java.util.regex.Pattern;
import org.apache.maven.repository.internal.MavenRepositorySystemUtils;
import org.eclipse.aether.DefaultRepositorySystemSession;
import org.eclipse.aether.RepositorySystem;
import org.eclipse.aether.artifact.Artifact;
import org.eclipse.aether.artifact.DefaultArtifact;
import org.eclipse.aether.collection.CollectRequest;
import org.eclipse.aether.graph.Dependency;
import org.eclipse.aether.repository.LocalRepository;
import org.eclipse.aether.resolution.ArtifactResult;
import org.eclipse.aether.resolution.DependencyRequest;
import org.eclipse.aether.resolution.DependencyResolutionException;
import org.eclipse.aether.supplier.RepositorySystemSupplier;
import org.eclipse.aether.transfer.ArtifactNotFoundException;
import org.eclipse.aether.transfer.ChecksumFailureException;
import org.eclipse.aether.transfer.RepositoryOfflineException;
import org.eclipse.aether.util.artifact.JavaScopes;
import org.eclipse.aether.util.filter.DependencyFilterUtils;

/**
 * Fetches a library and what it needs by Maven coordinates, with the reader's own Maven settings and store. Every
 * file's checksum is compared with the one that its repository states.
 */
public final class Libraries {

    private static final Pattern COORDINATES = Pattern.compile("[\\w.-]+:[\\w.-]+:[\\w.-]+");
    private static final int CONNECT_MILLIS = 10_000;
    private static final int SILENT_MILLIS = 60_000;

    private final Path home;
    private final Consumer<String> progress;

    /**
     * @param home     the folder that holds {@code .m2}
     * @param progress takes a line for each file that is fetched
     */
    public Libraries(Path home, Consumer<String> progress) {
        this.home = home;
        this.progress = progress;
    }

    /**
     * The jars of a library and of all that it needs at run time; its own comes first.
     *
     * @param coordinates {@code group:artifact:version}
     * @throws LibraryProblem if the text is not that, or no repository has it, can be reached, or sends it whole
     */
    public List<Path> fetch(String coordinates) {
        if (coordinates == null || !COORDINATES.matcher(coordinates).matches()) {
            throw new LibraryProblem("Library \"" + coordinates + "\": these are not Maven coordinates; write "
                    + "group:artifact:version, as in \"org.example:shapes:1.2\".");
        }
        MavenSettings settings = MavenSettings.under(home);
        try (RepositorySystem system = new RepositorySystemSupplier().get()) {
            DefaultRepositorySystemSession session = session(settings, system);
            var wanted = new Dependency(new DefaultArtifact(coordinates), JavaScopes.RUNTIME);
            var collect = new CollectRequest(wanted, system.newResolutionRepositories(session, settings.repositories()));
            var request = new DependencyRequest(collect, DependencyFilterUtils.classpathFilter(JavaScopes.RUNTIME));
            return system.resolveDependencies(session, request).getArtifactResults().stream()
                    .map(ArtifactResult::getArtifact).map(Artifact::getPath).toList();
        } catch (DependencyResolutionException failed) {
            throw new LibraryProblem("Library " + coordinates + ": " + why(failed));
        }
    }

    private DefaultRepositorySystemSession session(MavenSettings settings, RepositorySystem system) {
        DefaultRepositorySystemSession session = MavenRepositorySystemUtils.newSession();
        settings.applyTo(session);
        session.setSystemProperties(System.getProperties());
        session.setTransferListener(new Progress(progress));
        session.setConfigProperty("aether.transport.http.connectTimeout", CONNECT_MILLIS);
        session.setConfigProperty("aether.transport.http.requestTimeout", SILENT_MILLIS);
        session.setArtifactDescriptorPolicy(
                new org.eclipse.aether.util.repository.SimpleArtifactDescriptorPolicy(false, false));
        session.setLocalRepositoryManager(system.newLocalRepositoryManager(session,
                new LocalRepository(settings.store())));
        return session;
    }

    private static String why(DependencyResolutionException failed) {
        Throwable cause = failed;
        for (Throwable each = failed; each != null && each != each.getCause(); each = each.getCause()) {
            if (each instanceof ChecksumFailureException) {
                return "what came does not have the checksum that its repository states; nothing was added, "
                        + "so try again later.";
            } else if (each instanceof RepositoryOfflineException) {
                return "it is not in the store, and Maven's settings say offline; "
                        + "go online, or add the jar with addClassPath(\"path/to.jar\").";
            } else if (each instanceof ArtifactNotFoundException missing && !wentWrong(missing)) {
                return "no repository has " + named(missing.getArtifact()) + "; check the spelling and the version.";
            }
            cause = each;
        }
        return "it could not be fetched (" + cause.getClass().getSimpleName() + ": " + firstLine(cause)
                + "); check the network, or add the jar with addClassPath(\"path/to.jar\").";
    }

    private static String firstLine(Throwable cause) {
        return String.valueOf(cause.getMessage()).lines().findFirst().orElse("");
    }

    private static String named(Artifact artifact) {
        return artifact.getGroupId() + ":" + artifact.getArtifactId() + ":" + artifact.getVersion();
    }

    private static boolean wentWrong(ArtifactNotFoundException missing) {
        return missing.getCause() != null && !(missing.getCause() instanceof ArtifactNotFoundException);
    }
}
