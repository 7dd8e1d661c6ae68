package kingpost.kernel.cli;

import java.io.IOException;
import java.net.URISyntaxException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

/** Makes the kernel known to front ends. */
@Command(name = "register", header = "Makes the kernel known to front ends.",
        mixinStandardHelpOptions = true, versionProvider = Version.class,
        description = {"Registers the kernel, so that every front end of the notebook protocol offers Kingpost.",
            "The jar is copied beside its description: this one may be moved or deleted afterwards.",
            "Run it again after an update."})
final class RegisterCommand implements Callable<Integer> {

    @Spec
    private CommandSpec spec;

    @Option(names = "--data-dir", paramLabel = "DIR",
            description = "Data folder of the front ends. Without it: the user's own.")
    private Path dataDirectory;

    @Option(names = "--force", description = "Replace a kernel of the same name that is not this one.")
    private boolean force;

    @Override
    public Integer call() {
        KernelSpec kernel = new KernelSpec(dataDirectory != null ? dataDirectory : DataDirectory.ofThisUser().path());
        try {
            if (!force && kernel.isTakenByAnother()) {
                throw new CommandProblem("Kernel folder " + kernel.folder() + ": holds another kernel; remove it, or replace "
                        + "it with --force.");
            }
            kernel.write(ownJar(), javaCommand(), Version.number());
        } catch (IOException e) {
            throw new CommandProblem("Kernel folder " + kernel.folder() + ": cannot be written (" + e.getMessage()
                    + "); close running kernels, check the permissions, or choose another place with --data-dir DIR.", e);
        }
        spec.commandLine().getOut().println("Registered Kingpost " + Version.number() + " in " + kernel.folder()
                + System.lineSeparator() + "It runs on " + javaCommand() + "; front ends list it as \"Kingpost\".");
        return 0;
    }

    private static Path ownJar() {
        try {
            Path own = Path.of(RegisterCommand.class.getProtectionDomain().getCodeSource().getLocation().toURI());
            if (Files.isRegularFile(own)) {
                return own;
            }
            throw new CommandProblem("Jar: this does not run from kingpost.jar but from " + own
                    + "; build the jar (mvn package) and run that.");
        } catch (URISyntaxException e) {
            throw new CommandProblem("Jar: its place " + e.getInput() + " cannot be read; move kingpost.jar elsewhere.", e);
        }
    }

    private static Path javaCommand() {
        Path bin = Path.of(System.getProperty("java.home"), "bin");
        Path windows = bin.resolve("java.exe");
        return Files.exists(windows) ? windows : bin.resolve("java");
    }
}
