package kingpost.kernel.cli;

import picocli.CommandLine.IVersionProvider;

/** The product's version, as the jar's manifest has it. */
final class Version implements IVersionProvider {

    /** Such as {@code 0.1.0}; {@code development} when it does not run from the jar. */
    static String number() {
        String version = Main.class.getPackage().getImplementationVersion();
        return version == null ? "development" : version;
    }

    @Override
    public String[] getVersion() {
        return new String[] {"Kingpost " + number() + " (Java " + Runtime.version() + ")"};
    }
}
