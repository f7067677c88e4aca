package pitchboard.cli;

import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.IVersionProvider;

/** The program's entry. */
@Command(
        name = "pitchboard",
        description = "From tape measurements to the papers a crew builds a timber stair from.",
        mixinStandardHelpOptions = true,
        versionProvider = Main.Version.class)
public final class Main implements Runnable {
    public static void main(String[] arguments) {
        System.exit(new CommandLine(new Main()).execute(arguments));
    }

    /** Without a command there is nothing to do but say what there is. */
    @Override
    public void run() {
        CommandLine.usage(this, System.out);
    }

    static final class Version implements IVersionProvider {
        @Override
        public String[] getVersion() {
            return new String[] {"pitchboard " + Main.class.getPackage().getImplementationVersion()};
        }
    }
}
